import { mean, standardDeviation } from '@wallflow/numerics';
import { describe, expect, it } from 'vitest';

describe('statistics of too few or unknown values are unknown', () => {
  const ofOneList = { mean, standardDeviation };
  it.each(Object.entries(ofOneList))('%s', (_, statistic) => {
    expect(statistic([])).toBeUndefined();
    expect(statistic([1, Number.NaN, 2])).toBeUndefined();
    expect(statistic([1, Infinity])).toBeUndefined();
  });

  it('standard deviation of one value', () => {
    expect(standardDeviation([3])).toBeUndefined();
  });
});

describe('statistics', () => {
  it('of a simple list', () => {
    const values = [2, 4, 4, 4, 5, 5, 7, 9];
    expect(mean(values)).toBe(5);
    expect(standardDeviation(values)).toBeCloseTo(Math.sqrt(32 / 7), 14);
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
});
