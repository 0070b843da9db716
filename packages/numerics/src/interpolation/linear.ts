import { findPointProblem, type InterpolantResult, makeInterpolant, type OutsidePolicy } from './interpolant.js';

/**
 * Straight lines from point to point.
 *
 * @param x - must increase
 * @throws NumericsError `unequal_lengths`
 */
export function interpolateLinearly(x: ArrayLike<number>, y: ArrayLike<number>, outside: 'refuse'): InterpolantResult<number | undefined>;
export function interpolateLinearly(
  x: ArrayLike<number>,
  y: ArrayLike<number>,
  outside: Exclude<OutsidePolicy, 'refuse'>,
): InterpolantResult;
export function interpolateLinearly(
  x: ArrayLike<number>,
  y: ArrayLike<number>,
  outside: OutsidePolicy,
): InterpolantResult<number | undefined> {
  const problem = findPointProblem(x, y);
  if (problem) return problem;
  const interpolant = makeInterpolant(Float64Array.from(x), Float64Array.from(y), undefined, outside);
  return { status: 'ready', interpolant };
}
