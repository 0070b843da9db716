import { mean, standardDeviation, studentTQuantile } from '@wallflow/numerics';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { finite } from './arbitraries.js';

describe('statistics', () => {
  const values = fc.array(finite(-1e3, 1e3), { minLength: 2, maxLength: 30 });

  it('move with the values and scale with them', () => {
    fc.assert(
      fc.property(values, finite(-1e3, 1e3), finite(-10, 10), (list, shift, factor) => {
        const moved = list.map((value) => factor * value + shift);
        const close = (a: number, b: number) => expect(Math.abs(a - b)).toBeLessThan(1e-9);
        close(mean(moved)!, factor * mean(list)! + shift);
        close(standardDeviation(moved)!, Math.abs(factor) * standardDeviation(list)!);
      }),
    );
  });

  it('the mean lies between the ends', () => {
    fc.assert(
      fc.property(values, (list) => {
        expect(mean(list)!).toBeGreaterThanOrEqual(Math.min(...list) - 1e-9);
        expect(mean(list)!).toBeLessThanOrEqual(Math.max(...list) + 1e-9);
      }),
    );
  });
});

describe('Student t', () => {
  it('quantiles rise with the probability and fall towards the normal one with the degrees of freedom', () => {
    fc.assert(
      fc.property(finite(0.51, 0.999), finite(0.0001, 0.0009), finite(0.5, 200), finite(1.01, 3), (p, more, freedom, factor) => {
        const quantile = studentTQuantile(p, freedom)!;
        expect(studentTQuantile(p + more, freedom)!).toBeGreaterThan(quantile);
        expect(studentTQuantile(p, freedom * factor)!).toBeLessThan(quantile);
        expect(quantile).toBeGreaterThan(studentTQuantile(p, Infinity)!);
      }),
      { numRuns: 50 },
    );
  });
});
