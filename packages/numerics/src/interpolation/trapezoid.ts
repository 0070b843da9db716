import { requireEqualLengths } from '../errors.js';

/** How an integration of points ended. */
export type TrapezoidStatus =
  | 'done'
  /** An x value lies below the one before it. */
  | 'not_increasing'
  /** A value is NaN or infinite. */
  | 'not_finite';

/** Outcome of {@link cumulativeTrapezoid}. */
export interface TrapezoidResult {
  readonly status: TrapezoidStatus;
  /** Integral from the first point to each point; up to the point at fault when the status is not `done`. */
  readonly integral: Float64Array;
  /** The last value of `integral`, 0 without points. */
  readonly total: number;
}

/**
 * Running integral of y over x by the trapezoidal rule. Points at the same x (a jump) are allowed.
 *
 * @throws NumericsError `unequal_lengths`
 */
export function cumulativeTrapezoid(x: ArrayLike<number>, y: ArrayLike<number>): TrapezoidResult {
  requireEqualLengths('x', x, 'y', y);
  const integral = new Float64Array(x.length);
  let total = 0;
  for (let i = 0; i < x.length; i += 1) {
    const isKnown = Number.isFinite(x[i]) && Number.isFinite(y[i]);
    if (!isKnown || (i > 0 && x[i]! < x[i - 1]!)) {
      return { status: isKnown ? 'not_increasing' : 'not_finite', integral: integral.slice(0, i), total };
    }
    if (i > 0) total += (x[i]! - x[i - 1]!) * (0.5 * y[i]! + 0.5 * y[i - 1]!);
    integral[i] = total;
  }
  return { status: 'done', integral, total };
}
