import { requireEqualLengths } from '../errors.js';

/** Outcome of {@link weightedMean}. */
export interface WeightedMean {
  readonly mean: number;
  /** Uncertainty that follows from those of the values alone. */
  readonly standardUncertainty: number;
  /** Observed over expected scatter, the Birge ratio: well above 1 when the values disagree. Undefined for one value. */
  readonly birgeRatio: number | undefined;
}

/**
 * Mean of values weighted by the inverse squares of their standard uncertainties (R. T. Birge, Phys.
 * Rev. 40 (1932) 207–227). `undefined` without values, or when a value is not finite or an
 * uncertainty not above zero.
 *
 * @throws NumericsError `unequal_lengths`
 */
export function weightedMean(values: ArrayLike<number>, standardUncertainties: ArrayLike<number>): WeightedMean | undefined {
  requireEqualLengths('values', values, 'standardUncertainties', standardUncertainties);
  const count = values.length;
  let smallest = Infinity;
  for (let i = 0; i < count; i += 1) {
    const uncertainty = standardUncertainties[i]!;
    if (!Number.isFinite(values[i]) || !(uncertainty > 0 && uncertainty < Infinity)) return undefined;
    smallest = Math.min(smallest, uncertainty);
  }
  if (count === 0) return undefined;
  // Weights relative to the largest one cannot overflow.
  const weight = (i: number): number => (smallest / standardUncertainties[i]!) ** 2;
  let weights = 0;
  let sum = 0;
  for (let i = 0; i < count; i += 1) {
    weights += weight(i);
    sum += weight(i) * values[i]!;
  }
  const centre = sum / weights;
  let chiSquared = 0;
  for (let i = 0; i < count; i += 1) chiSquared += ((values[i]! - centre) / standardUncertainties[i]!) ** 2;
  const birgeRatio = count > 1 ? Math.sqrt(chiSquared / (count - 1)) : undefined;
  return { mean: centre, standardUncertainty: smallest / Math.sqrt(weights), birgeRatio };
}
