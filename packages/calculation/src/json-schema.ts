import * as z from 'zod';
import type { AnyCalculation } from './definition.js';

/** JSON Schema (draft 2020-12) of what a calculation accepts, with labels, examples, kinds and usual units. */
export function inputJsonSchema(calculation: AnyCalculation): Record<string, unknown> {
  const schema = z.toJSONSchema(calculation.spec.inputs, { io: 'input' }) as Record<string, unknown>;
  return {
    ...schema,
    title: calculation.title,
    description: calculation.spec.purpose,
    'x-calculation': calculation.id,
    'x-version': calculation.version,
  };
}
