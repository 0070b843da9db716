import { chancesOf } from './chances.js';
import { usefulFilterLives } from './useful-life.js';

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
  /** Cost of cleaning less cost of replacing, per m, with the standard deviation that the lives give it. */
  readonly difference: number;
  readonly differenceUncertainty: number;
  /** Probabilities that the one and the other is cheaper; the rest is that both cost the same. */
  readonly cleanCheaper: number;
  readonly replaceCheaper: number;
  /** Price of a clean at which both cost the same. */
  readonly breakEvenPrice: number;
}

/**
 * Expected cost over expected distance of both ways: (C + p N)/((1 − p) L_c + p L_n) against N/L_n, lives up to the distance
 * still driven. What the lives may be otherwise is integrated over their lognormal distributions, because slopes say
 * nothing where a life ends at that distance. Cleaning is cheaper where C L_n is below (1 − p) N L_c.
 */
export function cleanOrReplace(input: CleanOrReplaceInput): CleanOrReplace {
  const { cleaningPrice, newPrice, failureRisk, remainingDistance: cap = Number.POSITIVE_INFINITY } = input;
  const cleanedLife = { mean: input.cleanedLife, uncertainty: input.cleanedLifeUncertainty, cap };
  const newLife = { mean: input.newLife, uncertainty: input.newLifeUncertainty, cap };
  const ways = (ofCleaned: number, ofNew: number) => ({
    clean: { price: cleaningPrice + failureRisk * newPrice, distance: (1 - failureRisk) * ofCleaned + failureRisk * ofNew },
    replace: { price: newPrice, distance: ofNew },
  });
  const differenceOf = ({ clean, replace }: ReturnType<typeof ways>) => clean.price / clean.distance - replace.price / replace.distance;
  const newLives = usefulFilterLives(newLife);
  const outcomes = usefulFilterLives(cleanedLife).flatMap((one) =>
    newLives.map((other) => ({ weight: one.weight * other.weight, value: differenceOf(ways(one.distance, other.distance)) })),
  );
  const mean = outcomes.reduce((sum, { weight, value }) => sum + weight * value, 0);
  const variance = outcomes.reduce((sum, { weight, value }) => sum + weight * (value - mean) ** 2, 0);
  const chances = chancesOf(cleanedLife, newLife, cleaningPrice / ((1 - failureRisk) * newPrice));
  const nominal = ways(Math.min(input.cleanedLife, cap), Math.min(input.newLife, cap));
  // Less than this of the cost is rounding.
  const rounding = 1e-8 * (nominal.clean.price / nominal.clean.distance + nominal.replace.price / nominal.replace.distance);
  const spread = Math.sqrt(variance);
  return {
    ...nominal,
    difference: differenceOf(nominal),
    differenceUncertainty: spread > rounding ? spread : 0,
    ...chances,
    breakEvenPrice: (newPrice / nominal.replace.distance) * nominal.clean.distance - failureRisk * newPrice,
  };
}

/** Chance from which a way counts as cheaper beyond what the guesses can tell: twice the standard deviation of a normal spread. */
export const sureChance = 0.975;
