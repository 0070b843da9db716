import { NumericsError } from '@wallflow/numerics';
import { type DistributionShape, simulateUncertainty } from '@wallflow/numerics/simulation';
import { describe, expect, it } from 'vitest';

const unit = { value: 0, standardUncertainty: 1 };
const identity = ([x]: number[]) => [x!];

/** Sample moments about zero, in one run: the fourth tells the shapes apart. */
function moments(shape: DistributionShape, degreesOfFreedom?: number) {
  const input = { ...unit, shape, ...(degreesOfFreedom ? { degreesOfFreedom } : {}) };
  const result = simulateUncertainty(([x]) => [x!, x! ** 2, x! ** 4], [input], { trials: 200_000 });
  return result.outputs.map((output) => output.mean);
}

describe('simulateUncertainty', () => {
  // Kurtosis of each shape in closed form; the tolerance is about five standard errors of the sample.
  it.each([
    ['normal', 3, 0.12],
    ['rectangular', 9 / 5, 0.03],
    ['triangular', 12 / 5, 0.06],
    ['arcsine', 3 / 2, 0.02],
  ] as const)('a %s input has mean 0, variance 1 and its own kurtosis', (shape, kurtosis, tolerance) => {
    const [first, second, fourth] = moments(shape);
    expect(Math.abs(first!)).toBeLessThan(0.012);
    expect(Math.abs(second! - 1)).toBeLessThan(0.017);
    expect(Math.abs(fourth! - kurtosis)).toBeLessThan(tolerance);
  });

  it.each([3.5, 12])('a t input with %s degrees of freedom has variance ν / (ν - 2)', (degreesOfFreedom) => {
    const [, second] = moments('student_t', degreesOfFreedom);
    expect(second! / (degreesOfFreedom / (degreesOfFreedom - 2))).toBeCloseTo(1, 1);
  });

  it('t quartiles agree with the closed form for one degree of freedom', () => {
    const input = { ...unit, shape: 'student_t', degreesOfFreedom: 1 } as const;
    const [output] = simulateUncertainty(identity, [input], { trials: 200_000, probability: 0.5 }).outputs;
    expect(output!.symmetricInterval[0]).toBeCloseTo(-1, 1);
    expect(output!.symmetricInterval[1]).toBeCloseTo(1, 1);
  });

  it('repeats itself for the same seed and not for another', () => {
    const run = (seed: number) => simulateUncertainty(identity, [unit], { seed, trials: 1000 });
    expect(run(5)).toEqual(run(5));
    expect(run(5).outputs[0]!.mean).not.toBe(run(6).outputs[0]!.mean);
  });

  it('draws correlated inputs', () => {
    const correlation = [
      [1, 0.8],
      [0.8, 1],
    ];
    const result = simulateUncertainty(([a, b]) => [a! - b!], [unit, unit], { correlation });
    expect(result.outputs[0]!.standardDeviation).toBeCloseTo(Math.sqrt(0.4), 2);
  });

  it('finds the shortest interval of a skewed distribution', () => {
    // x² of a rectangular x from 0 to 1: density 1/(2√y), shortest 95 % interval 0 to 0.95².
    const input = { value: 0.5, standardUncertainty: Math.sqrt(1 / 12), shape: 'rectangular' } as const;
    const [output] = simulateUncertainty(([x]) => [x! ** 2], [input], { trials: 200_000 }).outputs;
    expect(output!.shortestInterval[0]).toBeLessThan(1e-6);
    expect(output!.shortestInterval[1]).toBeCloseTo(0.9025, 2);
    expect(output!.symmetricInterval[0]).toBeCloseTo(0.025 ** 2, 3);
    expect(output!.symmetricInterval[1]).toBeCloseTo(0.975 ** 2, 2);
    expect(output!.median).toBeCloseTo(0.25, 2);
  });

  it('leaves out rare draws without a result and says how many, but not many of them', () => {
    const rare = simulateUncertainty(([x]) => [Math.sqrt(x! + 4)], [unit], { trials: 100_000 });
    expect(rare.status).toBe('done');
    expect(rare.lostTrials).toBeGreaterThan(0);
    expect(rare.lostTrials).toBeLessThan(20);
    const often = simulateUncertainty(([x]) => [Math.sqrt(x!)], [unit], { trials: 1000 });
    expect(often).toMatchObject({ status: 'model_undefined', outputs: [] });
  });

  it.each([
    ['not_finite', [{ value: Number.NaN, standardUncertainty: 1 }], undefined],
    ['not_finite', [{ value: 1e308, standardUncertainty: 0 }], undefined],
    ['invalid_uncertainty', [{ value: 1, standardUncertainty: -1 }], undefined],
    ['invalid_uncertainty', [{ ...unit, shape: 'student_t' }], undefined],
    ['invalid_correlation', [{ ...unit, shape: 'rectangular' }], [[1]]],
    ['invalid_correlation', [unit], [[2]]],
  ] as const)('says %s', (status, inputs, correlation) => {
    const options = { trials: 1000, ...(correlation ? { correlation } : {}) };
    expect(simulateUncertainty(identity, inputs, options)).toMatchObject({ status, outputs: [] });
  });

  it('refuses options without meaning', () => {
    for (const options of [{ trials: 10 }, { seed: 0.5 }, { probability: 1 }]) {
      expect(() => simulateUncertainty(identity, [unit], options)).toThrow(NumericsError);
    }
  });
});
