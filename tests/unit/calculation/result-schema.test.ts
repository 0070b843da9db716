import { resultJsonSchema } from '@wallflow/calculation/json-schema';
import { describe, expect, it } from 'vitest';
import * as z from 'zod';
import { allCalculations } from '../../support/calculations.js';

// Read back once for both tests: that is what takes the time.
const schemas = new Map(allCalculations.map((one) => [one, z.fromJSONSchema(resultJsonSchema(one) as never)]));

describe('the JSON Schema of a result', () => {
  // zod reads the schema back, so that what is checked is what others get and not how it was made.
  it('fits what every calculation gives for its example, and what it gives for nothing', () => {
    for (const [calculation, schema] of schemas) {
      const results = [calculation.runUnknown(calculation.example), calculation.runUnknown(null)];
      for (const result of results) {
        const parsed = schema.safeParse(JSON.parse(JSON.stringify(result)));
        expect(parsed.success ? [] : parsed.error.issues, calculation.id).toEqual([]);
      }
    }
  });

  it('does not fit a result without its answer, with a word that is no choice, or of another calculation', () => {
    for (const [calculation, schema] of schemas) {
      const result = JSON.parse(JSON.stringify(calculation.runUnknown(calculation.example)));
      expect(schema.safeParse({ ...result, definition: { ...result.definition, id: 'other' } }).success).toBe(false);
      const needed = Object.entries(calculation.spec.outputs as Record<string, { optional: boolean; type: string }>).find(
        ([, { optional }]) => !optional,
      );
      if (needed === undefined) continue;
      const { [needed[0]]: _, ...others } = result.outputs;
      expect(schema.safeParse({ ...result, outputs: others }).success, calculation.id).toBe(false);
      if (needed[1].type !== 'choice') continue;
      expect(schema.safeParse({ ...result, outputs: { ...result.outputs, [needed[0]]: 'perhaps' } }).success).toBe(false);
    }
  });
});
