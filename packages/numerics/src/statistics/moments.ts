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

/** A number, or `undefined` in place of NaN and infinity. */
function finiteOnly(value: number): number | undefined {
  return Number.isFinite(value) ? value : undefined;
}
