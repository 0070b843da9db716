/**
 * What is dosed over what is wanted: the learned factor times the quantity that the injector gives per command.
 * A factor learned on a blocked injector stays above 1 after the cleaning, until it is learned again.
 */
export function dosedOverWanted(learnedFactor: number, injectorRatio: number): number {
  return learnedFactor * injectorRatio;
}

export type DosingFactorVerdict = 'consistent' | 'over-dosing' | 'under-dosing' | 'undecided';

export function dosingFactorVerdict(ratio: number, uncertainty: number, tolerance: number): DosingFactorVerdict {
  const deviation = ratio - 1;
  if (deviation - uncertainty > tolerance) return 'over-dosing';
  if (deviation + uncertainty < -tolerance) return 'under-dosing';
  return Math.abs(deviation) + uncertainty <= tolerance ? 'consistent' : 'undecided';
}
