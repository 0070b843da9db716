import {
  acidMass,
  airLift,
  alkaliToNeutralise,
  bakeSchedule,
  bakeVerdict,
  type CleanOrReplaceInput,
  cleanOrReplace,
  compressorVerdict,
  criticalPressureRatio,
  freeAlkali,
  type NozzleGas,
  type NozzleInput,
  nozzleMassFlow,
  oxygenForSoot,
} from '@wallflow/exhaust';
import { registry } from '@wallflow/exhaust/calculations';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';

const air: NozzleGas = { gasConstant: 8.314462618, molarMass: 0.0289656, heatCapacityRatio: 1.4 };
const nozzle: NozzleInput = { area: 1e-5, dischargeCoefficient: 1, pressure: 3e5, backPressure: 1e5, temperature: 293.15 };

describe('air through a nozzle', () => {
  it('rises with the pressure, without a jump where it chokes', () => {
    const critical = nozzle.backPressure * criticalPressureRatio(air.heatCapacityRatio);
    const at = (pressure: number) => nozzleMassFlow({ ...nozzle, pressure }, air);
    expect(at(critical * (1 + 1e-9)) / at(critical * (1 - 1e-9))).toBeCloseTo(1, 6);
    expect(at(nozzle.backPressure)).toBe(0);
    fc.assert(
      fc.property(fc.double({ min: 1e5, max: 2e6, noNaN: true }), fc.double({ min: 1, max: 1e5, noNaN: true }), (pressure, more) => {
        expect(at(pressure + more)).toBeGreaterThan(at(pressure));
      }),
    );
  });

  it('does not depend on what is behind a choked nozzle, and goes with its absolute pressure', () => {
    fc.assert(
      fc.property(fc.double({ min: 1e3, max: 1.5e5, noNaN: true }), (backPressure) => {
        expect(nozzleMassFlow({ ...nozzle, backPressure }, air)).toBeCloseTo(nozzleMassFlow(nozzle, air), 12);
      }),
    );
    expect(nozzleMassFlow({ ...nozzle, pressure: 6e5 }, air) / nozzleMassFlow(nozzle, air)).toBeCloseTo(2, 12);
  });
});

describe('compressor and receiver', () => {
  const size = fc.double({ min: 0.001, max: 100, noNaN: true });
  const maybe = fc.option(size, { nil: undefined });
  const budget = fc.record({ freeAirFlow: size, blowTime: size, cleanTime: size, delivery: maybe, stored: maybe });
  const good = ['enough', 'from-receiver', 'pauses'];

  it('are large enough only if what is delivered and stored covers what is blown', () => {
    fc.assert(
      fc.property(budget, ({ delivery, stored, ...air }) => {
        const verdict = compressorVerdict({ ...air, delivery, stored });
        const given = (delivery ?? 0) * Math.max(air.blowTime, air.cleanTime) + (stored ?? 0);
        if (good.includes(verdict)) expect(given * (1 + 1e-12)).toBeGreaterThanOrEqual(air.freeAirFlow * air.blowTime);
      }),
    );
  });

  it('stay large enough with a larger receiver and with a larger compressor', () => {
    fc.assert(
      fc.property(budget, size, ({ delivery = 1, stored = 1, ...air }, more) => {
        fc.pre(air.cleanTime >= air.blowTime);
        if (!good.includes(compressorVerdict({ ...air, delivery, stored }))) return;
        expect(good).toContain(compressorVerdict({ ...air, delivery, stored: stored + more }));
        expect(good).toContain(compressorVerdict({ ...air, delivery: delivery + more, stored }));
      }),
    );
  });
});

describe('neutralisation', () => {
  const water = { unitConcentration: 1000, ionProduct: 14 };
  const ph = fc.double({ min: 0, max: 14, noNaN: true });

  it('in two steps takes the same acid as in one, and none at the pH that is wanted', () => {
    fc.assert(
      fc.property(ph, ph, ph, (startPh, between, targetPh) => {
        const once = alkaliToNeutralise({ startPh, targetPh, ...water });
        const first = alkaliToNeutralise({ startPh, targetPh: between, ...water });
        const second = alkaliToNeutralise({ startPh: between, targetPh, ...water });
        expect(first + second).toBeCloseTo(once, 8);
        expect(alkaliToNeutralise({ startPh, targetPh: startPh, ...water })).toBe(0);
      }),
    );
    expect(freeAlkali(7, water.unitConcentration, water.ionProduct)).toBeCloseTo(0, 12);
  });

  it('uses as many protons as there is alkali', () => {
    const mass = acidMass(2.5, 0.192124, 3);
    expect((mass / 0.192124) * 3).toBeCloseTo(2.5, 12);
  });
});

