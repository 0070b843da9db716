import {
  correlation,
  covariance,
  mean,
  median,
  medianAbsoluteDeviation,
  NumericsError,
  rootMeanSquare,
  standardDeviation,
  weightedMean,
} from '@wallflow/numerics';
import { describe, expect, it } from 'vitest';

describe('statistics of too few or unknown values are unknown', () => {
  const ofOneList = { mean, standardDeviation, rootMeanSquare, median, medianAbsoluteDeviation };
  it.each(Object.entries(ofOneList))('%s', (_, statistic) => {
    expect(statistic([])).toBeUndefined();
    expect(statistic([1, Number.NaN, 2])).toBeUndefined();
    expect(statistic([1, Infinity])).toBeUndefined();
  });

  it('standard deviation and covariance of one value', () => {
    expect(standardDeviation([3])).toBeUndefined();
    expect(covariance([3], [4])).toBeUndefined();
  });

  it('correlation with something that does not vary', () => {
    expect(correlation([1, 2, 3], [4, 4, 4])).toBeUndefined();
  });
});

describe('statistics', () => {
  it('of a simple list', () => {
    const values = [2, 4, 4, 4, 5, 5, 7, 9];
    expect(mean(values)).toBe(5);
    expect(standardDeviation(values)).toBeCloseTo(Math.sqrt(32 / 7), 14);
    expect(rootMeanSquare([3, 4])).toBeCloseTo(Math.sqrt(12.5), 14);
    expect(median(values)).toBe(4.5);
    expect(median([3, 1, 2])).toBe(2);
    expect(median([-5, 100, 20])).toBe(20);
    expect(medianAbsoluteDeviation([1, 1, 2, 2, 4, 6, 9])).toBe(1);
  });

  it('a scaled median absolute deviation estimates the standard deviation of normal values', () => {
    // Values at equal steps of probability of a normal distribution, quartiles at ±0.6744897501960817.
    expect(
      medianAbsoluteDeviation([-0.6744897501960817, 0, 0.6744897501960817, 0.6744897501960817, -0.6744897501960817], true),
    ).toBeCloseTo(1, 12);
  });

  it('of values with a large offset keep their digits', () => {
    const values = Array.from({ length: 1000 }, (_, i) => 1e9 + (i % 2));
    expect(mean(values)).toBe(1e9 + 0.5);
    expect(standardDeviation(values)).toBeCloseTo(Math.sqrt(250 / 999), 12);
  });

  it('take up the rounding of the sum', () => {
    const tenths = new Array<number>(1000).fill(0.1);
    expect(tenths.reduce((sum, value) => sum + value, 0) / 1000).not.toBe(0.1);
    expect(mean(tenths)).toBe(0.1);
  });

  it('leave the list as it was', () => {
    const values = [3, 1, 2];
    median(values);
    medianAbsoluteDeviation(values);
    expect(values).toEqual([3, 1, 2]);
  });

  it('correlation of proportional lists is one with the sign of the factor', () => {
    expect(correlation([1, 2, 4], [2, 4, 8])).toBeCloseTo(1, 14);
    expect(correlation([1, 2, 4], [-1, -2, -4])).toBeCloseTo(-1, 14);
    expect(covariance([1, 2, 3], [1, 2, 3])).toBeCloseTo(1, 14);
    expect(() => correlation([1, 2], [1])).toThrow(NumericsError);
  });
});

describe('weightedMean', () => {
  it('of equal uncertainties is the mean with u/√n', () => {
    const result = weightedMean([1, 2, 6], [0.3, 0.3, 0.3])!;
    expect(result.mean).toBeCloseTo(3, 14);
    expect(result.standardUncertainty).toBeCloseTo(0.3 / Math.sqrt(3), 14);
  });

  it('leans to the value that is known better', () => {
    const result = weightedMean([10, 20], [1, 2])!;
    expect(result.mean).toBeCloseTo(12, 13);
    expect(result.standardUncertainty).toBeCloseTo(Math.sqrt(0.8), 13);
    expect(result.birgeRatio).toBeCloseTo(Math.sqrt(20), 12);
  });

  it('works for uncertainties whose squares are beyond the range of doubles', () => {
    expect(weightedMean([1, 3], [1e-200, 1e-200])!.mean).toBe(2);
  });

  it('is undefined without values or with uncertainties that are none', () => {
    expect(weightedMean([], [])).toBeUndefined();
    expect(weightedMean([1, 2], [1, 0])).toBeUndefined();
    expect(weightedMean([1, Number.NaN], [1, 1])).toBeUndefined();
    expect(weightedMean([1], [1])!.birgeRatio).toBeUndefined();
    expect(() => weightedMean([1], [])).toThrow(NumericsError);
  });
});
