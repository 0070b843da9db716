import { requireEqualLengths } from '../errors.js';
import { fitLinear } from './linear.js';
import { fitNonlinear, type NonlinearFit, type NonlinearFitOptions } from './nonlinear.js';

/** Outcome of {@link fitExponentialApproach}: as the general fit, with the parameters named. */
export interface ExponentialFit extends Omit<NonlinearFit, 'status'> {
  /**
   * As the general fit. `not_determined`: the points do not bend, so that the final level and the
   * number of steps to reach it cannot be told.
   */
  readonly status: NonlinearFit['status'] | 'not_determined';
  /** Level that is approached; `undefined` unless converged. */
  readonly level: number | undefined;
  /** Distance from the level at x = 0. */
  readonly amplitude: number | undefined;
  /** Change of x over which the distance falls by the factor e. */
  readonly decayLength: number | undefined;
}

/** How far below the smallest spacing and above the span of x decay lengths are tried. */
const SHORTEST = 0.1;
const LONGEST = 30;
const TRIALS = 60;

/**
 * Fits `y = level + amplitude · exp(-x / decayLength)` without a starting value: for each of many
 * decay lengths the other two follow linearly (G. H. Golub and V. Pereyra, SIAM J. Numer. Anal. 10
 * (1973) 413–432); the best one starts the fit of all three.
 *
 * @throws NumericsError `unequal_lengths`
 */
export function fitExponentialApproach(x: ArrayLike<number>, y: ArrayLike<number>, options: NonlinearFitOptions = {}): ExponentialFit {
  requireEqualLengths('x', x, 'y', y);
  const points = Float64Array.from(x);
  const guess = findDecayLength(points, y, options);
  const model = (p: Float64Array, i: number): number => p[0]! + p[1]! * Math.exp(-points[i]! / p[2]!);
  const fit = fitNonlinear(model, y, guess.start, options);
  const hasFit = fit.sumOfSquares !== undefined && fit.status !== 'too_few_points';
  const status = hasFit && !guess.isInside ? 'not_determined' : fit.status;
  const [level, amplitude, decayLength] = status === 'converged' ? fit.parameters : [];
  return { ...fit, status, level, amplitude, decayLength };
}

function findDecayLength(points: Float64Array, y: ArrayLike<number>, options: NonlinearFitOptions) {
  const sorted = points.slice().sort();
  const span = sorted.at(-1)! - sorted[0]!;
  const gaps = Array.from(sorted.subarray(1), (value, i) => value - sorted[i]!).filter((gap) => gap > 0);
  const shortest = SHORTEST * Math.min(...gaps, span);
  const longest = LONGEST * span;
  let best = { sumOfSquares: Infinity, start: [0, 0, 1], trial: 0 };
  for (let trial = 0; trial < TRIALS; trial += 1) {
    const length = shortest * (longest / shortest) ** (trial / (TRIALS - 1));
    const fit = fitLinear(
      Array.from(points, (value) => [Math.exp(-value / length)]),
      y,
      options,
    );
    if (fit.status !== 'fitted') continue;
    if (fit.sumOfSquares < best.sumOfSquares) best = { sumOfSquares: fit.sumOfSquares, start: [...fit.coefficients, length], trial };
  }
  return { start: best.start, isInside: best.trial > 0 && best.trial < TRIALS - 1 };
}
