import { addEvent, addFitRow, addValue, finishSums, mergeSums, quantileOf, type SumsDefinition, startSums } from '@wallflow/logs';
import { describe, expect, it } from 'vitest';

const definition: SumsDefinition = { channels: ['pressureDrop'], histograms: { pressureDrop: [0, 10, 20, 30] } };
const sumsOf = (values: readonly number[], part = 'a', of = definition) => {
  const sums = startSums(of, part);
  for (const value of values) addValue(sums, 'pressureDrop', value);
  return sums;
};

describe('sums', () => {
  // NIST Statistical Reference Datasets, NumAcc4, certified values.
  it('keep the digits of values that differ in their last one', () => {
    const values = [10_000_000.2, ...Array.from({ length: 1000 }, (_, index) => (index % 2 === 0 ? 10_000_000.1 : 10_000_000.3))];
    const { pressureDrop } = finishSums(sumsOf(values)).channels;
    expect(pressureDrop?.mean).toBeCloseTo(10_000_000.2, 8);
    expect(Math.abs((pressureDrop?.standardDeviation ?? 0) / 0.1 - 1)).toBeLessThan(1e-8);
  });

  // NIST Statistical Reference Datasets, Norris, certified values: doi.org/10.18434/T43G6C.
  it('fit a line as certified, from halves put together', () => {
    const points =
      '0.2,0.1 337.4,338.8 118.2,118.1 884.6,888 10.1,9.2 226.5,228.1 666.3,668.5 996.3,998.5 448.6,449.1 777,778.9 558.2,559.2 0.4,0.3 0.6,0.1 775.5,778.1 666.9,668.8 338,339.3 447.5,448.9 11.6,10.8 556,557.7 228.1,228.3 995.8,998 887.6,888.8 120.2,119.6 0.3,0.3 0.3,0.6 556.8,557.6 339.1,339.3 887.2,888 999,998.5 779,778.9 11.1,10.2 118.3,117.6 229.2,228.9 669.1,668.4 448.9,449.2 0.5,0.2'
        .split(' ')
        .map((pair) => pair.split(',').map(Number));
    const fit = { channels: [], fits: [{ name: 'line', response: 'y', predictors: ['x'] }] } as const;
    const [odd, even] = [1, 0].map((rest) => {
      const sums = startSums(fit, `rest ${rest}`);
      for (const [index, point] of points.entries()) if (index % 2 === rest) addFitRow(sums, 'line', point);
      return sums;
    });
    const merged = mergeSums(odd!, even!);
    const [line] = merged.ok ? finishSums(merged.sums).fits : [];
    expect(line?.count).toBe(36);
    expect(line?.coefficients[0]).toBeCloseTo(-0.262323073774029, 10);
    expect(line?.coefficients[1]).toBeCloseTo(1.00211681802045, 12);
    expect(line?.standardErrors[0]).toBeCloseTo(0.232818234301152, 10);
    expect(line?.standardErrors[1]).toBeCloseTo(0.429796848199937e-3, 13);
    expect(line?.residualStandardDeviation).toBeCloseTo(0.884796396144373, 10);
  });

  it('count between fixed edges, below and above', () => {
    const sums = sumsOf([-1, 0, 5, 9.99, 10, 29, 30, 100]);
    expect(sums.histograms.pressureDrop?.counts).toEqual([1, 3, 1, 1, 2]);
    expect(quantileOf(sums.histograms.pressureDrop!, 0.5)).toBeCloseTo(10, 12);
    expect(quantileOf(sums.histograms.pressureDrop!, 0.01)).toBeUndefined();
    expect(quantileOf(sums.histograms.pressureDrop!, 1)).toBeUndefined();
  });

  it('pass over what is no number', () => {
    expect(finishSums(sumsOf([1, Number.NaN, 3, Number.POSITIVE_INFINITY])).channels.pressureDrop).toMatchObject({
      count: 2,
      mean: 2,
      least: 1,
      greatest: 3,
    });
    expect(finishSums(sumsOf([])).channels).toEqual({});
  });

  it.each([
    ['another definition', sumsOf([1], 'b', { channels: ['pressureDrop'] }), 'other_definition'],
    ['other edges', sumsOf([1], 'b', { channels: ['pressureDrop'], histograms: { pressureDrop: [0, 10, 20, 31] } }), 'other_definition'],
    ['the same part again', sumsOf([1], 'a'), 'same_part_twice'],
    ['another version', { ...sumsOf([1], 'b'), version: 2 }, 'other_version'],
    ['something else', { format: 'other' }, 'not_sums'],
    ['nothing', undefined, 'not_sums'],
  ])('are not put together with %s', (_, other, problem) => {
    expect(mergeSums(sumsOf([1, 2]), other as never)).toEqual({ ok: false, problem });
  });

  it('are put together with those of the same definition in another order, and change neither', () => {
    const [a, b] = [sumsOf([1, 2]), sumsOf([6], 'b', { histograms: { pressureDrop: [0, 10, 20, 30] }, channels: ['pressureDrop'] })];
    addEvent(b, { part: 'b', what: 'regeneration', from: 5, to: 7, figures: {} });
    const before = JSON.stringify([a, b]);
    const merged = mergeSums(a, b);
    expect(merged.ok && finishSums(merged.sums).channels.pressureDrop).toMatchObject({ count: 3, mean: 3, squaresAboutMean: 14 });
    expect(merged.ok && merged.sums.events).toHaveLength(1);
    expect(JSON.stringify([a, b])).toBe(before);
  });
});
