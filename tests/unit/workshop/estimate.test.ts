import {
  answerOf,
  type EstimateInput,
  estimateFilter,
  filterCauses,
  leastEffectiveSize,
  nextTests,
  type SpeedReading,
} from '@wallflow/workshop/estimate';
import { describe, expect, it } from 'vitest';

const at = (rpm: number, mbar: number, celsius?: number): SpeedReading => ({
  engineSpeed: rpm / 60,
  pressureDrop: mbar * 100,
  ...(celsius === undefined ? {} : { gasTemperature: celsius + 273.15 }),
});
const car = { displacement: 2e-3 };
const chanceOf = (estimate: ReturnType<typeof estimateFilter>, ...ids: string[]) =>
  estimate.causes.filter(({ id }) => ids.includes(id)).reduce((sum, { probability }) => sum + probability, 0);

// Readings of light vehicles that are common practice, no source: about 10 mbar at warm idle and several hundred near
// 3000 rpm is a blocked filter; about 0 and 20 to 30 mbar is what a good clean leaves.
const blocked: EstimateInput = { vehicle: car, readings: [at(800, 10), at(3000, 360)] };

describe('the estimate of the filter', () => {
  it('calls the readings of a blocked filter restricted, with the filter among the first two causes', () => {
    const estimate = estimateFilter(blocked);
    expect(estimate.restricted).toBeGreaterThan(0.99);
    expect(estimate.causes.slice(0, 2).map(({ id }) => id)).toContain('soot');
    expect(chanceOf(estimate, 'nothing-wrong', 'sensor-zero', 'hose-leaking', 'sensor-dead')).toBeLessThan(0.01);
    // From two readings a filter and a pipe cannot be told apart; a third, or the place of the loss, tells.
    expect(nextTests(estimate)[0]?.id).toMatch(/^(middle-speed|backPressureLost|zero-reading)$/);
    expect(answerOf(estimate).lines[0]).toContain('Restricted');
  });

  it.each([20, 30])('calls 0 at idle and %d mbar near 3000 rpm after a clean not restricted', (mbar) => {
    const estimate = estimateFilter({ vehicle: { ...car, complaint: false }, readings: [at(800, 0), at(3000, mbar)] });
    expect(estimate.restricted).toBeLessThan(0.1);
    expect(answerOf(estimate).lines[0]).toContain('if the hoses of the sensor are tight');
  });

  it.each<[keyof typeof filterCauses, EstimateInput]>([
    ['hoses-swapped', { vehicle: car, readings: [at(800, -3), at(1500, -15), at(2500, -40)] }],
    ['sensor-zero', { vehicle: car, zero: { pressureDrop: 3000 }, readings: [at(800, 32), at(1500, 36), at(2500, 43)] }],
    ['sensor-dead', { vehicle: car, zero: { pressureDrop: 400 }, readings: [at(800, 4), at(1500, 4), at(2500, 4)] }],
    ['hose-leaking', { vehicle: car, trials: { hoses: 'leaking' }, readings: [at(800, 0), at(1500, 1), at(2500, 3)] }],
    ['core-damaged', { vehicle: car, trials: { hoses: 'tight', tailPipe: 'sooty' }, readings: [at(800, 0), at(1500, 1), at(2500, 2)] }],
    ['restriction-behind', { ...blocked, trials: { backPressureLost: 'behind-filter' } }],
    [
      'ash',
      {
        vehicle: { ...car, distance: 4.2e8 },
        trials: { rod: 'short', resistanceRatio: 0.95 },
        readings: [at(800, 12), at(1800, 45), at(2800, 90)],
      },
    ],
  ])('names %s where everything points to it', (id, input) => {
    expect(estimateFilter(input).causes[0]?.id).toBe(id);
  });

  it('is not moved by evidence that says nothing', () => {
    const nothing = { ...blocked, trials: {}, controlUnit: {}, backPressures: [] };
    expect(estimateFilter(nothing).causes).toEqual(estimateFilter(blocked).causes);
  });

  it('loses no reading when another comes in', () => {
    const more = estimateFilter({ ...blocked, readings: [...blocked.readings, at(1800, 120)], zero: { pressureDrop: 0 } });
    const names = more.causes[0]?.bearings.map(({ name }) => name);
    for (const { name } of estimateFilter(blocked).causes[0]?.bearings ?? []) expect(names).toContain(name);
  });

  it('takes a low figure of the control unit as weak evidence against soot, and a long way since a regeneration for it', () => {
    const soot = (input: Partial<EstimateInput>) => chanceOf(estimateFilter({ ...middling, ...input }), 'soot');
    const middling: EstimateInput = { vehicle: { ...car, distance: 2.4e8 }, readings: [at(800, 8), at(1800, 36), at(2800, 75)] };
    const none = soot({});
    expect(soot({ controlUnit: { sootMass: 0.006 } })).toBeLessThan(none);
    expect(soot({ controlUnit: { sootMass: 0.006 } })).toBeGreaterThan(0.1 * none);
    expect(soot({ vehicle: { ...middling.vehicle, distanceSinceRegeneration: 1.5e6 } })).toBeGreaterThan(none);
  });

  it('finds a broken core likelier in a vehicle that smokes', () => {
    const low: EstimateInput = { vehicle: car, readings: [at(800, 1), at(1800, 3), at(2800, 6)] };
    const core = (vehicle: EstimateInput['vehicle']) => chanceOf(estimateFilter({ ...low, vehicle }), 'core-damaged');
    expect(core({ ...car, reason: 'smoke' })).toBeGreaterThan(core({ ...car, reason: 'lamp' }) + 0.1);
  });

  it('takes no more than 45 000 evaluations for three readings and a zero, or says that it has too few draws', () => {
    const { evaluations, effectiveSize, issues } = estimateFilter({
      vehicle: car,
      readings: [at(800, 10), at(1800, 140), at(2800, 320)],
      zero: { pressureDrop: 0 },
    });
    expect(evaluations).toBeLessThan(45_000);
    expect(effectiveSize < leastEffectiveSize).toBe(issues.some(({ code }) => code === 'too_few_draws'));
  });

  it('has chances that sum to 1, and ranges in order', () => {
    const { causes, sootLoad, ashLoad } = estimateFilter(blocked);
    expect(causes.reduce((sum, { probability }) => sum + probability, 0)).toBeCloseTo(1, 9);
    expect(causes.map(({ id }) => id).sort()).toEqual(Object.keys(filterCauses).sort());
    for (const { p5, p50, p95 } of [sootLoad, ashLoad]) {
      expect(p5).toBeLessThanOrEqual(p50);
      expect(p50).toBeLessThanOrEqual(p95);
    }
  });

  it('does not depend on the order of the readings', () => {
    const { readings } = blocked;
    const there = estimateFilter(blocked);
    const back = estimateFilter({ ...blocked, readings: [...readings].reverse() });
    expect(back.causes).toEqual(there.causes);
    expect(back.sootLoad).toEqual(there.sootLoad);
  });

  it('is the same for the same seed, and nearly the same for another', () => {
    const chances = (seed: number) => estimateFilter(blocked, { seed }).restricted;
    expect(chances(3)).toBe(chances(3));
    expect(chances(4)).toBeCloseTo(chances(3), 2);
  });

  it('tells the same of an engine and a filter twice as large', () => {
    const of = (displacement: number) =>
      estimateFilter(
        {
          vehicle: { displacement, duty: 'light', filter: { volume: displacement * 1.3, length: 0.16 } },
          readings: [at(800, 6, 140), at(1800, 26, 180), at(2800, 60, 200)],
        },
        { draws: 400 },
      );
    const [small, large] = [of(1.5e-3), of(3e-3)];
    expect(large.causes[0]?.id).toBe(small.causes[0]?.id);
    expect(Math.abs(large.restricted - small.restricted)).toBeLessThan(0.12);
  });

  it('never takes a higher drop for a cleaner filter', () => {
    const sound = [10, 25, 60, 140].map((mbar) =>
      chanceOf(estimateFilter({ vehicle: { ...car, complaint: false }, readings: [at(800, mbar / 6), at(2800, mbar)] }), 'nothing-wrong'),
    );
    for (const [index, chance] of sound.slice(1).entries()) expect(chance).toBeLessThan(sound[index]! + 0.05);
    expect(sound.at(-1)).toBeLessThan(0.05);
  });

  it('says that there is no reading, and then knows little', () => {
    const estimate = estimateFilter({ vehicle: car, readings: [] });
    expect(estimate.issues).toContainEqual({ code: 'no_reading' });
    expect(estimate.restricted).toBeGreaterThan(0.05);
    expect(estimate.restricted).toBeLessThan(0.95);
  });

  it('believes weighed soot over everything else', () => {
    const { sootMass } = estimateFilter({
      vehicle: { ...car, filter: { volume: 2.6e-3 } },
      readings: [at(800, 5), at(2800, 60)],
      trials: { weighedLoad: 0.045 },
    });
    const { ashMass } = estimateFilter({
      vehicle: { ...car, filter: { volume: 2.6e-3 } },
      readings: [at(800, 5), at(2800, 60)],
      trials: { weighedLoad: 0.045 },
    });
    expect(sootMass.p5).toBeLessThan(0.045);
    expect(sootMass.p95 + ashMass.p5).toBeLessThan(0.06);
  });
});
