import { requireArgument, requireEqualLengths } from '../errors.js';
import { differenceColumns } from './difference-columns.js';
import { type LeastSquares, solveLeastSquares } from './least-squares.js';
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

/** Cosine between residual and model plane below which a point counts as a minimum. */
const FLAT = 1e-7;

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
  const size = start.length;
  const count = y.length;
  requireArgument(size > 0, 'a fit needs at least one parameter');
  const typical = options.typicalParameters ?? start;
  requireEqualLengths('typicalParameters', typical, 'start', start);
  const smallest = Float64Array.from(typical, (value) => NEAR_ZERO * (Math.abs(value) || 1));
  const roots = rootWeights(options, count);
  let parameters = Float64Array.from(start);
  let iterations = 0;
  let residual: Float64Array | undefined;
  let sumOfSquares = Infinity;

  const weightedResidual = (at: Float64Array): Float64Array =>
    Float64Array.from({ length: count }, (_, i) => (y[i]! - model(at, i)) * roots![i]!);
  const end = (status: NonlinearFitStatus, local?: LeastSquares): NonlinearFit => {
    const degreesOfFreedom = count - size;
    const known = residual !== undefined;
    const variance = known && degreesOfFreedom > 0 ? sumOfSquares / degreesOfFreedom : undefined;
    const scale = options.standardUncertainties ? 1 : variance;
    const covariance = scale === undefined ? undefined : local?.inverseGram.map((row) => row.map((value) => value * scale));
    return {
      status,
      parameters: Array.from(parameters),
      covariance,
      standardErrors: covariance?.map((row, j) => Math.sqrt(row[j]!)),
      residuals: Array.from(residual ?? [], (value, i) => value / roots![i]!),
      sumOfSquares: known ? sumOfSquares : undefined,
      residualStandardDeviation: variance === undefined ? undefined : Math.sqrt(variance),
      degreesOfFreedom,
      iterations,
    };
  };
  if (!roots) return end('invalid_weights');
  if (count < size) return end('too_few_points');
  const first = weightedResidual(parameters);
  if (!first.every(Number.isFinite)) return end('not_finite');
  residual = first;
  sumOfSquares = squaredLength(residual);

  // Sum of squares that rounding of the measured values alone could leave.
  const rounding = squaredLength(roots.map((root, i) => Number.EPSILON * root * y[i]!));
  const scales = new Float64Array(size);
  let damping = 1e-3;
  for (;;) {
    const columns = differenceColumns(weightedResidual, parameters, smallest);
    if (!columns) return end('not_finite');
    for (let j = 0; j < size; j += 1) scales[j] = Math.max(scales[j]!, Math.hypot(...columns[j]!));
    const local = solveLeastSquares(columns, residual);
    // The step that an undamped fit would take: how far the minimum still is.
    if (local && isSmall(local.solution, parameters, smallest, parameterTolerance)) return end('converged', local);
    if (sumOfSquares <= rounding) return end(local ? 'converged' : 'rank_deficient', local);
    if (iterations >= maxIterations) return end('max_iterations');

    let improved = false;
    let growth = 2;
    while (!improved) {
      iterations += 1;
      const step = dampedStep(columns, residual, scales, damping);
      if (!step) return end('rank_deficient');
      const trial = parameters.map((value, j) => value + step[j]!);
      const trialResidual = weightedResidual(trial);
      const trialSquares = squaredLength(trialResidual);
      // What the linear model promised, for the ratio of real to promised gain.
      const promised = promisedGain(columns, residual, step, scales, damping);
      if (trialSquares < sumOfSquares) {
        const ratio = (sumOfSquares - trialSquares) / promised;
        damping *= Math.max(1 / 3, 1 - (2 * ratio - 1) ** 3);
        [parameters, residual, sumOfSquares] = [trial, trialResidual, trialSquares];
        improved = true;
      } else if (isSmall(step, parameters, smallest, Number.EPSILON) || damping > 1e30) {
        const flat = isFlat(columns, residual, sumOfSquares);
        return local && flat ? end('converged', local) : end(local ? 'stalled' : 'rank_deficient');
      } else {
        if (iterations >= maxIterations) return end('max_iterations');
        damping *= growth;
        growth *= 2;
      }
    }
  }
}

function squaredLength(vector: Float64Array): number {
  return vector.reduce((sum, value) => sum + value * value, 0);
}

function isSmall(step: ArrayLike<number>, parameters: Float64Array, smallest: Float64Array, tolerance: number): boolean {
  return parameters.every((value, j) => Math.abs(step[j]!) <= tolerance * Math.max(Math.abs(value), smallest[j]!));
}

/** Least squares with the extra rows `√damping · scale`, one for each parameter. */
function dampedStep(columns: readonly Float64Array[], residual: Float64Array, scales: Float64Array, damping: number): number[] | undefined {
  const count = residual.length;
  const longer = columns.map((column, j) => {
    const extended = new Float64Array(count + columns.length);
    extended.set(column);
    extended[count + j] = Math.sqrt(damping) * scales[j]!;
    return extended;
  });
  const target = new Float64Array(count + columns.length);
  target.set(residual);
  return solveLeastSquares(longer, target)?.solution;
}

function promisedGain(
  columns: readonly Float64Array[],
  residual: Float64Array,
  step: readonly number[],
  scales: Float64Array,
  damping: number,
): number {
  return step.reduce((sum, change, j) => {
    const gradient = columns[j]!.reduce((part, value, i) => part + value * residual[i]!, 0);
    return sum + change * (damping * scales[j]! ** 2 * change + gradient);
  }, 0);
}

function isFlat(columns: readonly Float64Array[], residual: Float64Array, sumOfSquares: number): boolean {
  return columns.every((column) => {
    const gradient = column.reduce((sum, value, i) => sum + value * residual[i]!, 0);
    return Math.abs(gradient) <= FLAT * Math.sqrt(sumOfSquares * squaredLength(column));
  });
}
