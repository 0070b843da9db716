/**
 * Moles of ammonia per mole of NOx that reacts, from the share of NO2 in the NOx.
 *
 * The fast reaction takes NO and NO2 in equal parts and, like the standard reaction, one ammonia for each.
 * NO2 beyond half of the NOx is left to the NO2 reaction, 8 NH3 + 6 NO2, which takes 4/3 each
 * (Madia et al. 2002). With a share y over one half that gives 2(1 − y) + (2y − 1) 4/3 = (2 + 2y)/3.
 */
export function ammoniaPerNox(nitrogenDioxideShare: number): number {
  return nitrogenDioxideShare <= 0.5 ? 1 : (2 + 2 * nitrogenDioxideShare) / 3;
}

/** Which share of the NOx each reaction takes when all of it reacts. */
export function reactionShares(nitrogenDioxideShare: number): {
  readonly standard: number;
  readonly fast: number;
  readonly nitrogenDioxide: number;
} {
  const paired = 2 * Math.min(nitrogenDioxideShare, 1 - nitrogenDioxideShare);
  return {
    standard: Math.max(0, 1 - 2 * nitrogenDioxideShare),
    fast: paired,
    nitrogenDioxide: Math.max(0, 2 * nitrogenDioxideShare - 1),
  };
}
