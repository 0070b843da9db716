import {
  ammoniaBalance,
  ammoniaFromReductant,
  ammoniaPerNox,
  compareSamples,
  concentrationFromDensity,
  concentrationFromIndex,
  dryWetByWaterBalance,
  effectiveAmmoniaRatio,
  mixedFraction,
  molarMassOfNitrogenDioxide,
  reactionShares,
  reductantMassFlow,
  refractiveIndexAt20,
  scrPlugFlow,
  teachingScrModel,
  thawHeat,
  ureaFractionFromDensityAt20,
  ureaFractionFromIndexAt20,
  ureaSolutionDensityAt20,
  waterToReach,
} from '@wallflow/exhaust';
import { registry } from '@wallflow/exhaust/calculations';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';

const seed = 20_240_229;
const number = (min: number, max: number) => fc.double({ min, max, noNaN: true, noDefaultInfinity: true });

describe('reductant and NOx', () => {
  it('releases the ammonia that was asked for', () => {
    fc.assert(
      fc.property(number(1e-6, 1), number(0.05, 0.5), (ammoniaMolarFlow, ureaFraction) => {
        const flow = reductantMassFlow({ ammoniaMolarFlow, ureaFraction });
        expect(ammoniaFromReductant(flow, ureaFraction) / ammoniaMolarFlow).toBeCloseTo(1, 12);
      }),
      { seed },
    );
  });

  it('never needs more volume of a stronger solution', () => {
    fc.assert(
      fc.property(number(1e-6, 1), number(0.05, 0.5), number(0.05, 0.5), (ammoniaMolarFlow, a, b) => {
        const volume = (ureaFraction: number) =>
          reductantMassFlow({ ammoniaMolarFlow, ureaFraction }) / ureaSolutionDensityAt20(ureaFraction);
        const [weak, strong] = a < b ? [a, b] : [b, a];
        expect(volume(strong)).toBeLessThanOrEqual(volume(weak) * (1 + 1e-12));
      }),
      { seed },
    );
  });

  it('gives back the ratio at which a tank was dosed', () => {
    fc.assert(
      fc.property(number(0.1, 3), number(1e-3, 100), number(0.05, 0.5), (ratio, noxMass, ureaFraction) => {
        const ammonia = (ratio * noxMass) / molarMassOfNitrogenDioxide;
        const reductantMass = reductantMassFlow({ ammoniaMolarFlow: ammonia, ureaFraction });
        expect(effectiveAmmoniaRatio({ reductantMass, ureaFraction, noxMass })).toBeCloseTo(ratio, 10);
      }),
      { seed },
    );
  });

  it('shares all NOx between the three reactions and never needs less than one ammonia each', () => {
    fc.assert(
      fc.property(number(0, 1), (share) => {
        const { standard, fast, nitrogenDioxide } = reactionShares(share);
        expect(standard + fast + nitrogenDioxide).toBeCloseTo(1, 12);
        expect(standard + fast + (4 / 3) * nitrogenDioxide).toBeCloseTo(ammoniaPerNox(share), 12);
        expect(ammoniaPerNox(share)).toBeGreaterThanOrEqual(1);
      }),
      { seed },
    );
  });

  it('finds the conversion and the slip that made the readings', () => {
    fc.assert(
      fc.property(number(1e-5, 2e-3), number(0, 1), number(0, 1), number(0, 1.5), (upstream, conversion, excess, crossSensitivity) => {
        const dosedRatio = conversion + excess;
        const downstream = (1 - conversion) * upstream + crossSensitivity * excess * upstream;
        const balance = ammoniaBalance({ upstream, downstream, crossSensitivity }, dosedRatio, 1);
        expect(balance.conversion).toBeCloseTo(conversion, 9);
        expect(balance.ammoniaSlip / upstream).toBeCloseTo(excess, 9);
      }),
      { seed },
    );
  });
});

