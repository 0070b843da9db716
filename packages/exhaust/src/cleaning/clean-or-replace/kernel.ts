export interface CleanOrReplaceInput {
  /** Prices in one currency, fitting included. */
  readonly cleaningPrice: number;
  readonly newPrice: number;
  /** Chance that the clean does not hold and a new filter follows at once. */
  readonly failureRisk: number;
  /** Distances to the next service of the filter, m, with their relative standard uncertainties. */
  readonly cleanedLife: number;
  readonly cleanedLifeUncertainty: number;
  readonly newLife: number;
  readonly newLifeUncertainty: number;
  /** Distance that the vehicle will still be driven, m; life beyond it is worth nothing. */
  readonly remainingDistance?: number | undefined;
}

export interface CostPerDistance {
  /** Expected price and expected useful distance in m; the cost is their ratio. */
  readonly price: number;
  readonly distance: number;
}

export interface CleanOrReplace {
  readonly clean: CostPerDistance;
  readonly replace: CostPerDistance;
  /** Cost of cleaning less cost of replacing, per m, with its standard uncertainty. */
  readonly difference: number;
  readonly differenceUncertainty: number;
  /** Price of a clean at which both cost the same. */
  readonly breakEvenPrice: number;
}

/**
 * Expected cost over expected distance of both ways: (C + p N)/((1 − p) L_c + p L_n) against N/L_n. Uncertainty of the lives
 * to first order (JCGM 100:2008 Eq. 10); a life that the vehicle does not live to use adds none.
 */
export function cleanOrReplace(input: CleanOrReplaceInput): CleanOrReplace {
  const { cleaningPrice, newPrice, failureRisk, remainingDistance = Number.POSITIVE_INFINITY } = input;
  const cleanedLife = Math.min(input.cleanedLife, remainingDistance);
  const newLife = Math.min(input.newLife, remainingDistance);
  const clean = { price: cleaningPrice + failureRisk * newPrice, distance: (1 - failureRisk) * cleanedLife + failureRisk * newLife };
  const replace = { price: newPrice, distance: newLife };
  const cleanCost = clean.price / clean.distance;
  const newCost = newPrice / newLife;
  const ofCleaned = input.cleanedLife > remainingDistance ? 0 : input.cleanedLifeUncertainty * cleanedLife;
  const ofNew = input.newLife > remainingDistance ? 0 : input.newLifeUncertainty * newLife;
  const byCleaned = (-cleanCost * (1 - failureRisk)) / clean.distance;
  const byNew = (-cleanCost * failureRisk) / clean.distance + newCost / newLife;
  return {
    clean,
    replace,
    difference: cleanCost - newCost,
    differenceUncertainty: Math.hypot(byCleaned * ofCleaned, byNew * ofNew),
    breakEvenPrice: newCost * clean.distance - failureRisk * newPrice,
  };
}
