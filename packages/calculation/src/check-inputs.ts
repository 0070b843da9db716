import * as z from 'zod/mini';
import { applyRules, type Ruled } from './apply-rules.js';
import { type Issue, type Path, pathText } from './issue.js';
import { issuesFromZod } from './issues-from-zod.js';
import { itemSchema, shapeOf } from './walk.js';

/** Inputs in SI, or what is wrong with them in the user's own units. */
export type CheckedInputs<S extends z.core.$ZodObject> =
  | { readonly ok: true; readonly input: z.output<S> }
  | { readonly ok: false; readonly issues: readonly Issue[] };

/** The same, with what the rules among the inputs say. */
export type RuledInputs<S extends z.core.$ZodObject> =
  | { readonly ok: true; readonly input: z.output<S>; readonly ruled: Ruled }
  | { readonly ok: false; readonly issues: readonly Issue[] };

/** A default that does not count is none: it was filled in because a schema knows nothing of other inputs. */
function withoutIdle<T>(schema: z.core.$ZodObject, input: T, idle: ReadonlySet<string>, path: Path = []): T {
  if (idle.size === 0) return input;
  const kept: Record<string, unknown> = { ...(input as Record<string, unknown>) };
  for (const [key, child] of shapeOf(schema)) {
    const [own, item, value] = [[...path, key], itemSchema(child), kept[key]];
    if (idle.has(pathText(own))) delete kept[key];
    else if (item === undefined || value === undefined) continue;
    else if (Array.isArray(value)) kept[key] = value.map((row: unknown, index) => withoutIdle(item, row, idle, [...own, index]));
    else kept[key] = withoutIdle(item, value, idle, own);
  }
  return kept as T;
}

export function checkWithRules<S extends z.core.$ZodObject>(schema: S, raw: unknown): RuledInputs<S> {
  const ruled = applyRules(schema, raw);
  // What does not count is checked all the same, as a JSON Schema does.
  const parsed = z.safeParse(schema, raw);
  const found = parsed.success ? [] : issuesFromZod(schema, raw, parsed.error);
  if (!parsed.success || ruled.issues.length > 0) return { ok: false, issues: [...found, ...ruled.issues] };
  return { ok: true, input: withoutIdle(schema, parsed.data, ruled.idle), ruled };
}

/** Check plain data against a record of the field functions, as every calculation does before it runs. Never throws on data. */
export function checkInputs<S extends z.core.$ZodObject>(schema: S, raw: unknown): CheckedInputs<S> {
  const checked = checkWithRules(schema, raw);
  return checked.ok ? { ok: true, input: checked.input } : checked;
}
