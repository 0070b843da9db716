import * as z from 'zod';
import type { AnyCalculation } from './definition.js';
import { fieldOf } from './fields.js';

/** JSON Schema (draft 2020-12) of what a calculation accepts, with labels, examples, kinds and usual units. */
export function inputJsonSchema(calculation: AnyCalculation): Record<string, unknown> {
  const schema = z.toJSONSchema(calculation.spec.inputs, {
    io: 'input',
    // zod leaves the examples of a transforming schema out, because they could be of its output. Ours are of its input.
    override: ({ zodSchema, jsonSchema }) => {
      const field = fieldOf(zodSchema);
      if (field !== undefined) jsonSchema.examples = [field.example];
    },
  }) as Record<string, unknown>;
  return {
    ...schema,
    title: calculation.title,
    description: calculation.spec.purpose,
    'x-calculation': calculation.id,
    'x-version': calculation.version,
  };
}
