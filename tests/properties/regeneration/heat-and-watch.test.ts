import {
  adiabaticRise,
  bai2016Oxygen,
  criticalRise,
  eventsUntil,
  expectedBurnOff,
  fuelInOil,
  peakTemperature,
  runawayIndex,
  settledFuelInOil,
  solveAxialRegeneration,
  steadyFeed,
  timeAboveTemperature,
  type WatchLimits,
  type WatchSample,
  watchRegeneration,
} from '@wallflow/exhaust';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type BedChoice, bedChoice, regenerationOf } from '../../support/filter-bed.js';

const number = (min: number, max: number) => fc.double({ min, max, noNaN: true, noDefaultInfinity: true });

const limits: WatchLimits = {
  inletLasting: 973.15,
  inletTime: 10,
  zoneLimit: 1023.15,
  outletAbove: 100,
  riseLimit: 10,
  dropRiseTime: 180,
  steadySpeed: 0.05,
  coolantLimit: 378.15,
  riseTime: 2,
  burningTemperature: 723.15,
  hotTime: 60,
  stoppedSpeed: 5,
  idleSpeed: 15,
  speedLoss: 0.25,
  flowLoss: 0.5,
  lossTime: 20,
};

describe('runaway index', () => {
  const input = fc.record({
    temperature: number(600, 1000),
    sootMass: number(1e-3, 0.2),
    oxygen: number(0.01, 0.2),
    massFlow: number(0.005, 0.3),
  });

  it('grows with soot, oxygen and temperature, and falls with flow', () => {
    fc.assert(
      fc.property(input, number(1.001, 2), (chosen, factor) => {
        const at = (change: Partial<typeof chosen>) =>
          runawayIndex({ law: bai2016Oxygen, gasSpecificHeat: 1110, heatOfCombustion: 32.8e6, ...chosen, ...change }) ?? Number.NaN;
        const here = at({});
        expect(at({ sootMass: chosen.sootMass * factor })).toBeCloseTo(here * factor, 6);
        expect(at({ oxygen: chosen.oxygen * factor })).toBeCloseTo(here * factor, 6);
        expect(at({ massFlow: chosen.massFlow * factor })).toBeCloseTo(here / factor, 6);
        expect(at({ temperature: chosen.temperature * 1.01 })).toBeGreaterThan(here);
      }),
    );
  });

  it('bounds the simulated rise by the critical rise where it is at most 1', () => {
    fc.assert(
      fc.property(bedChoice, number(700, 950), number(3, 25), number(0.01, 0.2), (bed, temperature, perVolume, oxygen) => {
        const cold: BedChoice = { ...bed, start: temperature, fast: false, monoxide: 0 };
        const massFlow = perVolume * bed.volume;
        const run = regenerationOf(cold, steadyFeed({ massFlow, temperature, oxygen, nitrogenDioxide: 0 }), 900, 1);
        const { heatOfCombustion, gasSpecificHeat } = run.combustion;
        const index = runawayIndex({
          law: bai2016Oxygen,
          temperature,
          sootMass: bed.load * bed.volume,
          oxygen,
          massFlow,
          gasSpecificHeat,
          heatOfCombustion,
        });
        if (index === undefined || index > 1) return;
        const rise = peakTemperature(solveAxialRegeneration(run)).value - temperature;
        expect(rise).toBeLessThanOrEqual((criticalRise(bai2016Oxygen, temperature) ?? 0) * (1 + 1e-4));
      }),
      { numRuns: 60 },
    );
  });

  it('scales the adiabatic rise with the load', () => {
    fc.assert(
      fc.property(number(0, 20), number(300, 1000), number(700, 1500), (load, density, heat) => {
        expect(adiabaticRise(load, 32.8e6, density, heat) * density * heat).toBeCloseTo(load * 32.8e6, 3);
      }),
    );
  });
});

