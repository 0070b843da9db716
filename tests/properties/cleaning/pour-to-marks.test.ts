import { Decimal } from 'decimal.js';
import fc from 'fast-check';
import { expect, it } from 'vitest';
import { pourToMarks } from '../../../packages/exhaust/src/cleaning/exact-volume.js';

// Whole millilitres and tenths, as jugs and labels have them.
const volume = fc.integer({ min: 1, max: 50_000 }).map((tenths) => tenths / 1e7);
const mark = fc.constantFrom(0.1, 0.25, 1, 2.5, 5, 10, 20, 25, 50, 100, 150).map((millilitres) => millilitres / 1e6);
const ratio = fc.constantFrom(0, 0.5, 1, 1.5, 2, 3, 4, 5, 9, 10, 19, 20, 99);

const exact = (value: number) => new Decimal(value.toPrecision(12));

it('ends on marks, never falls short and is never weaker than the label', () => {
  fc.assert(
    fc.property(volume, ratio, mark, (needed, parts, step) => {
      const { concentrate, water } = pourToMarks(needed, parts, step);
      expect(exact(concentrate).modulo(exact(step)).toNumber()).toBe(0);
      expect(exact(water).modulo(exact(step)).toNumber()).toBe(0);
      expect(exact(concentrate).plus(exact(water)).greaterThanOrEqualTo(exact(needed))).toBe(true);
      expect(exact(water).lessThanOrEqualTo(exact(concentrate).times(parts))).toBe(true);
    }),
  );
});

it('takes no more concentrate than a search over all marks finds necessary', () => {
  fc.assert(
    fc.property(fc.integer({ min: 1, max: 400 }), ratio, fc.integer({ min: 1, max: 30 }), (needed, parts, step) => {
      const { concentrate } = pourToMarks(needed / 1e6, parts, step / 1e6);
      let marks = 1;
      while (marks * step + Math.floor((marks * step * parts) / step) * step < needed || marks * step * (1 + parts) < needed) marks += 1;
      expect(Math.round((concentrate * 1e6) / step)).toBe(marks);
    }),
  );
});

it('adds a tenth and a fifth as decimals do', () => {
  // In doubles 0.1 + 0.2 is more than 0.3 and would ask for another mark.
  expect(pourToMarks(0.3e-3, 2, 0.1e-3)).toEqual({ concentrate: 0.1e-3, water: 0.2e-3, concentrateMarks: 1, waterMarks: 2 });
});
