import { fieldOf, itemSchema, type QuantityField, shapeOf } from '@wallflow/calculation';
import { describe, expect, it } from 'vitest';
import type * as z from 'zod/mini';
import { allCalculations } from '../../support/calculations.js';

/** Words that speak of one side only; "seldom more" is no reason against less. */
const ofLess =
  /\b(less|lower|smaller|colder|cooler|slower|shorter|thinner|older|below|least|leaner|lighter|weaker|too (?:cold|slow|small|little))\b/i;
const ofMore =
  /\b(more|higher|larger|hotter|faster|longer|thicker|above|most|richer|heavier|stronger|exceeds?|too (?:hot|fast|large|much))\b/i;

function quantities(schema: z.core.$ZodObject, place: string): [string, QuantityField][] {
  return shapeOf(schema).flatMap(([key, child]): [string, QuantityField][] => {
    const field = fieldOf(child);
    const item = itemSchema(child);
    if (item !== undefined) return quantities(item, `${place}.${key}`);
    return field?.type === 'quantity' ? [[`${place}.${key}`, field]] : [];
  });
}

const ranges = allCalculations
  .flatMap(({ id, spec }) => quantities(spec.inputs as z.core.$ZodObject, id))
  .flatMap(([place, { usual, usualReason, limits }]) =>
    usual === undefined ? [] : [{ place, reason: usualReason, below: usual[0] > limits.min, above: usual[1] < limits.max }],
  );

describe('a usual range', () => {
  it('is found in many definitions', () => expect(ranges.length).toBeGreaterThan(100));

  it('has a reason, on each side that can be passed and on no other', () => {
    const faults = ranges.flatMap(({ place, reason, below, above }) => {
      if (reason === undefined) return [`${place} gives no reason`];
      if (typeof reason === 'string') return [];
      return [
        ...(below === (reason.below !== undefined) ? [] : [`${place}: below ${below ? 'has no reason' : 'cannot be reached'}`]),
        ...(above === (reason.above !== undefined) ? [] : [`${place}: above ${above ? 'has no reason' : 'cannot be reached'}`]),
      ];
    });
    expect(faults).toEqual([]);
  });

  it('gives no reason of one side for the other', () => {
    const faults = ranges.flatMap(({ place, reason, below, above }) => {
      if (typeof reason !== 'string') return [];
      // "Seldom colder or hotter" speaks of both.
      const words = reason.replace(/\w+er or \w+er/g, '');
      const oneSided = ofLess.test(words) || ofMore.test(words);
      return below && above && oneSided ? [`${place}: "${reason}"`] : [];
    });
    expect(faults).toEqual([]);
  });
});