describe('fuel in the oil', () => {
  const model = fc.record({ fuelPerEvent: number(1e-4, 0.1), evaporated: number(0, 1) });

  it('follows the sum over single regenerations and stays below where it settles', () => {
    fc.assert(
      fc.property(model, fc.integer({ min: 1, max: 60 }), (chosen, events) => {
        let fuel = 0;
        for (let event = 0; event < events; event += 1) fuel = fuel * (1 - chosen.evaporated) + chosen.fuelPerEvent;
        expect(fuelInOil(chosen, events)).toBeCloseTo(fuel, 9);
        const settled = settledFuelInOil(chosen);
        if (settled !== undefined) expect(fuel).toBeLessThanOrEqual(settled * (1 + 1e-9));
      }),
    );
  });

  it('holds the limit after as many regenerations as it says', () => {
    fc.assert(
      fc.property(model, number(1e-4, 0.5), (chosen, fuel) => {
        const events = eventsUntil(chosen, fuel);
        const settled = settledFuelInOil(chosen);
        if (events === undefined) expect(settled).toBeLessThanOrEqual(fuel * (1 + 1e-9));
        else expect(Math.abs(fuelInOil(chosen, events) / fuel - 1)).toBeLessThan(1e-6);
      }),
    );
  });
});

describe('watch', () => {
  const sample = fc.record({
    inlet: number(500, 1200),
    bed: fc.option(number(500, 1300), { nil: undefined }),
    outlet: number(500, 1300),
    pressureDrop: fc.option(number(1e3, 2e4), { nil: undefined }),
    engineSpeed: fc.constant(33),
    coolantTemperature: number(300, 390),
    fire: fc.boolean(),
  });
  const log: fc.Arbitrary<WatchSample[]> = fc.array(fc.tuple(number(0.5, 100), sample), { minLength: 1, maxLength: 40 }).map((rows) => {
    let time = 0;
    return rows.map(([step, row]) => {
      time += step;
      return { time, ...row };
    });
  });

  it('never misses a line that is too hot, and never forgets what it saw', () => {
    fc.assert(
      fc.property(log, (lines) => {
        const events = watchRegeneration(lines, limits);
        const tooHot = lines.find((line) => Math.max(line.inlet ?? 0, line.bed ?? 0, line.outlet ?? 0) > limits.zoneLimit);
        expect(events.find((event) => event.rule === 'over-temperature')?.time).toBe(tooHot?.time);
        for (let cut = 1; cut <= lines.length; cut += 7) {
          const earlier = watchRegeneration(lines.slice(0, cut), limits);
          expect(events).toEqual(expect.arrayContaining(earlier));
        }
      }),
    );
  });

  it('says nothing to a steady burn within the limits', () => {
    fc.assert(
      fc.property(number(750, 960), number(-60, 60), fc.integer({ min: 1, max: 60 }), (inlet, difference, lines) => {
        const steady = Array.from({ length: lines }, (_, index) => ({
          time: 10 * index,
          inlet,
          outlet: inlet + difference,
          coolantTemperature: 365,
          pressureDrop: 8000 - 10 * index,
          engineSpeed: 33,
        }));
        expect(watchRegeneration(steady, limits)).toEqual([]);
      }),
    );
  });
});

describe('quality', () => {
  const line = fc.tuple(number(1, 300), number(400, 1000));
  const log = fc.array(line, { minLength: 2, maxLength: 30 }).map((rows) => {
    let time = 0;
    return rows.map(([step, temperature]) => {
      time += step;
      return { time, temperature };
    });
  });

  it('counts no more time than the log has, less above a higher temperature, and the same when a line is put between', () => {
    fc.assert(
      fc.property(log, number(400, 900), number(0, 100), number(0.01, 0.99), (lines, threshold, more, share) => {
        const span = (lines.at(-1)?.time ?? 0) - (lines[0]?.time ?? 0);
        const { total, longest } = timeAboveTemperature(lines, threshold);
        expect(longest).toBeLessThanOrEqual(total * (1 + 1e-12));
        expect(total).toBeLessThanOrEqual(span * (1 + 1e-12));
        expect(timeAboveTemperature(lines, threshold + more).total).toBeLessThanOrEqual(total * (1 + 1e-12));
        const [first, second] = lines as [(typeof lines)[number], (typeof lines)[number]];
        const between = {
          time: first.time + share * (second.time - first.time),
          temperature: first.temperature + share * (second.temperature - first.temperature),
        };
        const finer = [first, between, ...lines.slice(1)];
        expect(timeAboveTemperature(finer, threshold).total).toBeCloseTo(total, 6);
        const kinetics = { oxygen: bai2016Oxygen };
        expect(Math.abs(expectedBurnOff(finer, kinetics, 0.1) - expectedBurnOff(lines, kinetics, 0.1))).toBeLessThan(1e-6);
        expect(expectedBurnOff(lines, kinetics, 0)).toBe(0);
      }),
    );
  });
});
