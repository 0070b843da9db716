import { requireArgument } from '../errors.js';

/** How a root search ended. */
export type RootStatus =
  /** The bracket shrank below the tolerance, or the function is exactly zero at the root. */
  | 'converged'
  /** The function has the same sign at both ends: there is no root to be sure of. */
  | 'no_bracket'
  /** The iteration limit came first; `root` is the best point so far and `bracket` still holds. */
  | 'max_iterations'
  /** An end of the bracket or a value of the function is NaN or infinite. */
  | 'not_finite';

/** Outcome of {@link findRoot}. */
export interface RootResult {
  readonly status: RootStatus;
  /**
   * The root when converged. Otherwise the best point evaluated; with `not_finite` the point where
   * the function (or the end of the bracket itself) is not finite.
   */
  readonly root: number;
  /** The function's value at `root`. Large at a `converged` root means a pole or a jump, not a zero. */
  readonly residual: number;
  /** Interval, low end first, at whose ends the function has opposite signs (or is zero). */
  readonly bracket: readonly [number, number];
  readonly iterations: number;
  readonly evaluations: number;
}

/** Options of {@link findRoot}. */
export interface RootOptions {
  /** Part of the tolerance proportional to the root; at least (and by default) 4 machine epsilon. */
  readonly relativeTolerance?: number;
  /**
   * Part of the tolerance independent of the root's size. The default, the bracket's width times
   * machine epsilon squared, only serves to end the search for a root at zero.
   */
  readonly absoluteTolerance?: number;
  /** Default 1000. */
  readonly maxIterations?: number;
}

/**
 * Finds a zero of a continuous function between two points where it has opposite signs.
 *
 * Combines bisection, secant and inverse quadratic interpolation; never leaves the bracket and
 * never needs a derivative. On `converged` the root lies within
 * `2 (relativeTolerance |root| + absoluteTolerance)` of a sign change of the function as evaluated.
 *
 * Source: R. P. Brent, Algorithms for Minimization without Derivatives, Prentice-Hall 1973,
 * chapter 4 (procedure zero).
 *
 * @param f - the function; it is called at the two ends first
 * @throws NumericsError `invalid_argument` for a negative or NaN tolerance or iteration limit
 */
export function findRoot(f: (x: number) => number, lower: number, upper: number, options: RootOptions = {}): RootResult {
  const { relativeTolerance = 0, maxIterations = 1000 } = options;
  const tiny = Number.EPSILON * Number.EPSILON;
  const absoluteTolerance = options.absoluteTolerance ?? Math.abs(tiny * upper - tiny * lower);
  requireArgument(relativeTolerance >= 0, 'relativeTolerance must not be negative');
  requireArgument((options.absoluteTolerance ?? 0) >= 0, 'absoluteTolerance must not be negative');
  requireArgument(maxIterations >= 0, 'maxIterations must not be negative');
  const relative = Math.max(relativeTolerance, 4 * Number.EPSILON);

  let evaluations = 0;
  let iterations = 0;
  // Brent's names: b the best point, a the one before it, c the other end of the bracket.
  let a = lower;
  let b = upper;
  const end = (status: RootStatus, root: number, residual: number, otherEnd: number): RootResult => ({
    status,
    root,
    residual,
    bracket: root <= otherEnd ? [root, otherEnd] : [otherEnd, root],
    iterations,
    evaluations,
  });

  if (!Number.isFinite(lower)) return end('not_finite', lower, Number.NaN, upper);
  if (!Number.isFinite(upper)) return end('not_finite', upper, Number.NaN, lower);
  let fa = f(a);
  evaluations += 1;
  if (!Number.isFinite(fa)) return end('not_finite', a, fa, b);
  let fb = f(b);
  evaluations += 1;
  if (!Number.isFinite(fb)) return end('not_finite', b, fb, a);
  if (fa > 0 === fb > 0 && fa !== 0 && fb !== 0) {
    return Math.abs(fa) < Math.abs(fb) ? end('no_bracket', a, fa, b) : end('no_bracket', b, fb, a);
  }

  let c = a;
  let fc = fa;
  let step = b - a;
  let stepBefore = step;
  for (;;) {
    if (Math.abs(fc) < Math.abs(fb)) {
      a = b;
      fa = fb;
      b = c;
      fb = fc;
      c = a;
      fc = fa;
    }
    const tolerance = relative * Math.abs(b) + absoluteTolerance;
    const half = 0.5 * c - 0.5 * b;
    if (fb === 0 || Math.abs(half) <= tolerance) return end('converged', b, fb, c);
    if (iterations >= maxIterations) return end('max_iterations', b, fb, c);
    iterations += 1;

    if (Math.abs(stepBefore) < tolerance || Math.abs(fa) <= Math.abs(fb)) {
      step = half;
      stepBefore = half;
    } else {
      // The step is p/q: secant when only two points differ, inverse quadratic otherwise.
      const s = fb / fa;
      let p: number;
      let q: number;
      if (a === c) {
        p = 2 * half * s;
        q = 1 - s;
      } else {
        const r = fb / fc;
        const ratio = fa / fc;
        p = s * (2 * half * ratio * (ratio - r) - (b - a) * (r - 1));
        q = (ratio - 1) * (r - 1) * (s - 1);
      }
      if (p > 0) q = -q;
      else p = -p;
      const acceptable = 2 * p < 3 * half * q - Math.abs(tolerance * q) && p < Math.abs(0.5 * stepBefore * q);
      stepBefore = acceptable ? step : half;
      step = acceptable ? p / q : half;
    }

    a = b;
    fa = fb;
    b += Math.abs(step) > tolerance ? step : half > 0 ? tolerance : -tolerance;
    fb = f(b);
    evaluations += 1;
    if (!Number.isFinite(fb)) return end('not_finite', b, fb, c);
    if (fb > 0 === fc > 0) {
      c = a;
      fc = fa;
      step = b - a;
      stepBefore = step;
    }
  }
}
