import type * as z from 'zod';
import type { Issue } from './issue.js';
import { issuesFromZod } from './issues-from-zod.js';

/** Inputs in SI, or what is wrong with them in the user's own units. */
export type CheckedInputs<S extends z.ZodObject> =
  | { readonly ok: true; readonly input: z.output<S> }
  | { readonly ok: false; readonly issues: readonly Issue[] };

/** Check plain data against a record of the field functions, as every calculation does before it runs. Never throws on data. */
export function checkInputs<S extends z.ZodObject>(schema: S, raw: unknown): CheckedInputs<S> {
  const parsed = schema.safeParse(raw);
  return parsed.success ? { ok: true, input: parsed.data } : { ok: false, issues: issuesFromZod(schema, raw, parsed.error) };
}
