import { requireArgument, requireEqualLengths } from '../errors.js';
import { minimiseResidual } from './levenberg-marquardt.js';
import { type FitWeights, rootWeights } from './weights.js';

/** A model with parameters: value at the point with the given index. */
export type ParametricModel = (parameters: Float64Array, index: number) => number;

/** Options of {@link fitNonlinear}. */
export interface NonlinearFitOptions extends FitWeights {
  /** Default 200. */
  readonly maxIterations?: number;
  /** Converged when no parameter would move by more than this part of itself. Default 1e-10. */
  readonly parameterTolerance?: number;
  /**
   * Rough size of each parameter: changes well below it do not matter when the parameter itself is
   * near zero. Default: the starting value, or 1 for one that starts at zero.
   */
  readonly typicalParameters?: ArrayLike<number>;
}

/** How a non-linear fit ended. */
export type NonlinearFitStatus =
  /** At a minimum of the sum of squares. */
  | 'converged'
  /** The iteration limit came first. */
  | 'max_iterations'
  /** No step lowers the sum of squares, yet the point does not look like a minimum. */
  | 'stalled'
  /** A parameter has no influence of its own. */
  | 'rank_deficient'
  /** Fewer points than parameters. */
  | 'too_few_points'
  /** The model is NaN or infinite at the start. */
  | 'not_finite'
  /** A weight or standard uncertainty is not above zero. */
  | 'invalid_weights';

/** Outcome of {@link fitNonlinear}. */
export interface NonlinearFit {
  readonly status: NonlinearFitStatus;
  /** The best parameters found; the starting values when nothing could be done. */
  readonly parameters: readonly number[];
  /** Of the parameters, row by row; only when converged and not all points are used up by parameters. */
  readonly covariance: readonly number[][] | undefined;
  readonly standardErrors: readonly number[] | undefined;
  /** Measured less fitted, not weighted; empty when nothing could be computed. */
  readonly residuals: readonly number[];
  /** Weighted sum of squared residuals. */
  readonly sumOfSquares: number | undefined;
  readonly residualStandardDeviation: number | undefined;
  readonly degreesOfFreedom: number;
  readonly iterations: number;
}

/** Below this part of its typical size a parameter counts as zero when steps are judged. */
const NEAR_ZERO = 1e-3;

/**
 * Fits the parameters of any model by weighted least squares, Levenberg–Marquardt with scaled
 * damping and derivatives by central differences.
 *
 * Sources: D. W. Marquardt, J. SIAM 11 (1963) 431–441; scaling as J. J. Moré, Lecture Notes in
 * Mathematics 630 (1978) 105–116; damping as H. B. Nielsen, report IMM-REP-1999-05, Technical
 * University of Denmark 1999.
 *
 * @param y - measured values
 * @param start - starting values of the parameters
 * @throws NumericsError `invalid_argument` without parameters; `unequal_lengths` for weights that do
 * not fit the points or typical parameters that do not fit the start
 */
export function fitNonlinear(
  model: ParametricModel,
  y: ArrayLike<number>,
  start: ArrayLike<number>,
  options: NonlinearFitOptions = {},
): NonlinearFit {
  const { maxIterations = 200, parameterTolerance = 1e-10 } = options;
  requireArgument(start.length > 0, 'a fit needs at least one parameter');
  const typical = options.typicalParameters ?? start;
  requireEqualLengths('typicalParameters', typical, 'start', start);
  const roots = rootWeights(options, y.length);
  const initial = Float64Array.from(start);
  const degreesOfFreedom = y.length - start.length;
  const fail = (status: NonlinearFitStatus): NonlinearFit => ({
    status,
    parameters: Array.from(initial),
    covariance: undefined,
    standardErrors: undefined,
    residuals: [],
    sumOfSquares: undefined,
    residualStandardDeviation: undefined,
    degreesOfFreedom,
    iterations: 0,
  });
  if (!roots) return fail('invalid_weights');
  if (degreesOfFreedom < 0) return fail('too_few_points');
  const residualAt = (parameters: Float64Array): Float64Array => roots.map((root, i) => (y[i]! - model(parameters, i)) * root);
  const initialResidual = residualAt(initial);
  if (!initialResidual.every(Number.isFinite)) return fail('not_finite');

  const minimum = minimiseResidual(residualAt, initial, initialResidual, {
    maxIterations,
    parameterTolerance,
    smallest: Float64Array.from(typical, (value) => NEAR_ZERO * (Math.abs(value) || 1)),
    rounding: roots.reduce((sum, root, i) => sum + (Number.EPSILON * root * y[i]!) ** 2, 0),
  });
  const variance = degreesOfFreedom > 0 ? minimum.sumOfSquares / degreesOfFreedom : undefined;
  const scale = options.standardUncertainties ? 1 : variance;
  const covariance = scale === undefined ? undefined : minimum.inverseGram?.map((row) => row.map((value) => value * scale));
  return {
    status: minimum.status,
    parameters: Array.from(minimum.parameters),
    covariance,
    standardErrors: covariance?.map((row, j) => Math.sqrt(row[j]!)),
    residuals: Array.from(minimum.residual, (value, i) => value / roots[i]!),
    sumOfSquares: minimum.sumOfSquares,
    residualStandardDeviation: variance === undefined ? undefined : Math.sqrt(variance),
    degreesOfFreedom,
    iterations: minimum.iterations,
  };
}