describe('conversion from two sensors', () => {
  const calculation = registry.get('nox-conversion');
  const ppm = (value: number) => ({ value, unit: 'ppm' });

  it('lies between 0 and 1, or carries a warning and no verdict of a pass', () => {
    fc.assert(
      fc.property(number(20, 3000), number(0, 3000), fc.option(number(0, 3), { nil: undefined }), (upstream, downstream, dosedRatio) => {
        const ratio = dosedRatio === undefined ? {} : { dosedRatio: { value: dosedRatio, unit: '1' } };
        const result = calculation?.run({ upstream: ppm(upstream), downstream: ppm(downstream), catalystTemperature: '300 °C', ...ratio });
        if (!result?.ok) throw new Error('refused');
        const { apparentConversion, correctedConversion, ammoniaSlip, verdict } = result.outputs as Record<
          string,
          number | string | undefined
        >;
        if ((apparentConversion as number) < 0) expect(result.warnings.map((warning) => warning.code)).toContain('not_between_0_and_1');
        if (correctedConversion !== undefined) {
          expect(correctedConversion).toBeGreaterThanOrEqual(0);
          expect(correctedConversion).toBeLessThanOrEqual(1);
          expect(ammoniaSlip).toBeGreaterThanOrEqual(0);
        }
        if (verdict === 'poor') expect(correctedConversion).toBeDefined();
      }),
      { seed, numRuns: 200 },
    );
  });
});

describe('dry and wet', () => {
  it('comes back to the reading after there and back, and dry is never below wet', () => {
    const calculation = registry.get('dry-wet-correction');
    const editions = ['water-balance', 'un-r49-2008', 'directive-1999'];
    fc.assert(
      fc.property(fc.constantFrom(...editions), number(5, 65), number(0, 30), number(1, 5000), (edition, ratio, humidity, ppm) => {
        const common = { edition, fuelToAirRatio: `${ratio} g/kg`, intakeHumidity: `${humidity} g/kg` };
        const there = calculation?.run({ ...common, reading: { value: ppm, unit: 'ppm' }, readingBasis: 'dry' });
        if (!there?.ok) throw new Error('refused');
        const wet = there.outputs.wetReading as number;
        const back = calculation?.run({ ...common, reading: { value: wet, unit: '1' }, readingBasis: 'wet' });
        if (!back?.ok) throw new Error('refused');
        expect(((back.outputs.dryReading as number) * 1e6) / ppm).toBeCloseTo(1, 9);
        if (edition !== 'un-r49-2008') expect(wet * 1e6).toBeLessThanOrEqual(ppm);
      }),
      { seed, numRuns: 60 },
    );
  });

  it('holds more water with more fuel and with more humid air', () => {
    const fuel = { hydrogenFraction: 0.135, oxygenFraction: 0 };
    fc.assert(
      fc.property(number(0.005, 0.06), number(0, 0.03), number(1e-4, 0.005), (fuelToAirRatio, intakeHumidity, more) => {
        const factor = dryWetByWaterBalance({ ...fuel, fuelToAirRatio, intakeHumidity });
        expect(dryWetByWaterBalance({ ...fuel, fuelToAirRatio: fuelToAirRatio + more, intakeHumidity })).toBeLessThan(factor);
        expect(dryWetByWaterBalance({ ...fuel, fuelToAirRatio, intakeHumidity: intakeHumidity + more })).toBeLessThan(factor);
      }),
      { seed },
    );
  });
});

