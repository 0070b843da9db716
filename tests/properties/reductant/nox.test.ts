import {
  ammoniaBalance,
  ammoniaFromReductant,
  ammoniaPerNox,
  dryWetByWaterBalance,
  effectiveAmmoniaRatio,
  molarMassOfNitrogenDioxide,
  reactionShares,
  reductantMassFlow,
  ureaSolutionDensityAt20,
} from '@wallflow/exhaust';
import { registry } from '@wallflow/exhaust/calculations';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';

const number = (min: number, max: number) => fc.double({ min, max, noNaN: true, noDefaultInfinity: true });

describe('reductant and NOx', () => {
  it('releases the ammonia that was asked for', () => {
    fc.assert(
      fc.property(number(1e-6, 1), number(0.05, 0.5), (ammoniaMolarFlow, ureaFraction) => {
        const flow = reductantMassFlow({ ammoniaMolarFlow, ureaFraction });
        expect(ammoniaFromReductant(flow, ureaFraction) / ammoniaMolarFlow).toBeCloseTo(1, 12);
      }),
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
    );
  });

  it('gives back the ratio at which a tank was dosed', () => {
    fc.assert(
      fc.property(number(0.1, 3), number(1e-3, 100), number(0.05, 0.5), (ratio, noxMass, ureaFraction) => {
        const ammonia = (ratio * noxMass) / molarMassOfNitrogenDioxide;
        const reductantMass = reductantMassFlow({ ammoniaMolarFlow: ammonia, ureaFraction });
        expect(effectiveAmmoniaRatio({ reductantMass, ureaFraction, noxMass })).toBeCloseTo(ratio, 10);
      }),
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
    );
  });

  it('finds the conversion and the slip that made the readings', () => {
    fc.assert(
      fc.property(number(1e-5, 2e-3), number(0, 1), number(0, 1), number(0, 1.5), (noxBefore, conversion, excess, crossSensitivity) => {
        const dosedRatio = conversion + excess;
        const noxAfter = (1 - conversion) * noxBefore + crossSensitivity * excess * noxBefore;
        const balance = ammoniaBalance({ noxBefore, noxAfter, crossSensitivity }, dosedRatio, 1);
        expect(balance.conversion).toBeCloseTo(conversion, 9);
        expect(balance.ammoniaSlip / noxBefore).toBeCloseTo(excess, 9);
      }),
    );
  });
});

describe('conversion from two sensors', () => {
  const calculation = registry.get('nox-conversion');
  const ppm = (value: number) => ({ value, unit: 'ppm' });

  it('lies between 0 and 1, or carries a warning and no verdict of a pass', () => {
    fc.assert(
      fc.property(number(20, 3000), number(0, 3000), fc.option(number(0, 3), { nil: undefined }), (noxBefore, noxAfter, dosedRatio) => {
        const ratio = dosedRatio === undefined ? {} : { dosedRatio: { value: dosedRatio, unit: '1' } };
        const result = calculation?.run({ noxBefore: ppm(noxBefore), noxAfter: ppm(noxAfter), catalystTemperature: '300 °C', ...ratio });
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
      { numRuns: 200 },
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
        const there = calculation?.run({ ...common, gasReading: { value: ppm, unit: 'ppm' }, readingBasis: 'dry' });
        if (!there?.ok) throw new Error('refused');
        const wet = there.outputs.wetReading as number;
        const back = calculation?.run({ ...common, gasReading: { value: wet, unit: '1' }, readingBasis: 'wet' });
        if (!back?.ok) throw new Error('refused');
        expect(((back.outputs.dryReading as number) * 1e6) / ppm).toBeCloseTo(1, 9);
        if (edition !== 'un-r49-2008') expect(wet * 1e6).toBeLessThanOrEqual(ppm);
      }),
      { numRuns: 60 },
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
    );
  });
});
