import { requireEqualLengths } from '../errors.js';

/*
 * Each function gives `undefined` when there are too few values for it, or when a value is NaN or
 * infinite: a statistic of unknown values is unknown.
 */

/** Arithmetic mean of at least one value. */
export function mean(values: ArrayLike<number>): number | undefined {
  if (values.length === 0) return undefined;
  let sum = 0;
  for (let i = 0; i < values.length; i += 1) sum += values[i]!;
  const first = sum / values.length;
  // A second pass takes up the rounding of the first.
  let rest = 0;
  for (let i = 0; i < values.length; i += 1) rest += values[i]! - first;
  return finiteOnly(first + rest / values.length);
}

/**
 * Standard deviation of at least two values about their mean, with n − 1 (40 CFR 1065.602(c); JCGM
 * 100:2008, 4.2.2).
 */
export function standardDeviation(values: ArrayLike<number>): number | undefined {
  const centre = mean(values);
  if (centre === undefined || values.length < 2) return undefined;
  let squares = 0;
  let rest = 0;
  for (let i = 0; i < values.length; i += 1) {
    const deviation = values[i]! - centre;
    squares += deviation * deviation;
    rest += deviation;
  }
  return finiteOnly(Math.sqrt(Math.max(0, squares - (rest * rest) / values.length) / (values.length - 1)));
}

/** Square root of the mean square of at least one value (40 CFR 1065.602(d)). */
export function rootMeanSquare(values: ArrayLike<number>): number | undefined {
  if (values.length === 0) return undefined;
  let squares = 0;
  for (let i = 0; i < values.length; i += 1) squares += values[i]! * values[i]!;
  return finiteOnly(Math.sqrt(squares / values.length));
}

/**
 * Covariance of two lists of at least two values about their means, with n − 1 (JCGM 100:2008,
 * 5.2.3, equation 17 without the division by n).
 *
 * @throws NumericsError `unequal_lengths`
 */
export function covariance(first: ArrayLike<number>, second: ArrayLike<number>): number | undefined {
  requireEqualLengths('first', first, 'second', second);
  const firstMean = mean(first);
  const secondMean = mean(second);
  if (firstMean === undefined || secondMean === undefined || first.length < 2) return undefined;
  let products = 0;
  for (let i = 0; i < first.length; i += 1) products += (first[i]! - firstMean) * (second[i]! - secondMean);
  return finiteOnly(products / (first.length - 1));
}

/**
 * Correlation coefficient of two lists of at least two values; `undefined` also when one does not vary.
 *
 * @throws NumericsError `unequal_lengths`
 */
export function correlation(first: ArrayLike<number>, second: ArrayLike<number>): number | undefined {
  const shared = covariance(first, second);
  const firstSpread = standardDeviation(first);
  const secondSpread = standardDeviation(second);
  if (shared === undefined || !firstSpread || !secondSpread) return undefined;
  return finiteOnly(Math.max(-1, Math.min(1, shared / firstSpread / secondSpread)));
}

/** A number, or `undefined` in place of NaN and infinity. */
export function finiteOnly(value: number): number | undefined {
  return Number.isFinite(value) ? value : undefined;
}
