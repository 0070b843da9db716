import { ethanolWaterDensity, type LiquidPart, massFractionOf, mixWithContraction, volumeFractionOf, weaken } from '@wallflow/exhaust';
import fc from 'fast-check';
import { expect, it } from 'vitest';

const share = fc.double({ min: 0, max: 1, noNaN: true });
const volume = fc.double({ min: 1e-6, max: 1, noNaN: true });
const part: fc.Arbitrary<LiquidPart> = fc.record({ volume, massFraction: share });
const parts = fc.array(part, { minLength: 1, maxLength: 5 });
const massOf = (one: LiquidPart) => one.volume * ethanolWaterDensity(one.massFraction);
const sum = (values: readonly number[]) => values.reduce((total, value) => total + value, 0);

it('keeps the mass of the whole and of the alcohol, whatever the order', () => {
  fc.assert(
    fc.property(parts, (list) => {
      const once = mixWithContraction(ethanolWaterDensity, list);
      expect(once.mass).toBeCloseTo(sum(list.map(massOf)), 8);
      expect(once.mass * once.massFraction).toBeCloseTo(sum(list.map((one) => massOf(one) * one.massFraction)), 8);
      const oneByOne = [...list].reverse().reduce<LiquidPart | undefined>((whole, next) => {
        return whole === undefined ? next : mixWithContraction(ethanolWaterDensity, [whole, next]);
      }, undefined);
      expect(oneByOne?.massFraction).toBeCloseTo(once.massFraction, 9);
      expect(oneByOne?.volume).toBeCloseTo(once.volume, 9);
    }),
  );
});

it('swells by 0.15 % and shrinks by 3.8 % at most with water, and lies between its parts', () => {
  fc.assert(
    fc.property(part, part, (one, other) => {
      const mix = mixWithContraction(ethanolWaterDensity, [one, other]);
      // A weak solution swells a little in more water: by the published coefficients 0.151 % at most (0 % and 23.5 %, 65:35).
      expect(mix.volume).toBeLessThanOrEqual(mix.additiveVolume * 1.00152);
      expect(mix.volume).toBeGreaterThan(mix.additiveVolume * 0.962);
      expect(mix.massFraction).toBeGreaterThanOrEqual(Math.min(one.massFraction, other.massFraction) - 1e-12);
      expect(mix.massFraction).toBeLessThanOrEqual(Math.max(one.massFraction, other.massFraction) + 1e-12);
    }),
    { numRuns: 500 },
  );
});

it('the water that is added gives the strength that was asked for', () => {
  fc.assert(
    fc.property(part, fc.double({ min: 0.01, max: 1, noNaN: true }), (start, factor) => {
      fc.pre(start.massFraction > 1e-3);
      const wanted = start.massFraction * factor;
      const water = weaken(ethanolWaterDensity, start, wanted).waterVolume;
      const mix = mixWithContraction(ethanolWaterDensity, [start, { volume: water, massFraction: 0 }]);
      expect(mix.massFraction).toBeCloseTo(wanted, 10);
    }),
  );
});

it('strength by volume and by mass undo each other', () => {
  fc.assert(
    fc.property(share, (strength) => {
      expect(volumeFractionOf(ethanolWaterDensity, massFractionOf(ethanolWaterDensity, strength))).toBeCloseTo(strength, 12);
    }),
  );
});
