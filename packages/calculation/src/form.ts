import type * as z from 'zod/mini';
import { fieldOf, type InputField, isOptional } from './field.js';
import type { OneOf, Section, Together, When } from './rule.js';
import { itemSchema, shapeOf } from './walk.js';

/** One input as a form needs it. */
export interface FormField {
  readonly key: string;
  /** All that the definition says of the input by itself. */
  readonly field: InputField;
  /** Whether it may stay empty where it counts. */
  readonly optional: boolean;
  /** Conditions that must all hold for it to count, and to be shown; none for one that always does. */
  readonly when: readonly When[];
  /** What is taken where it is not given. */
  readonly standard?: unknown;
  /** The inputs of a list's entry, or of a group. */
  readonly inner?: Form;
}

/** A heading with the inputs under it, in order. */
export interface FormSection extends Section {
  readonly keys: readonly string[];
}

/** The inputs of a calculation with what goes between them. */
export interface Form {
  readonly fields: readonly FormField[];
  readonly oneOf: readonly OneOf[];
  readonly together: readonly Together[];
  readonly sections: readonly FormSection[];
}

function formField(key: string, schema: z.core.$ZodType): FormField[] {
  const field = fieldOf(schema);
  if (field === undefined) return [];
  const item = itemSchema(schema);
  return [
    {
      key,
      field,
      optional: isOptional(schema) && field.rules?.needed !== true,
      when: field.rules?.when ?? [],
      ...('default' in field && field.default !== undefined ? { standard: field.default } : {}),
      ...(item === undefined ? {} : { inner: formOf(item) }),
    },
  ];
}

/** What a form of these inputs shows: the fields in order, which exclude or need each other, when each counts, the headings. */
export function formOf(inputs: z.core.$ZodObject): Form {
  const fields = shapeOf(inputs).flatMap(([key, child]) => formField(key, child));
  const rules = fields.map(({ field }) => field.rules);
  const headings = [...new Set(rules.flatMap((rule) => rule?.section ?? []))];
  return {
    fields,
    oneOf: [...new Set(rules.flatMap((rule) => rule?.oneOf ?? []))],
    together: [...new Set(rules.flatMap((rule) => rule?.together ?? []))],
    sections: headings.map((heading) => ({
      ...heading,
      keys: fields.filter(({ field }) => field.rules?.section === heading).map(({ key }) => key),
    })),
  };
}
