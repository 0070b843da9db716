import type * as z from 'zod';
import { fieldOf, isOptional } from './fields.js';
import { shapeOf } from './walk.js';

/** The example of every input that has one, in the form a user would type. */
export function exampleOf(schema: z.ZodObject): Record<string, unknown> {
  const example: Record<string, unknown> = {};
  for (const [key, child] of shapeOf(schema)) {
    const field = fieldOf(child);
    if (field === undefined) throw new Error(`${key}: made without one of the field functions`);
    // An optional input's example is shown as a hint, and left out of the run that must work.
    if (!isOptional(child)) example[key] = field.example;
  }
  return example;
}
