import { fieldOf, shapeOf } from '@wallflow/calculation';
import { describe, expect, it } from 'vitest';
import { allCalculations } from '../support/calculations.js';
import { processorTime } from '../support/processor-time.js';

/** Half-widths as shares of the value: within what is usual, beyond zero, and beyond all sense. */
const shares = [0.5, 1.5, 1000];

describe.each(allCalculations.map((calculation) => [calculation.id, calculation] as const))('%s', (_, calculation) => {
  it('answers any ± of any input with finite uncertainties or with issues, and soon', () => {
    const example = calculation.example as Record<string, unknown>;
    for (const [key, schema] of shapeOf(calculation.spec.inputs)) {
      const field = fieldOf(schema);
      if (field?.type !== 'quantity' || typeof example[key] !== 'string') continue;
      const given = field.kind.parse(example[key]);
      if (!given.ok) throw new Error(`${key}: the example cannot be read`);
      for (const share of shares) {
        const half = Number((Math.max(Math.abs(given.value), 1e-3) * share).toPrecision(6));
        const text = `${given.value} ± ${half} ${given.unit === '1' ? '' : given.unit}`;
        // Moved beyond its limits, a duration once kept a simulation busy for ever.
        let result = calculation.run({});
        const spent = processorTime(() => {
          result = calculation.run({ ...example, [key]: text });
        });
        expect(spent, `${key} = ${text}`).toBeLessThan(20_000);
        if (!result.ok) expect(result.issues.length).toBeGreaterThan(0);
        else
          for (const value of Object.values(result.uncertainty?.values ?? {})) expect(value, `${key} = ${text}`).toBeGreaterThanOrEqual(0);
        if (result.ok) expect(Object.values(result.uncertainty?.values ?? {}).every(Number.isFinite), `${key} = ${text}`).toBe(true);
      }
    }
  });
});
