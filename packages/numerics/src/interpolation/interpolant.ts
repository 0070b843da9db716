import { requireEqualLengths } from '../errors.js';

/** What an interpolant does outside of its points. */
export type OutsidePolicy =
  /** Gives `undefined`. */
  | 'refuse'
  /** Gives the value at the nearer end. */
  | 'hold'
  /** Goes on in a straight line with the slope at the nearer end. */
  | 'extend';

/** Why an interpolant could not be made of some points. */
export type InterpolantProblem =
  /** Fewer than two points. */
  | 'too_few_points'
  /** The x values do not increase from point to point. */
  | 'not_increasing'
  /** A value is NaN or infinite. */
  | 'not_finite';

/** A function through points. With `refuse` its value is `undefined` outside of them. */
export interface Interpolant<Value extends number | undefined = number> {
  /** Smallest x of the points. */
  readonly from: number;
  /** Largest x of the points. */
  readonly to: number;
  /** Value at x; `refuse` also gives `undefined` for NaN, the others give NaN for NaN. */
  readonly at: (x: number) => Value;
}

/** An interpolant, or why there is none and the index of the first point at fault. */
export type InterpolantResult<Value extends number | undefined = number> =
  | { readonly status: 'ready'; readonly interpolant: Interpolant<Value> }
  | { readonly status: InterpolantProblem; readonly index: number };

/** Checks the points; undefined when they are fit for interpolation. */
export function findPointProblem(
  x: ArrayLike<number>,
  y: ArrayLike<number>,
): { readonly status: InterpolantProblem; readonly index: number } | undefined {
  requireEqualLengths('x', x, 'y', y);
  for (let i = 0; i < x.length; i += 1) {
    if (!Number.isFinite(x[i]) || !Number.isFinite(y[i])) return { status: 'not_finite', index: i };
    if (i > 0 && x[i]! <= x[i - 1]!) return { status: 'not_increasing', index: i };
  }
  return x.length < 2 ? { status: 'too_few_points', index: x.length } : undefined;
}

/** Index of the interval that holds x: the first or last one for an x outside. */
export function findInterval(points: Float64Array, x: number, guess: number): number {
  const last = points.length - 2;
  if (points[guess]! <= x && x < points[guess + 1]!) return guess;
  let low = 0;
  let high = last;
  while (low < high) {
    const middle = (low + high + 1) >> 1;
    if (points[middle]! <= x) low = middle;
    else high = middle - 1;
  }
  return low;
}

/** Makes cubic pieces with given slopes at the points into an interpolant. */
export function makeInterpolant(
  points: Float64Array,
  values: Float64Array,
  slopes: Float64Array | undefined,
  outside: OutsidePolicy,
): Interpolant<number | undefined> {
  const from = points[0]!;
  const to = points.at(-1)!;
  const end = points.length - 1;
  const chord = (i: number): number => (values[i + 1]! - values[i]!) / (points[i + 1]! - points[i]!);
  let interval = 0;

  const within = (x: number): number => {
    interval = findInterval(points, x, interval);
    const i = interval;
    const width = points[i + 1]! - points[i]!;
    const s = (x - points[i]!) / width;
    const rise = values[i + 1]! - values[i]!;
    const straight = s < 0.5 ? values[i]! + s * rise : values[i + 1]! - (1 - s) * rise;
    if (!slopes) return straight;
    // Cubic Hermite piece as the chord and what the slopes add to it.
    const left = slopes[i]! * width - rise;
    const right = slopes[i + 1]! * width - rise;
    return straight + s * (1 - s) * ((1 - s) * left - s * right);
  };
  const beyond = (x: number): number => {
    const near = x < from ? 0 : end;
    if (outside === 'hold') return values[near]!;
    const slope = slopes ? slopes[near]! : chord(near === 0 ? 0 : end - 1);
    return values[near]! + slope * (x - points[near]!);
  };
  return {
    from,
    to,
    at: (x) => {
      if (x >= from && x <= to) return within(x);
      if (outside === 'refuse') return undefined;
      return Number.isNaN(x) ? x : beyond(x);
    },
  };
}
