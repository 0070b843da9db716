import {
  confidenceInterval,
  coverageFactor,
  NumericsError,
  propagateUncertainty,
  studentTQuantile,
  welchSatterthwaite,
} from '@wallflow/numerics';
import { describe, expect, it } from 'vitest';
import { expectAllClose } from './expect-close.js';

const input = (value: number, standardUncertainty: number, degreesOfFreedom?: number) => ({
  value,
  standardUncertainty,
  ...(degreesOfFreedom === undefined ? {} : { degreesOfFreedom }),
});

describe('propagateUncertainty', () => {
  it('adds variances of a sum and relative variances of a product', () => {
    const result = propagateUncertainty(([a, b]) => [a! + b!, a! * b!], [input(3, 0.3), input(-4, 0.4)]);
    expect(result.status).toBe('done');
    const [sum, product] = result.outputs;
    expect(sum!.value).toBe(-1);
    expect(sum!.standardUncertainty).toBeCloseTo(0.5, 12);
    expect(product!.standardUncertainty).toBeCloseTo(12 * Math.sqrt(0.02), 12);
    expectAllClose(
      sum!.budget.map((line) => line.share),
      [0.36, 0.64],
      1e-12,
    );
    expect(product!.budget[0]!.contribution).toBeCloseTo(-4 * 0.3, 12);
    // Covariance of a + b and a b: b u(a)² + a u(b)².
    expect(result.covariance[0]![1]).toBeCloseTo(-4 * 0.09 + 3 * 0.16, 12);
    expect(result.covariance[1]![0]).toBe(result.covariance[0]![1]);
  });

  it('takes derivatives of curved models nearly exactly', () => {
    const result = propagateUncertainty(([x]) => [Math.exp(x!), Math.sin(x!), x! ** 5], [input(1.2, 0.2)]);
    const slopes = result.outputs.map((output) => output.budget[0]!.sensitivity);
    expectAllClose(slopes, [Math.exp(1.2), Math.cos(1.2), 5 * 1.2 ** 4], 1e-6);
  });

  it('takes difference and sum of fully correlated inputs', () => {
    const correlation = [
      [1, 1],
      [1, 1],
    ];
    const inputs = [input(5, 0.2), input(3, 0.2)];
    const result = propagateUncertainty(([a, b]) => [a! - b!, a! + b!], inputs, { correlation });
    expect(result.outputs[0]!.standardUncertainty).toBeLessThan(1e-7);
    expect(result.outputs[1]!.standardUncertainty).toBeCloseTo(0.4, 12);
    expect(result.outputs[1]!.degreesOfFreedom).toBeUndefined();
  });

  it('shares add up to one, also when one is negative', () => {
    const correlation = [
      [1, 0.9],
      [0.9, 1],
    ];
    const result = propagateUncertainty(([a, b]) => [3 * a! - b!], [input(1, 1), input(1, 1)], { correlation });
    const shares = result.outputs[0]!.budget.map((line) => line.share);
    expect(shares[0]! + shares[1]!).toBeCloseTo(1, 12);
    expect(shares[1]).toBeLessThan(0);
  });

  it('gives nothing for inputs without uncertainty, and their sensitivity all the same', () => {
    const result = propagateUncertainty(([a, b]) => [a! * b!], [input(0, 0), input(7, 0)]);
    expect(result.outputs[0]!.standardUncertainty).toBe(0);
    expect(result.outputs[0]!.degreesOfFreedom).toBe(Infinity);
    expect(result.outputs[0]!.budget[0]!.sensitivity).toBeCloseTo(7, 8);
    expect(result.outputs[0]!.budget[0]!.share).toBe(0);
  });

  it('takes the difference on one side at the edge of the model', () => {
    const result = propagateUncertainty(([x]) => [Math.sqrt(1 - x!) ** 2 + 3 * x!], [input(1, 0.01)]);
    expect(result.outputs[0]!.budget[0]!.sensitivity).toBeCloseTo(2, 10);
    const other = propagateUncertainty(([x]) => [Math.sqrt(x!) ** 2 + 3 * x!], [input(0, 0.01)]);
    expect(other.outputs[0]!.budget[0]!.sensitivity).toBeCloseTo(4, 10);
  });

  it('is not misled by a model that is only computed to six digits', () => {
    const rough = (x: number) => Math.round(x * x * 1e6) / 1e6;
    const result = propagateUncertainty(([x]) => [rough(x!)], [input(3, 0.05)]);
    expect(result.outputs[0]!.standardUncertainty).toBeCloseTo(0.3, 4);
  });

  it('does not let the model change its inputs', () => {
    const result = propagateUncertainty(
      (inputs) => {
        const [a] = inputs;
        inputs[0] = 99;
        return [2 * a!];
      },
      [input(1, 0.1)],
    );
    expect(result.outputs[0]!.standardUncertainty).toBeCloseTo(0.2, 12);
  });

  it.each([
    ['not_finite', [input(Number.NaN, 1)], undefined],
    ['not_finite', [input(1, Infinity)], undefined],
    ['not_finite', [input(-1, 0.1)], undefined],
    ['invalid_uncertainty', [input(1, -1)], undefined],
    ['invalid_uncertainty', [input(1, 1, 0)], undefined],
    [
      'invalid_correlation',
      [input(1, 1), input(1, 1)],
      [
        [1, 2],
        [2, 1],
      ],
    ],
    [
      'invalid_correlation',
      [input(1, 1), input(1, 1)],
      [
        [1, 0.5],
        [0.4, 1],
      ],
    ],
    [
      'invalid_correlation',
      [input(1, 1), input(1, 1)],
      [
        [2, 0],
        [0, 2],
      ],
    ],
    [
      'invalid_correlation',
      [input(1, 1), input(1, 1)],
      [
        [1, Number.NaN],
        [Number.NaN, 1],
      ],
    ],
    // Each pair is possible, the three together are not.
    [
      'invalid_correlation',
      [input(1, 1), input(1, 1), input(1, 1)],
      [
        [1, 0.9, -0.9],
        [0.9, 1, 0.9],
        [-0.9, 0.9, 1],
      ],
    ],
  ])('says %s', (status, inputs, correlation) => {
    const result = propagateUncertainty((values) => [Math.log(values[0]!)], inputs, correlation ? { correlation } : {});
    expect(result).toEqual({ status, outputs: [], covariance: [] });
  });

  it('refuses a correlation matrix of another size', () => {
    const call = () =>
      propagateUncertainty(([a]) => [a!], [input(1, 1)], {
        correlation: [
          [1, 0],
          [0, 1],
        ],
      });
    expect(call).toThrow(expect.objectContaining({ code: 'unequal_lengths' }));
  });
});

