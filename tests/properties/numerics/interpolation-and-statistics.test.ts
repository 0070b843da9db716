import {
  cumulativeTrapezoid,
  interpolateLinearly,
  interpolateMonotonically,
  mean,
  median,
  medianAbsoluteDeviation,
  propagateUncertainty,
  standardDeviation,
  studentTQuantile,
  weightedMean,
  welchSatterthwaite,
} from '@wallflow/numerics';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { finite } from './arbitraries.js';

const steps = fc.array(fc.tuple(finite(1e-3, 10), finite(-100, 100)), { minLength: 2, maxLength: 12 });

function points(list: ReadonlyArray<readonly [number, number]>) {
  let x = 0;
  return {
    x: list.map(([gap]) => {
      x += gap;
      return x;
    }),
    y: list.map(([, value]) => value),
  };
}

describe.each([
  ['linear', interpolateLinearly],
  ['monotone', interpolateMonotonically],
] as const)('%s interpolation', (_, interpolate) => {
  it('goes through every point and stays between neighbours', () => {
    fc.assert(
      fc.property(steps, fc.array(finite(0, 1), { minLength: 5, maxLength: 5 }), (list, fractions) => {
        const { x, y } = points(list);
        const result = interpolate(x, y, 'hold');
        if (result.status !== 'ready') throw new Error(result.status);
        const { at } = result.interpolant;
        x.forEach((place, i) => {
          expect(at(place)).toBe(y[i]);
        });
        for (let i = 0; i + 1 < x.length; i += 1) {
          const [low, high] = [Math.min(y[i]!, y[i + 1]!), Math.max(y[i]!, y[i + 1]!)];
          const rounding = 1e-12 * Math.max(Math.abs(low), Math.abs(high));
          let before = y[i]!;
          const rises = y[i + 1]! >= y[i]!;
          for (const fraction of [...fractions].sort((a, b) => a - b)) {
            const value = at(x[i]! + fraction * (x[i + 1]! - x[i]!));
            expect(value).toBeGreaterThanOrEqual(low - rounding);
            expect(value).toBeLessThanOrEqual(high + rounding);
            expect(rises ? value - before : before - value).toBeGreaterThanOrEqual(-rounding);
            before = value;
          }
        }
      }),
    );
  });
});

describe('cumulativeTrapezoid', () => {
  it('adds up over parts and never falls for positive values', () => {
    fc.assert(
      fc.property(steps, (list) => {
        const { x, y } = points(list);
        const positive = y.map(Math.abs);
        const whole = cumulativeTrapezoid(x, positive);
        const middle = x.length >> 1;
        const left = cumulativeTrapezoid(x.slice(0, middle + 1), positive.slice(0, middle + 1));
        const right = cumulativeTrapezoid(x.slice(middle), positive.slice(middle));
        expect(Math.abs(left.total + right.total - whole.total)).toBeLessThan(1e-10 * (1 + whole.total));
        for (let i = 1; i < whole.integral.length; i += 1) expect(whole.integral[i]).toBeGreaterThanOrEqual(whole.integral[i - 1]!);
      }),
    );
  });
});

describe('statistics', () => {
  const values = fc.array(finite(-1e3, 1e3), { minLength: 2, maxLength: 30 });

  it('move with the values and scale with them', () => {
    fc.assert(
      fc.property(values, finite(-1e3, 1e3), finite(-10, 10), (list, shift, factor) => {
        const moved = list.map((value) => factor * value + shift);
        const close = (a: number, b: number) => expect(Math.abs(a - b)).toBeLessThan(1e-9);
        close(mean(moved)!, factor * mean(list)! + shift);
        close(median(moved)!, factor * median(list)! + shift);
        close(standardDeviation(moved)!, Math.abs(factor) * standardDeviation(list)!);
        close(medianAbsoluteDeviation(moved)!, Math.abs(factor) * medianAbsoluteDeviation(list)!);
      }),
    );
  });

  it('mean and median lie between the ends; a weighted mean too, and is surer than any value', () => {
    fc.assert(
      fc.property(values, (list) => {
        const [low, high] = [Math.min(...list) - 1e-9, Math.max(...list) + 1e-9];
        const uncertainties = list.map((_, i) => 1 + (i % 3));
        const weighted = weightedMean(list, uncertainties)!;
        for (const centre of [mean(list)!, median(list)!, weighted.mean]) {
          expect(centre).toBeGreaterThanOrEqual(low);
          expect(centre).toBeLessThanOrEqual(high);
        }
        expect(weighted.standardUncertainty).toBeLessThan(Math.min(...uncertainties));
      }),
    );
  });
});

describe('uncertainty', () => {
  const inputs = fc.array(fc.record({ value: finite(0.5, 10), standardUncertainty: finite(0.001, 0.2) }), { minLength: 1, maxLength: 5 });

  it('of a linear model is exact, and shares add up to one', () => {
    fc.assert(
      fc.property(inputs, fc.array(finite(-5, 5), { minLength: 5, maxLength: 5 }), (list, factors) => {
        const { outputs } = propagateUncertainty((x) => [x.reduce((sum, value, i) => sum + factors[i]! * value, 0)], list);
        const [output] = outputs;
        const expected = Math.hypot(...list.map(({ standardUncertainty }, i) => factors[i]! * standardUncertainty));
        expect(Math.abs(output!.standardUncertainty - expected)).toBeLessThan(1e-9 * (1 + expected));
        fc.pre(expected > 1e-3);
        expect(output!.budget.reduce((sum, line) => sum + line.share, 0)).toBeCloseTo(1, 9);
      }),
    );
  });

  it('of a product of powers follows the relative uncertainties', () => {
    fc.assert(
      fc.property(inputs, (list) => {
        const { outputs } = propagateUncertainty((x) => [x.reduce((product, value, i) => product * value ** ((i % 4) - 1.5), 1)], list);
        const relative = Math.hypot(...list.map(({ value, standardUncertainty }, i) => (((i % 4) - 1.5) * standardUncertainty) / value));
        expect(outputs[0]!.standardUncertainty / Math.abs(outputs[0]!.value) / relative).toBeCloseTo(1, 3);
      }),
    );
  });

  it('effective degrees of freedom lie between the smallest and the sum', () => {
    fc.assert(
      fc.property(fc.array(fc.tuple(finite(0.01, 10), finite(1, 100)), { minLength: 1, maxLength: 6 }), (list) => {
        const freedoms = list.map(([, freedom]) => freedom);
        const effective = welchSatterthwaite(
          list.map(([contribution]) => contribution),
          freedoms,
        )!;
        expect(effective).toBeGreaterThanOrEqual(Math.min(...freedoms) * (1 - 1e-12));
        expect(effective).toBeLessThanOrEqual(freedoms.reduce((sum, freedom) => sum + freedom, 0) * (1 + 1e-12));
      }),
    );
  });

  it('t quantiles rise with the probability and fall towards the normal one with the degrees of freedom', () => {
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
