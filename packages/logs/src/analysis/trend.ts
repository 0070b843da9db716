import { studentTQuantile } from '@wallflow/numerics';
import { fitLinear } from '@wallflow/numerics/fit';

/** A smoothed series with its alarm limits. */
export interface SmoothedSeries {
  readonly values: readonly number[];
  readonly upper: number;
  readonly lower: number;
  /** Place of the first value beyond a limit. */
  readonly alarm: number | undefined;
}

/**
 * Exponentially weighted moving averages with steady-state limits (NIST/SEMATECH e-Handbook of Statistical Methods, 6.3.2.4).
 *
 * @param weight - of the newest value, above 0 and at most 1
 * @param width - of the limits, in standard deviations of the average
 */
export function smoothSeries(values: readonly number[], start: number, standardDeviation: number, weight = 0.3, width = 3): SmoothedSeries {
  let average = start;
  const smoothed = values.map((value) => {
    average = weight * value + (1 - weight) * average;
    return average;
  });
  const reach = width * standardDeviation * Math.sqrt(weight / (2 - weight));
  const [upper, lower] = [start + reach, start - reach];
  const alarm = smoothed.findIndex((value) => value > upper || value < lower);
  return { values: smoothed, upper, lower, alarm: alarm < 0 ? undefined : alarm };
}

/** A place where the mean of a series changed. */
export interface ChangePoint {
  /** Place of the first value after the change. */
  readonly at: number;
  readonly before: number;
  readonly after: number;
  /** Student's t of the two means. */
  readonly t: number;
}

/** Fewest values on each side of a change. */
const leastSide = 3;

/**
 * The likeliest single change of the mean: the cut with the greatest Student t, if that is greater than chance gives in any of the
 * possible cuts at the level (Bonferroni's bound). Undefined where there is none.
 */
export function changePoint(values: readonly number[], level = 0.05): ChangePoint | undefined {
  const count = values.length;
  const cuts = count - 2 * leastSide + 1;
  if (cuts < 1 || !values.every(Number.isFinite)) return undefined;
  let best: ChangePoint | undefined;
  for (let at = leastSide; at <= count - leastSide; at += 1) {
    const mean = (part: readonly number[]) => part.reduce((sum, value) => sum + value, 0) / part.length;
    const [first, second] = [values.slice(0, at), values.slice(at)];
    const [before, after] = [mean(first), mean(second)];
    const squares = (part: readonly number[], about: number) => part.reduce((sum, value) => sum + (value - about) ** 2, 0);
    const variance = (squares(first, before) + squares(second, after)) / (count - 2);
    const t =
      variance > 0 ? (after - before) / Math.sqrt(variance * (1 / first.length + 1 / second.length)) : after === before ? 0 : Infinity;
    if (best === undefined || Math.abs(t) > Math.abs(best.t)) best = { at, before, after, t };
  }
  const limit = studentTQuantile(1 - level / (2 * cuts), count - 2);
  return best !== undefined && Math.abs(best.t) > (limit ?? Infinity) ? best : undefined;
}

/** When a growing figure will reach its limit. */
export interface ServiceForecast {
  /** In the unit of the times that were given. */
  readonly due: number;
  /** It will be due between these with the chance that was asked for; the later one is absent where growth may as well be nothing. */
  readonly earliest: number;
  readonly latest: number | undefined;
  readonly perTime: number;
}

/**
 * The time at which a line through the figures reaches a limit, with an interval by Fieller's theorem (E. C. Fieller, J. R. Stat. Soc.
 * B 16 (1954) 175; calibration by a straight line). Undefined where the figures do not grow, or are too few for a scatter.
 */
export function nextService(
  times: readonly number[],
  figures: readonly number[],
  limit: number,
  chance = 0.95,
): ServiceForecast | undefined {
  if (times.length < 3 || times.length !== figures.length) return undefined;
  // About the mean time, where intercept and slope do not depend on each other.
  const middle = times.reduce((sum, time) => sum + time, 0) / times.length;
  const fit = fitLinear(
    times.map((time) => [time - middle]),
    figures,
  );
  if (fit.status !== 'fitted' || fit.covariance === undefined) return undefined;
  const [level = 0, slope = 0] = fit.coefficients;
  if (!(slope > 0)) return undefined;
  const quantile = studentTQuantile(0.5 + chance / 2, fit.degreesOfFreedom);
  if (quantile === undefined) return undefined;
  const [varianceLevel, varianceSlope] = [fit.covariance[0]?.[0] ?? 0, fit.covariance[1]?.[1] ?? 0];
  const due = (limit - level) / slope;
  // (limit - level - slope·t)² = q² (varianceLevel + varianceSlope t²), solved for t.
  const a = slope ** 2 - quantile ** 2 * varianceSlope;
  const b = -2 * slope * (limit - level);
  const c = (limit - level) ** 2 - quantile ** 2 * varianceLevel;
  const root = b * b - 4 * a * c;
  if (a > 0 && root >= 0) {
    const [low, high] = [(-b - Math.sqrt(root)) / (2 * a), (-b + Math.sqrt(root)) / (2 * a)];
    return { due: middle + due, earliest: middle + low, latest: middle + high, perTime: slope };
  }
  if (root < 0) return undefined;
  const roots = [(-b - Math.sqrt(root)) / (2 * a), (-b + Math.sqrt(root)) / (2 * a)];
  return { due: middle + due, earliest: middle + Math.max(...roots), latest: undefined, perTime: slope };
}
