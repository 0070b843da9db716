import type * as z from 'zod/mini';
import { fieldOf, isOptional } from './field.js';
import { shapeOf } from './walk.js';

/** The example of every input that has one, in the form a user would type; together they fit the rules. */
export function exampleOf(schema: z.core.$ZodObject): Record<string, unknown> {
  const example: Record<string, unknown> = {};
  for (const [key, child] of shapeOf(schema)) {
    const field = fieldOf(child);
    if (field === undefined) throw new Error(`${key}: made without one of the field functions`);
    if (isShown(key, child, example)) example[key] = field.example;
  }
  return example;
}

function isShown(key: string, schema: z.core.$ZodType, before: Readonly<Record<string, unknown>>): boolean {
  const rules = fieldOf(schema)?.rules;
  const counts = (rules?.when ?? []).every((when) => {
    const values = [when.key, ...(when.or ?? [])].map((other) => before[other]);
    return values.some((value) => (when.is === undefined ? value !== undefined : when.is.includes(value as string)));
  });
  if (!counts) return false;
  if (rules?.oneOf?.required === true) {
    const { keys, both } = rules.oneOf;
    return key === (typeof both === 'object' ? both.use : keys[0]);
  }
  // An optional input's example is shown as a hint, and left out of the run that must work.
  return !isOptional(schema) || rules?.needed === true;
}