describe('urea solution', () => {
  it('gives back the urea content from index and from density', () => {
    fc.assert(
      fc.property(number(0.001, 0.5), (urea) => {
        expect(ureaFractionFromIndexAt20(refractiveIndexAt20(urea))).toBeCloseTo(urea, 9);
        expect(ureaFractionFromDensityAt20(ureaSolutionDensityAt20(urea))).toBeCloseTo(urea, 12);
      }),
      { seed },
    );
  });

  it('reads more urea from a higher index, a higher density and a warmer sample', () => {
    fc.assert(
      fc.property(number(1.335, 1.41), number(278.15, 308.15), number(1e-4, 5e-3), (index, temperature, more) => {
        const urea = concentrationFromIndex(index, temperature, 0.0003).ureaFraction;
        expect(concentrationFromIndex(index + more, temperature, 0.0003).ureaFraction).toBeGreaterThan(urea);
        expect(concentrationFromIndex(index, temperature + 2, 0.0003).ureaFraction).toBeGreaterThan(urea);
        const density = 1000 + 2000 * (index - 1.333);
        expect(concentrationFromDensity(density + 1, temperature, 1).ureaFraction).toBeGreaterThan(
          concentrationFromDensity(density, temperature, 1).ureaFraction,
        );
      }),
      { seed },
    );
  });

  it('mixes to a content between its parts, whatever the order', () => {
    const part = fc.record({ mass: number(0.01, 100), fraction: number(0, 0.5) });
    fc.assert(
      fc.property(fc.array(part, { minLength: 2, maxLength: 6 }), (parts) => {
        const mixed = mixedFraction(parts);
        expect(mixed).toBeGreaterThanOrEqual(Math.min(...parts.map((p) => p.fraction)) - 1e-12);
        expect(mixed).toBeLessThanOrEqual(Math.max(...parts.map((p) => p.fraction)) + 1e-12);
        expect(mixedFraction([...parts].reverse())).toBeCloseTo(mixed, 12);
      }),
      { seed },
    );
  });

  it('needs the water that it says to come down to a content', () => {
    fc.assert(
      fc.property(number(0.1, 100), number(0.1, 0.5), number(0.1, 0.99), (mass, from, share) => {
        const water = waterToReach(mass, from, share * from);
        expect(
          mixedFraction([
            { mass, fraction: from },
            { mass: water, fraction: 0 },
          ]),
        ).toBeCloseTo(share * from, 10);
      }),
      { seed },
    );
  });

  it('finds no difference between a sample and itself', () => {
    fc.assert(
      fc.property(number(0, 0.5), number(0, 0.002), (ureaFraction, uncertainty) => {
        const sample = { ureaFraction, uncertainty };
        expect(compareSamples([sample, sample], 0.005).verdict).toBe('same');
      }),
      { seed },
    );
  });

  it('adds up heat over any temperature in between', () => {
    fc.assert(
      fc.property(number(230, 260), number(0, 1), number(265, 300), (startTemperature, share, endTemperature) => {
        const middle = startTemperature + share * (endTemperature - startTemperature);
        fc.pre(Math.abs(middle - 261.65) > 1e-6);
        const total = (from: number, to: number) => {
          const { solid, melting, liquid } = thawHeat({ mass: 1, startTemperature: from, endTemperature: to });
          return solid + melting + liquid;
        };
        expect(total(startTemperature, middle) + total(middle, endTemperature)).toBeCloseTo(total(startTemperature, endTemperature), 4);
      }),
      { seed },
    );
  });
});

describe('SCR teaching model', () => {
  const input = fc.record({
    temperature: number(420, 820),
    spaceVelocity: number(3, 50),
    noxMoleFraction: number(2e-5, 2e-3),
    dosedRatio: number(0, 2),
    nitrogenDioxideShare: number(0, 1),
  });

  it('closes the ammonia balance and keeps the conversion between 0 and what the ammonia allows', () => {
    fc.assert(
      fc.property(input, (point) => {
        const found = scrPlugFlow(point, 3);
        if (found === undefined) throw new Error('integration failed');
        const { noxMoleFraction: nox, dosedRatio, nitrogenDioxideShare } = point;
        const used = ammoniaPerNox(nitrogenDioxideShare) * (nox - found.nox);
        expect((used + found.burnt + found.ammonia) / nox).toBeCloseTo(dosedRatio, 6);
        const conversion = 1 - found.nox / nox;
        expect(conversion).toBeGreaterThanOrEqual(-1e-9);
        expect(conversion).toBeLessThanOrEqual(Math.min(1, dosedRatio / ammoniaPerNox(nitrogenDioxideShare)) + 1e-6);
      }),
      { seed, numRuns: 60 },
    );
  });

  it('converts more with more catalyst and never less with more ammonia', () => {
    fc.assert(
      fc.property(input, number(1.05, 3), (point, factor) => {
        const conversion = (changed: Partial<typeof point>) =>
          1 - (scrPlugFlow({ ...point, ...changed }, 2)?.nox ?? Number.NaN) / point.noxMoleFraction;
        const base = conversion({});
        expect(conversion({ spaceVelocity: point.spaceVelocity / factor })).toBeGreaterThanOrEqual(base - 1e-6);
        expect(conversion({ dosedRatio: point.dosedRatio * factor })).toBeGreaterThanOrEqual(base - 1e-6);
      }),
      { seed, numRuns: 40 },
    );
  });

  it('is a first-order plug flow where the surface is full of ammonia', () => {
    const full = {
      ...teachingScrModel,
      adsorption: { ...teachingScrModel.adsorption, atReference: 1e12 },
      oxidation: { ...teachingScrModel.oxidation, atReference: 0 },
    };
    fc.assert(
      fc.property(number(5, 60), (spaceVelocity) => {
        const point = { temperature: 523.15, spaceVelocity, noxMoleFraction: 4e-4, dosedRatio: 2, nitrogenDioxideShare: 0 };
        const rate = 1 / (1 / 25 + 1 / 60);
        expect(1 - (scrPlugFlow(point, 2, full)?.nox ?? Number.NaN) / 4e-4).toBeCloseTo(1 - Math.exp(-rate / spaceVelocity), 6);
      }),
      { seed, numRuns: 30 },
    );
  });
});
