import { finiteOnly } from './moments.js';

/** 1 over the third quartile of the standard normal distribution, 1 / 0.674489750196082. */
const NORMAL_CONSISTENCY = 1.482602218505602;

/** Middle value, or the mean of the two middle ones; `undefined` without values or when one is not finite. */
export function median(values: ArrayLike<number>): number | undefined {
  const sorted = Float64Array.from(values).sort();
  if (sorted.length === 0 || !sorted.every(Number.isFinite)) return undefined;
  const middle = sorted.length >> 1;
  return sorted.length % 2 === 1 ? sorted[middle] : 0.5 * sorted[middle - 1]! + 0.5 * sorted[middle]!;
}

/**
 * Median of the distances from the median, a spread that a few outliers do not change (F. R. Hampel,
 * J. Am. Stat. Assoc. 69 (1974) 383–393). `undefined` without values or when one is not finite.
 *
 * @param scaled - multiply by 1.4826, so that it estimates the standard deviation of normal values
 */
export function medianAbsoluteDeviation(values: ArrayLike<number>, scaled = false): number | undefined {
  const centre = median(values);
  if (centre === undefined) return undefined;
  const deviation = median(Float64Array.from(values, (value) => Math.abs(value - centre)));
  return deviation === undefined ? undefined : finiteOnly(scaled ? NORMAL_CONSISTENCY * deviation : deviation);
}
