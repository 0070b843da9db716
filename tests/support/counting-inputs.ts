import { fieldOf } from '@wallflow/calculation';
import type * as z from 'zod';

/** What must stand beside an input for it to count: the choices and other inputs that its definition names. */
export function countingInputs(schema: z.ZodObject, key: string): Record<string, unknown> {
  const child = schema.shape[key];
  const rules = child === undefined ? undefined : fieldOf(child)?.rules;
  const others = (rules?.together?.keys ?? []).filter((other) => other !== key);
  return Object.assign(
    Object.fromEntries(others.map((other) => [other, fieldOf(schema.shape[other] as z.ZodType)?.example])),
    ...(rules?.when ?? []).map((when) => {
      const target = schema.shape[when.key];
      const field = target === undefined ? undefined : fieldOf(target);
      // One that stands outside this record is given with it.
      if (field === undefined) return {};
      return { ...countingInputs(schema, when.key), [when.key]: when.is?.[0] ?? field.example };
    }),
  );
}
