import { type PerSpecies, wilkeViscosity } from '@wallflow/exhaust';
import { expect, it } from 'vitest';

// Bird, Stewart, Lightfoot, Transport Phenomena, Example 1.4-2 (from memory): gas at 293 K, viscosities in 1e-7 g/(cm·s).
const fractions: PerSpecies = { carbonDioxide: 0.133, oxygen: 0.039, nitrogen: 0.828, water: 0, argon: 0 };
const viscosities: PerSpecies = { carbonDioxide: 1462, oxygen: 2031, nitrogen: 1754, water: 900, argon: 2200 };

it('gives the textbook mixture of carbon dioxide, oxygen and nitrogen', () => {
  expect(Math.round(wilkeViscosity(fractions, viscosities))).toBe(1714);
});

it('is 4 % to 5 % below the measured 1793 of the same example, as the book says', () => {
  const share = wilkeViscosity(fractions, viscosities) / 1793 - 1;
  expect(share).toBeLessThan(-0.04);
  expect(share).toBeGreaterThan(-0.05);
});
