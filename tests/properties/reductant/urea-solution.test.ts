import {
  compareSamples,
  concentrationFromDensity,
  concentrationFromIndex,
  mixedUreaFraction,
  refractiveIndexAt20,
  thawHeat,
  ureaFractionFromDensityAt20,
  ureaFractionFromIndexAt20,
  ureaSolutionDensityAt20,
  waterToReach,
} from '@wallflow/exhaust';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';

const number = (min: number, max: number) => fc.double({ min, max, noNaN: true, noDefaultInfinity: true });

describe('urea solution', () => {
  it('gives back the urea content from index and from density', () => {
    fc.assert(
      fc.property(number(0.001, 0.5), (urea) => {
        expect(ureaFractionFromIndexAt20(refractiveIndexAt20(urea))).toBeCloseTo(urea, 9);
        expect(ureaFractionFromDensityAt20(ureaSolutionDensityAt20(urea))).toBeCloseTo(urea, 12);
      }),
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
    );
  });

  it('mixes to a content between its parts, whatever the order', () => {
    const part = fc.record({ mass: number(0.01, 100), fraction: number(0, 0.5) });
    fc.assert(
      fc.property(fc.array(part, { minLength: 2, maxLength: 6 }), (parts) => {
        const mixed = mixedUreaFraction(parts);
        expect(mixed).toBeGreaterThanOrEqual(Math.min(...parts.map((p) => p.fraction)) - 1e-12);
        expect(mixed).toBeLessThanOrEqual(Math.max(...parts.map((p) => p.fraction)) + 1e-12);
        expect(mixedUreaFraction([...parts].reverse())).toBeCloseTo(mixed, 12);
      }),
    );
  });

  it('needs the water that it says to come down to a content', () => {
    fc.assert(
      fc.property(number(0.1, 100), number(0.1, 0.5), number(0.1, 0.99), (mass, from, share) => {
        const water = waterToReach(mass, from, share * from);
        expect(
          mixedUreaFraction([
            { mass, fraction: from },
            { mass: water, fraction: 0 },
          ]),
        ).toBeCloseTo(share * from, 10);
      }),
    );
  });

  it('finds no difference between a sample and itself', () => {
    fc.assert(
      fc.property(number(0, 0.5), number(0, 0.002), (ureaFraction, uncertainty) => {
        const sample = { ureaFraction, uncertainty };
        expect(compareSamples([sample, sample], 0.005).verdict).toBe('same');
      }),
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
    );
  });
});