describe('welchSatterthwaite', () => {
  it('adds degrees of freedom of equal contributions', () => {
    expect(welchSatterthwaite([2, 2], [5, 5])).toBeCloseTo(10, 12);
    expect(welchSatterthwaite([1e-150, -1e-150], [5, 5])).toBeCloseTo(10, 12);
  });

  it('ignores contributions that are known exactly', () => {
    expect(welchSatterthwaite([3, 4], [Infinity, Infinity])).toBe(Infinity);
    expect(welchSatterthwaite([0, 4], [2, Infinity])).toBe(Infinity);
    expect(welchSatterthwaite([0], [2])).toBe(Infinity);
  });

  it('is undefined for values that cannot be', () => {
    expect(welchSatterthwaite([Number.NaN], [2])).toBeUndefined();
    expect(welchSatterthwaite([1], [0])).toBeUndefined();
    expect(() => welchSatterthwaite([1], [])).toThrow(NumericsError);
  });
});

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
    expect(confidenceInterval(1, 1, 2 * probability - 1, degreesOfFreedom)).toBeUndefined();
  });

  it('makes an interval about an estimate', () => {
    expectAllClose(confidenceInterval(10, 2, 0.95, 1)!, [10 - 2 * 12.706204736174698, 10 + 2 * 12.706204736174698], 1e-9);
    expect(confidenceInterval(Number.NaN, 1, 0.95)).toBeUndefined();
    expect(confidenceInterval(1, -1, 0.95)).toBeUndefined();
  });
});
