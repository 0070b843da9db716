import { choice, inconsistentInputs, type Refusal, relevantWhen } from '@wallflow/calculation';
import { ureaSolutionDensityAt20 } from '../../reductant/solution/density.js';
import { ethanolWaterDensity } from './ethanol-density.js';
import { type MixtureDensity, massFractionOf, volumeFractionOf } from './kernel.js';

export const liquidOptions = {
  'ethanol-water': 'ethanol and water (solvent cleaner, screen wash)',
  'urea-water': 'urea and water (reductant)',
} as const;
export type Liquid = keyof typeof liquidOptions;

export type StrengthBasis = 'volume' | 'mass';

/** Which liquid, and for one that is not a dissolved solid, what its strengths are stated by. */
export const liquidInputs = {
  liquid: choice({
    label: 'Liquids',
    description: 'Strengths of urea solution are per cent by mass.',
    options: liquidOptions,
    example: 'ethanol-water',
  }),
  ...relevantWhen('liquid', 'ethanol-water', {
    strengthBasis: choice({ label: 'Strengths are per cent by', options: { volume: 'volume', mass: 'mass' }, example: 'volume' }),
  }),
};

/** Strongest urea solution that the density relation covers; it is nearly saturated at 20 °C. */
const strongestUrea = 0.5;

export interface LiquidModel {
  readonly density: MixtureDensity;
  /** Between a strength on the basis that the user chose and a mass fraction. */
  readonly massFraction: (strength: number) => number;
  readonly strength: (massFraction: number) => number;
}

/** The density relation of a liquid, or a refusal when strengths on that basis mean nothing for it. */
export function liquidModel(
  liquid: Liquid,
  basis: StrengthBasis | undefined,
  strengths: Readonly<Record<string, number>>,
): LiquidModel | Refusal {
  if (liquid === 'urea-water') {
    const tooStrong = Object.keys(strengths).find((key) => (strengths[key] ?? 0) > strongestUrea);
    if (tooStrong !== undefined) {
      return inconsistentInputs(
        'urea solution is covered only up to 50 % by mass; a little above that it is saturated',
        [tooStrong],
        ['liquid'],
      );
    }
    return { density: ureaSolutionDensityAt20, massFraction: (strength) => strength, strength: (fraction) => fraction };
  }
  const density = ethanolWaterDensity;
  if (basis !== 'volume') return { density, massFraction: (strength) => strength, strength: (fraction) => fraction };
  return {
    density,
    massFraction: (strength) => massFractionOf(density, strength),
    strength: (fraction) => volumeFractionOf(density, fraction),
  };
}
