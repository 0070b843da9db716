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
  normalBelow,
  nozzleMassFlow,
  oxygenForSoot,
  protonsGiven,
  usefulFilterLives,
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

  const constants = fc.array(fc.double({ min: -2, max: 14, noNaN: true }), { minLength: 1, maxLength: 4 });

  it('gives no more protons than an acid has, more at a higher pH, and leaves the liquid without charge', () => {
    fc.assert(
      fc.property(ph, fc.double({ min: 0, max: 3, noNaN: true }), constants, (low, more, steps) => {
        const given = protonsGiven(low, steps);
        expect(given).toBeGreaterThanOrEqual(0);
        expect(given).toBeLessThanOrEqual(steps.length);
        expect(protonsGiven(low + more, steps)).toBeGreaterThanOrEqual(given - 1e-12);
        // The species one by one, from the equilibrium of each step: their charges are those of the base they stand against.
        const species = [1];
        for (const constant of steps) species.push((species.at(-1) ?? 0) * 10 ** (low - constant));
        const all = species.reduce((sum, each) => sum + each, 0);
        const charge = species.reduce((sum, each, lost) => sum + (lost * each) / all, 0);
        expect(given).toBeCloseTo(charge, 9);
      }),
    );
  });

  it('gives half of a single proton at the constant itself, and the middle of three where they lie evenly round it', () => {
    expect(protonsGiven(4.756, [4.756])).toBeCloseTo(0.5, 12);
    fc.assert(
      fc.property(ph, fc.double({ min: 0, max: 4, noNaN: true }), (middle, spread) => {
        expect(protonsGiven(middle, [middle - spread, middle, middle + spread])).toBeCloseTo(1.5, 9);
      }),
    );
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

  it('follows the slopes of the lives where they are well known: the spread is what a small change of each gives', () => {
    fc.assert(
      fc.property(input, (values) => {
        const small = 1e-3;
        const plain = { ...values, remainingDistance: undefined, cleanedLifeUncertainty: small, newLifeUncertainty: small / 2 };
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

  it('has no jump where a life ends with what is still driven', () => {
    const values = { cleaningPrice: 1300, newPrice: 1400, failureRisk: 0.1, cleanedLifeUncertainty: 0.3, newLifeUncertainty: 0.2 };
    const at = (cleanedLife: number) => cleanOrReplace({ ...values, cleanedLife, newLife: 1.4e8, remainingDistance: 1.2e8 });
    fc.assert(
      fc.property(fc.double({ min: 0.9e8, max: 1.5e8, noNaN: true }), (life) => {
        const [one, other] = [at(life), at(life * (1 + 1e-6))];
        expect(other.differenceUncertainty / one.differenceUncertainty).toBeCloseTo(1, 4);
        expect(other.cleanCheaper).toBeCloseTo(one.cleanCheaper, 4);
        expect(one.differenceUncertainty).toBeGreaterThan(0);
      }),
    );
  });

  it('is cheaper one way or the other or the same, and a dearer clean is never likelier the cheaper way', () => {
    fc.assert(
      fc.property(input, fc.double({ min: 0, max: 1000, noNaN: true }), (values, more) => {
        const { cleanCheaper, replaceCheaper } = cleanOrReplace(values);
        expect(cleanCheaper + replaceCheaper).toBeLessThanOrEqual(1 + 1e-6);
        expect(Math.min(cleanCheaper, replaceCheaper)).toBeGreaterThanOrEqual(0);
        const dearer = cleanOrReplace({ ...values, cleaningPrice: values.cleaningPrice + more });
        expect(dearer.cleanCheaper).toBeLessThanOrEqual(cleanCheaper + 1e-5);
      }),
    );
  });

  it('uses a life with its mean and spread when nothing cuts it off, and never beyond what is driven', () => {
    const share = fc.double({ min: 0.01, max: 1, noNaN: true });
    fc.assert(
      fc.property(life, share, fc.double({ min: 0.1, max: 3, noNaN: true }), (mean, uncertainty, end) => {
        const all = usefulFilterLives({ mean, uncertainty, cap: Number.POSITIVE_INFINITY });
        const average = all.reduce((sum, { distance, weight }) => sum + distance * weight, 0);
        const spread = Math.sqrt(all.reduce((sum, { distance, weight }) => sum + (distance - average) ** 2 * weight, 0));
        expect(average / mean).toBeCloseTo(1, 5);
        expect(spread / (uncertainty * mean)).toBeCloseTo(1, 4);
        const cut = usefulFilterLives({ mean, uncertainty, cap: end * mean });
        expect(Math.max(...cut.map(({ distance }) => distance))).toBeLessThanOrEqual(end * mean * (1 + 1e-12));
        expect(cut.reduce((sum, { weight }) => sum + weight, 0)).toBeCloseTo(1, 12);
      }),
    );
  });

  it('knows the normal distribution of the tables', () => {
    expect(normalBelow(0)).toBeCloseTo(0.5, 6);
    expect(normalBelow(1)).toBeCloseTo(0.841345, 6);
    expect(normalBelow(1.96)).toBeCloseTo(0.975002, 6);
    expect(normalBelow(-3)).toBeCloseTo(0.00135, 6);
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
