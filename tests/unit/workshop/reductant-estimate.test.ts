import { estimateReductant, reductantCauses } from '@wallflow/workshop/estimate';
import { describe, expect, it } from 'vitest';

const percent = (value: number, uncertainty = 0.3) => ({ value: value / 100, uncertainty: uncertainty / 100 });

describe('the estimate of the reductant side', () => {
  it('joins a weak fluid and a low quantity to one diagnosis, and multiplies them', () => {
    const { causes, dose } = estimateReductant({ ureaFraction: percent(30.1), delivered: { value: 43 / 50, uncertainty: 0.02 } });
    expect(causes[0]?.id).toBe('weak-and-low');
    // 30.1 / 32.5 · 43 / 50 = 0.7965, by hand.
    expect(dose.p5).toBeLessThan(0.7965);
    expect(dose.p95).toBeGreaterThan(0.7965);
    expect(dose.p95 - dose.p5).toBeLessThan(0.2);
  });

  it.each([
    ['weak-fluid', { ureaFraction: percent(29), delivered: { value: 1, uncertainty: 0.02 }, conversion: { value: 0.86 } }],
    ['low-quantity', { ureaFraction: percent(32.5), delivered: { value: 0.7, uncertainty: 0.02 } }],
    [
      'catalyst',
      { ureaFraction: percent(32.5), delivered: { value: 1, uncertainty: 0.02 }, conversion: { value: 0.6 }, catalystTemperature: 620 },
    ],
    [
      'too-cold',
      { ureaFraction: percent(32.5), delivered: { value: 1, uncertainty: 0.02 }, conversion: { value: 0.3 }, catalystTemperature: 430 },
    ],
    [
      'nothing-wrong',
      { ureaFraction: percent(32.4), delivered: { value: 0.99, uncertainty: 0.02 }, conversion: { value: 0.94 }, catalystTemperature: 600 },
    ],
  ])('names %s where everything points to it', (id, input) => {
    const found = estimateReductant(input).causes;
    // A catalyst and a sensor cannot be told apart by two sensors alone: both may lead.
    expect(found.slice(0, id === 'catalyst' ? 2 : 1).map((cause) => cause.id)).toContain(id);
  });

  it('gives back what it knew when nothing is read, and sums to 1', () => {
    const { causes } = estimateReductant({});
    expect(causes.map(({ id }) => id).sort()).toEqual(Object.keys(reductantCauses).sort());
    expect(causes.reduce((sum, { probability }) => sum + probability, 0)).toBeCloseTo(1, 9);
    expect(causes[0]?.id).toBe('low-quantity');
  });

  it('is the same for the same seed', () => {
    expect(estimateReductant({ ureaFraction: percent(30) }, 3)).toEqual(estimateReductant({ ureaFraction: percent(30) }, 3));
  });
});
