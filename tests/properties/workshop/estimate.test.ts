import { answerOf, type EstimateInput, estimateFilter, type FilterEstimate, planOf } from '@wallflow/workshop/estimate';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';

/** Load that nobody may heat without knowing the material of the filter, kg/m³ (common practice, no source). */
const heatLimit = 5;

/** Three speeds of a warm engine without load; the drop rises about with the power 1.5 of the speed. */
const inputOf = (displacement: number, highest: number, rest: Partial<EstimateInput> = {}): EstimateInput => ({
  vehicle: { displacement },
  readings: [800, 1800, 2800].map((rpm) => ({
    engineSpeed: rpm / 60,
    pressureDrop: Math.round(highest * (rpm / 2800) ** 1.5),
    gasTemperature: rpm < 1000 ? 410 : 460,
  })),
  zero: { pressureDrop: 0 },
  ...rest,
});
const displacement = fc.constantFrom(1.6e-3, 2e-3, 2.2e-3, 3e-3);
const chosen = (estimate: FilterEstimate) => planOf(estimate, heatLimit).find((option) => option.chosen)?.id;

/** Three standard errors of a chance that rests on so many draws. */
const noise = ({ effectiveSize }: FilterEstimate) => 3 * Math.sqrt(0.25 / effectiveSize);

describe('the estimate of the filter', () => {
  it('is never surer of a clean filter where more is in the way', () => {
    fc.assert(
      fc.property(
        displacement,
        fc.double({ min: 2000, max: 9000, noNaN: true }),
        fc.double({ min: 1.5, max: 3, noNaN: true }),
        (size, drop, more) => {
          const [less, greater] = [estimateFilter(inputOf(size, drop)), estimateFilter(inputOf(size, drop * more))];
          const sound = ({ causes }: FilterEstimate) => causes.find(({ id }) => id === 'nothing-wrong')?.probability ?? Number.NaN;
          const slack = noise(less) + noise(greater);
          expect(1 - greater.restricted).toBeLessThan(1 - less.restricted + slack);
          expect(sound(greater)).toBeLessThan(sound(less) + slack);
        },
      ),
      { numRuns: 4 },
    );
  });

  it('acts on nothing while too few draws carry the answer, however sure its chances look', () => {
    const estimate = estimateFilter(inputOf(2e-3, 1500));
    const surest = (id: string): FilterEstimate => ({
      ...estimate,
      restricted: id === 'nothing-wrong' ? 0.01 : 0.99,
      causes: estimate.causes
        .map((entry) => ({ ...entry, probability: entry.id === id ? 0.99 : 0.01 / (estimate.causes.length - 1) }))
        .sort((a, b) => b.probability - a.probability),
      chanceOfSootAbove: () => 0,
      issues: [],
    });
    const poor = (id: string): FilterEstimate => ({ ...surest(id), issues: [{ code: 'too_few_draws', effectiveSize: 3 }] });
    expect(['nothing-wrong', 'soot', 'core-damaged', 'sensor-dead'].map((id) => chosen(surest(id)))).toEqual([
      'leave',
      'regenerate',
      'replace',
      'repair-first',
    ]);
    for (const id of ['nothing-wrong', 'soot', 'core-damaged', 'sensor-dead']) expect(chosen(poor(id))).toBe('test-more');
  });

  it('states a greater chance of too much soot, the more was weighed', () => {
    const weighed = [10, 20, 32].map((grams) =>
      estimateFilter(
        inputOf(2e-3, 6000, {
          vehicle: { displacement: 2e-3, filter: { volume: 2.6e-3 }, weighedAsh: 0.01 },
          trials: { weighedLoad: 0.01 + grams / 1000 },
        }),
      ),
    );
    const chances = weighed.map((estimate) => estimate.chanceOfSootAbove(heatLimit));
    for (const [index, chance] of chances.slice(1).entries()) expect(chance).toBeGreaterThan(chances[index]! - noise(weighed[index]!));
    expect(chances.at(-1)).toBeGreaterThan(chances[0]! + 0.2);
  });

  it('never allows heat, leaves a filter alone or calls it free without a reading of its drop', () => {
    fc.assert(
      fc.property(
        displacement,
        fc.record(
          {
            distance: fc.constantFrom(2e7, 4e8),
            complaint: fc.boolean(),
            reason: fc.constantFrom('lamp' as const, 'low-power' as const),
            distanceSinceRegeneration: fc.constantFrom(3e4, 8e5),
          },
          { requiredKeys: [] },
        ),
        fc.record({ tailPipe: fc.constant('clean' as const), gaugeBeside: fc.constant('agrees' as const) }, { requiredKeys: [] }),
        (size, known, trials) => {
          const estimate = estimateFilter({ vehicle: { displacement: size, ...known }, readings: [], trials });
          expect(estimate.issues).toContainEqual({ code: 'no_reading' });
          expect(['regenerate', 'leave', 'drive']).not.toContain(chosen(estimate));
          expect(answerOf(estimate).verdict).not.toBe('not-restricted');
        },
      ),
      { numRuns: 6 },
    );
  });

  it('never chooses heat where the load may be above the limit, whatever is left out', () => {
    fc.assert(
      fc.property(displacement, fc.double({ min: 1500, max: 20_000, noNaN: true }), fc.subarray([0, 1, 2, 3]), (size, drop, left) => {
        const whole = inputOf(size, drop);
        const { zero, ...rest } = whole;
        const input = {
          ...rest,
          readings: whole.readings.filter((_, index) => !left.includes(index)),
          ...(left.includes(3) || zero === undefined ? {} : { zero }),
        };
        const estimate = estimateFilter(input);
        if (chosen(estimate) === 'regenerate') expect(estimate.chanceOfSootAbove(heatLimit)).toBeLessThanOrEqual(0.05);
        if (input.readings.length === 0) expect(chosen(estimate)).not.toBe('leave');
      }),
      { numRuns: 5 },
    );
  });
});
