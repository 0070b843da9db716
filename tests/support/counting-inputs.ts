import { fieldOf } from '@wallflow/calculation';
import type * as z from 'zod/mini';

/** What must stand beside an input for it to count: the choices and other inputs that its definition names. */
export function countingInputs(schema: z.core.$ZodObject, key: string): Record<string, unknown> {
  const child = schema._zod.def.shape[key];
  const rules = child === undefined ? undefined : fieldOf(child)?.rules;
  const others = (rules?.together?.keys ?? []).filter((other) => other !== key);
  return Object.assign(
    Object.fromEntries(others.map((other) => [other, fieldOf(schema._zod.def.shape[other] as z.core.$ZodType)?.example])),
    ...(rules?.when ?? []).map((when) => {
      const target = schema._zod.def.shape[when.key];
      const field = target === undefined ? undefined : fieldOf(target);
      // One that stands outside this record is given with it.
      if (field === undefined) return {};
      return { ...countingInputs(schema, when.key), [when.key]: when.is?.[0] ?? field.example };
    }),
  );
}
