import { inconsistentInputs, type Refusal } from '@wallflow/calculation';
import { ureaSolutionDensityAt20 } from '../../reductant/solution/density.js';
import { ethanolWaterDensity } from './ethanol-density.js';
import { type MixtureDensity, massFractionOf, volumeFractionOf } from './kernel.js';

export const liquidOptions = {
  'ethanol-water': 'ethanol and water (solvent cleaner, screen wash)',
  'urea-water': 'urea and water (reductant)',
} as const;
export type Liquid = keyof typeof liquidOptions;

export const basisOptions = { volume: 'volume', mass: 'mass' } as const;
export type StrengthBasis = keyof typeof basisOptions;

/** Strongest urea solution that the density relation covers; it is nearly saturated at 20 °C. */
const strongestUrea = 0.5;

export interface LiquidModel {
  readonly density: MixtureDensity;
  /** Between a strength on the basis that the user chose and a mass fraction. */
  readonly massFraction: (strength: number) => number;
  readonly strength: (massFraction: number) => number;
}

/** The density relation of a liquid, or a refusal when strengths on that basis mean nothing for it. */
export function liquidModel(liquid: Liquid, basis: StrengthBasis, strengths: Readonly<Record<string, number>>): LiquidModel | Refusal {
  if (liquid === 'urea-water') {
    if (basis === 'volume') return inconsistentInputs('urea is a solid: its strength is stated by mass', ['strengthBasis'], ['liquid']);
    const tooStrong = Object.keys(strengths).find((key) => (strengths[key] ?? 0) > strongestUrea);
    if (tooStrong !== undefined) {
      return inconsistentInputs(
        'urea solution is only covered up to 50 % by mass; it is saturated a little above',
        [tooStrong],
        ['liquid'],
      );
    }
    return { density: ureaSolutionDensityAt20, massFraction: (strength) => strength, strength: (fraction) => fraction };
  }
  const density = ethanolWaterDensity;
  if (basis === 'mass') return { density, massFraction: (strength) => strength, strength: (fraction) => fraction };
  return {
    density,
    massFraction: (strength) => massFractionOf(density, strength),
    strength: (fraction) => volumeFractionOf(density, fraction),
  };
}
