import { ammoniaPerNox, scrPlugFlow, teachingScrModel } from '@wallflow/exhaust';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';

const number = (min: number, max: number) => fc.double({ min, max, noNaN: true, noDefaultInfinity: true });

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
      { numRuns: 60 },
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
      { numRuns: 40 },
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
      { numRuns: 30 },
    );
  });

  // What Madia, Koebel, Elsener and Wokaun (Ind. Eng. Chem. Res. 41, 3512, 2002) report, as far as their abstract says it.
  describe('has the shape that the literature reports for NO2', () => {
    const conversion = (celsius: number, nitrogenDioxideShare: number) => {
      const point = { temperature: celsius + 273.15, spaceVelocity: 11, noxMoleFraction: 4e-4, dosedRatio: 1, nitrogenDioxideShare };
      return 1 - (scrPlugFlow(point, 2)?.nox ?? Number.NaN) / 4e-4;
    };

    it.each([180, 200, 220, 250, 280])('NO2 up to half of the NOx raises conversion at %i °C, more of it lowers it', (celsius) => {
      expect(conversion(celsius, 0.25)).toBeGreaterThan(conversion(celsius, 0));
      expect(conversion(celsius, 0.5)).toBeGreaterThan(conversion(celsius, 0.25));
      expect(conversion(celsius, 0.8)).toBeLessThan(conversion(celsius, 0.5));
    });

    it.each([350, 375, 400])('at %i °C the share up to one half hardly matters', (celsius) => {
      expect(Math.abs(conversion(celsius, 0.5) - conversion(celsius, 0))).toBeLessThan(0.05);
    });
  });
});
