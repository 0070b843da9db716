import { molarMassOfNitrogenDioxide, molarMassOfUrea } from '../constants.js';

export interface EffectiveRatioInput {
  /** Reductant used in kg. */
  readonly reductantMass: number;
  readonly ureaFraction: number;
  /** NOx in kg, counted as NO2. */
  readonly noxMass: number;
}

/** Moles of ammonia in the reductant used per mole of NOx. Molar masses in kg/mol. */
export function effectiveAmmoniaRatio(
  { reductantMass, ureaFraction, noxMass }: EffectiveRatioInput,
  molarMasses = { urea: molarMassOfUrea, nitrogenDioxide: molarMassOfNitrogenDioxide },
): number {
  const ammonia = (2 * reductantMass * ureaFraction) / molarMasses.urea;
  return ammonia / (noxMass / molarMasses.nitrogenDioxide);
}

export type EffectiveRatioVerdict = 'plausible' | 'too-little' | 'too-much' | 'undecided';

/** Where the ratio stands to a lowest and a highest plausible one, when it is known to ± a share of itself. */
export function effectiveRatioVerdict(ratio: number, relativeUncertainty: number, lowest: number, highest: number): EffectiveRatioVerdict {
  const spread = ratio * relativeUncertainty;
  if (ratio + spread < lowest) return 'too-little';
  if (ratio - spread > highest) return 'too-much';
  return ratio - spread >= lowest && ratio + spread <= highest ? 'plausible' : 'undecided';
}