describe('clean or replace', () => {
  const life = fc.double({ min: 1e6, max: 1e9, noNaN: true });
  const input: fc.Arbitrary<CleanOrReplaceInput> = fc.record({
    cleaningPrice: fc.double({ min: 0, max: 5000, noNaN: true }),
    newPrice: fc.double({ min: 1, max: 10_000, noNaN: true }),
    failureRisk: fc.double({ min: 0, max: 1, noNaN: true }),
    cleanedLife: life,
    cleanedLifeUncertainty: fc.double({ min: 0, max: 1, noNaN: true }),
    newLife: life,
    newLifeUncertainty: fc.double({ min: 0, max: 1, noNaN: true }),
    remainingDistance: fc.option(life, { nil: undefined }),
  });

  it('costs the same at the price that breaks even', () => {
    fc.assert(
      fc.property(input, (values) => {
        const { breakEvenPrice, replace } = cleanOrReplace(values);
        const even = cleanOrReplace({ ...values, cleaningPrice: breakEvenPrice });
        expect(Math.abs(even.difference)).toBeLessThan(1e-9 * (replace.price / replace.distance));
      }),
    );
  });

  it('follows the slopes of the lives: the uncertainty is what a small change of each gives', () => {
    fc.assert(
      fc.property(input, (values) => {
        const plain = { ...values, remainingDistance: undefined };
        const step = 1e-5;
        const slope = (key: 'cleanedLife' | 'newLife') => {
          const up = cleanOrReplace({ ...plain, [key]: plain[key] * (1 + step) }).difference;
          const down = cleanOrReplace({ ...plain, [key]: plain[key] * (1 - step) }).difference;
          return (up - down) / (2 * step);
        };
        const expected = Math.hypot(slope('cleanedLife') * plain.cleanedLifeUncertainty, slope('newLife') * plain.newLifeUncertainty);
        const scale = plain.newPrice / plain.newLife + (plain.cleaningPrice + plain.newPrice) / Math.min(plain.cleanedLife, plain.newLife);
        expect(Math.abs(cleanOrReplace(plain).differenceUncertainty - expected)).toBeLessThan(1e-5 * scale);
      }),
    );
  });
});

describe('baking', () => {
  it('is called within its limits only with air that is known and enough, and a body that stays cool enough', () => {
    const time = fc.double({ min: 1, max: 1e6, noNaN: true });
    fc.assert(
      fc.property(
        fc.option(time, { nil: undefined }),
        time,
        fc.double({ min: 500, max: 1500, noNaN: true }),
        (shortestBurn, holdTime, peak) => {
          const verdict = bakeVerdict({ peakTemperature: peak, highestTemperature: 973.15, shortestBurn, holdTime });
          expect(verdict === 'within').toBe(peak <= 973.15 && shortestBurn !== undefined && shortestBurn <= holdTime);
          expect(verdict === 'remove-first').toBe(peak > 973.15);
        },
      ),
    );
  });

  it('spends no time twice and ends where it should', () => {
    const rate = fc.double({ min: 0.01, max: 0.2, noNaN: true });
    fc.assert(
      fc.property(rate, rate, fc.double({ min: 0, max: 1e5, noNaN: true }), (rampRate, coolRate, holdTime) => {
        const points = bakeSchedule({
          startTemperature: 293.15,
          holdTemperature: 873.15,
          unloadTemperature: 333.15,
          rampRate,
          coolRate,
          holdTime,
        });
        const times = points.map(({ time }) => time);
        expect(times).toEqual([...times].sort((a, b) => a - b));
        expect(points.at(-1)?.time).toBeCloseTo(580 / rampRate + holdTime + 540 / coolRate, 6);
        expect(points.at(-1)?.temperature).toBe(333.15);
      }),
    );
  });

  it('keeps the mass: carbon and oxygen make carbon dioxide', () => {
    const oxygen = oxygenForSoot(1, 0.031998, 0.012011);
    expect(1 + oxygen).toBeCloseTo(0.044009 / 0.012011, 9);
  });
});

describe('the lift of hot air in a filter', () => {
  const room = { ambientTemperature: 293.15, ambientPressure: 101_325, molarMass: air.molarMass };
  const hot = fc.double({ min: 294, max: 900, noNaN: true });

  it('is nothing at room temperature, grows with heat, and never exceeds the weight of the air in the room', () => {
    expect(airLift({ ...room, gasVolume: 0.014, temperature: room.ambientTemperature })).toBe(0);
    const all = 0.014 * 1.2041;
    fc.assert(
      fc.property(hot, fc.double({ min: 1, max: 100, noNaN: true }), (temperature, hotter) => {
        const at = (kelvin: number) => airLift({ ...room, gasVolume: 0.014, temperature: kelvin });
        expect(at(temperature + hotter)).toBeGreaterThan(at(temperature));
        expect(at(temperature)).toBeLessThan(all);
      }),
    );
  });

  it('does not change what came out when both weighings are as hot', () => {
    const weighing = registry.get('filter-weighing');
    const removed = (changes: Record<string, unknown>) => {
      const result = weighing?.run({ ...weighing.example, ...changes });
      if (result?.ok !== true) throw new Error('refused');
      return (result.outputs as Record<string, number>).removed;
    };
    fc.assert(
      fc.property(fc.double({ min: 0.1, max: 50, noNaN: true }), (litres) => {
        expect(removed({ gasVolume: `${litres} L` })).toBeCloseTo(removed({}) ?? Number.NaN, 12);
      }),
    );
  });
});
