import { coverageFactor, studentTQuantile } from '@wallflow/numerics';
import { describe, expect, it } from 'vitest';

describe('Student t', () => {
  it('agrees with the closed forms for one and two degrees of freedom', () => {
    for (const p of [0.6, 0.9, 0.975, 0.999, 0.9999999]) {
      const one = Math.tan(Math.PI * (p - 0.5));
      const two = (2 * p - 1) / Math.sqrt(2 * p * (1 - p));
      expect(studentTQuantile(p, 1)! / one).toBeCloseTo(1, 9);
      expect(studentTQuantile(p, 2)! / two).toBeCloseTo(1, 9);
    }
  });

  it('is odd about one half', () => {
    expect(studentTQuantile(0.5, 7)).toBe(0);
    expect(studentTQuantile(0.025, 7)).toBeCloseTo(-studentTQuantile(0.975, 7)!, 12);
  });

  it('passes into the normal distribution', () => {
    expect(studentTQuantile(0.975, 1e300)).toBe(studentTQuantile(0.975, Infinity));
    expect(coverageFactor(0.95)).toBe(studentTQuantile(0.975, Infinity));
  });

  it.each([
    [0, 5],
    [1, 5],
    [-1, 5],
    [Number.NaN, 5],
    [0.9, 0],
    [0.9, -1],
    [0.9, Number.NaN],
  ])('is undefined for probability %s and %s degrees of freedom', (probability, degreesOfFreedom) => {
    expect(studentTQuantile(probability, degreesOfFreedom)).toBeUndefined();
    expect(coverageFactor(2 * probability - 1, degreesOfFreedom)).toBeUndefined();
  });
});
