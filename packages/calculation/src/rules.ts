import * as z from 'zod/mini';
import { describeField, fieldOf, type InputField } from './field.js';
import type { FieldRules, OneOf, Section, Together, When } from './rule.js';

/** Inputs by key, as definitions write them. */
export type InputRecord = Readonly<Record<string, z.core.$ZodType>>;

type OptionalField<F extends z.core.$ZodType> = F extends z.core.$ZodOptional ? F : z.core.$ZodOptional<F>;
/** The same inputs, each of which may be left out. */
export type OptionalFields<R> = { [Key in keyof R]: R[Key] extends z.core.$ZodType ? OptionalField<R[Key]> : never };

function fieldAt(record: InputRecord, key: string): { readonly schema: z.core.$ZodType; readonly field: InputField } {
  const schema = record[key];
  const field = schema === undefined ? undefined : fieldOf(schema);
  if (schema === undefined || field === undefined) throw new Error(`${key}: made without one of the field functions`);
  return { schema, field };
}

function canBeLeftOut(schema: z.core.$ZodType, field: InputField): boolean {
  return schema._zod.def.type === 'optional' || ('default' in field && field.default !== undefined);
}

function withRules(
  record: InputRecord,
  rulesOf: (schema: z.core.$ZodType, field: InputField) => FieldRules,
  asOptional: boolean,
): InputRecord {
  return Object.fromEntries(
    Object.keys(record).map((key) => {
      const { schema, field } = fieldAt(record, key);
      // A schema of its own, as the same field may stand in other definitions without the rule.
      const own = asOptional && schema._zod.def.type !== 'optional' ? z.optional(schema) : z.clone(schema);
      return [key, describeField(own, { ...field, rules: { ...field.rules, ...rulesOf(schema, field) } })];
    }),
  );
}

/** An input that may be left out. */
export function optionalInput<F extends z.core.$ZodType>(schema: F): z.core.$ZodOptional<F> {
  const field = fieldOf(schema);
  const own = z.optional(schema);
  return field === undefined ? own : describeField(own, field);
}

/**
 * Of these inputs one is needed: `...oneOf({ filterDiameter: …, filterVolume: … })`. More than one is refused unless `both` is
 * `'allowed'`, for a definition that compares them, or `prefer` names the one that then counts. With `required: false` none is
 * needed.
 */
export function oneOf<const R extends InputRecord>(
  fields: R,
  options: { readonly required?: boolean; readonly both?: 'allowed'; readonly prefer?: keyof R & string } = {},
): OptionalFields<R> {
  const both = options.prefer === undefined ? (options.both ?? 'refused') : { use: options.prefer };
  const rule: OneOf = { keys: Object.keys(fields), required: options.required ?? true, both };
  return withRules(fields, () => ({ oneOf: rule, needed: false }), true) as OptionalFields<R>;
}

/**
 * All of these inputs or none: `...together({ nominalPressure: …, testPressure: … })`. A part alone is an issue, or with
 * `otherwise` a warning, and then does not count.
 */
export function together<const R extends InputRecord>(
  fields: R,
  options: { readonly otherwise?: { readonly code: string; readonly text: string } } = {},
): OptionalFields<R> {
  const rule: Together = { keys: Object.keys(fields), ...(options.otherwise === undefined ? {} : { otherwise: options.otherwise }) };
  return withRules(fields, () => ({ together: rule, needed: false }), true) as OptionalFields<R>;
}

function counting<R extends InputRecord>(when: When, fields: R): OptionalFields<R> {
  return withRules(
    fields,
    (schema, field) => ({ when: [...(field.rules?.when ?? []), when], needed: field.rules?.needed ?? !canBeLeftOut(schema, field) }),
    true,
  ) as OptionalFields<R>;
}

/**
 * Inputs that count only where a choice, a count or a yes or no has this value, or one of these:
 * `...relevantWhen('airFrom', 'mass', { airMassFlow: … })`. There they are needed unless they are optional or have a default;
 * elsewhere they are not shown, not checked, and `compute` does not get them.
 */
export function relevantWhen<const R extends InputRecord>(
  key: string,
  is: string | number | boolean | readonly (string | number | boolean)[],
  fields: R,
): OptionalFields<R> {
  return counting({ key, is: typeof is === 'object' ? is : [is] }, fields);
}

/** Inputs that count only where another, or one of several, is given: `...whenGiven('dosedRatio', { share: … })`. */
export function whenGiven<const R extends InputRecord>(keys: string | readonly [string, ...string[]], fields: R): OptionalFields<R> {
  const [key, ...or] = typeof keys === 'string' ? [keys] : keys;
  return counting({ key, ...(or.length === 0 ? {} : { or }) }, fields);
}

/** Inputs under a heading of the form; the input itself stays flat: `...section({ label: 'Filter' }, geometryInputs)`. */
export function section<const R extends InputRecord>(heading: Section, fields: R): R {
  return withRules(fields, () => ({ section: heading }), false) as R;
}
