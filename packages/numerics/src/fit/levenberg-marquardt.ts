import { differenceColumns } from './difference-columns.js';
import { type LeastSquares, solveLeastSquares } from './least-squares.js';

/** How a search for the least sum of squares ended; see `NonlinearFitStatus`. */
export type MinimumStatus = 'converged' | 'max_iterations' | 'stalled' | 'rank_deficient' | 'not_finite';

/** Where a search ended. */
export interface Minimum {
  readonly status: MinimumStatus;
  readonly parameters: Float64Array;
  readonly residual: Float64Array;
  readonly sumOfSquares: number;
  readonly iterations: number;
  /** `(JᵀJ)⁻¹` at a minimum. */
  readonly inverseGram: number[][] | undefined;
}

/** What the search may assume. */
export interface SearchLimits {
  readonly maxIterations: number;
  readonly parameterTolerance: number;
  /** Size below which a parameter counts as zero when steps are judged. */
  readonly smallest: Float64Array;
  /** Sum of squares that rounding alone could leave. */
  readonly rounding: number;
}

/** Cosine between residual and model plane below which a point counts as a minimum. */
const FLAT = 1e-7;

/** Sums of squares that differ by less than this part count as the same. */
const ROUNDED = 1e-9;

/** Finds parameters that make the residual as short as it gets; `residual` is what `residualAt` gives at the start. */
export function minimiseResidual(
  residualAt: (parameters: Float64Array) => Float64Array,
  start: Float64Array,
  residual: Float64Array,
  limits: SearchLimits,
): Minimum {
  let point = { parameters: start, residual, sumOfSquares: squaredLength(residual) };
  let iterations = 0;
  const end = (status: MinimumStatus, local?: LeastSquares): Minimum => ({
    status,
    ...point,
    iterations,
    inverseGram: local?.inverseGram,
  });
  const move = (step: ArrayLike<number>) => {
    const parameters = point.parameters.map((value, j) => value + step[j]!);
    const moved = residualAt(parameters);
    return { parameters, residual: moved, sumOfSquares: squaredLength(moved) };
  };
  const isSmall = (step: ArrayLike<number>, tolerance: number): boolean =>
    point.parameters.every((value, j) => Math.abs(step[j]!) <= tolerance * Math.max(Math.abs(value), limits.smallest[j]!));
  // Takes a last undamped step: the slope still tells where the minimum is when sums of squares no longer differ.
  const finish = (local: LeastSquares): Minimum => {
    const last = move(local.solution);
    if (last.sumOfSquares <= point.sumOfSquares * (1 + ROUNDED)) point = last;
    return end('converged', local);
  };

  const scales = new Float64Array(start.length);
  let damping = 1e-3;
  for (;;) {
    const columns = differenceColumns(residualAt, point.parameters, limits.smallest);
    if (!columns) return end('not_finite');
    for (let j = 0; j < scales.length; j += 1) scales[j] = Math.max(scales[j]!, Math.hypot(...columns[j]!));
    const local = solveLeastSquares(columns, point.residual);
    // The step that an undamped fit would take tells how far the minimum still is.
    if (local && isSmall(local.solution, limits.parameterTolerance)) return finish(local);
    if (point.sumOfSquares <= limits.rounding) return end(local ? 'converged' : 'rank_deficient', local);

    for (let growth = 2; ; growth *= 2) {
      if (iterations >= limits.maxIterations) return end('max_iterations');
      iterations += 1;
      const step = dampedStep(columns, point.residual, scales, damping);
      if (!step) return end('rank_deficient');
      const trial = move(step);
      if (trial.sumOfSquares < point.sumOfSquares) {
        const ratio = (point.sumOfSquares - trial.sumOfSquares) / promisedGain(columns, point.residual, step, scales, damping);
        damping *= Math.max(1 / 3, 1 - (2 * ratio - 1) ** 3);
        point = trial;
        break;
      }
      if (isSmall(step, Number.EPSILON) || damping > 1e30) {
        if (local && isFlat(columns, point.residual)) return finish(local);
        return end(local ? 'stalled' : 'rank_deficient');
      }
      damping *= growth;
    }
  }
}

function squaredLength(vector: Float64Array): number {
  return vector.reduce((sum, value) => sum + value * value, 0);
}

function dot(first: Float64Array, second: Float64Array): number {
  return first.reduce((sum, value, i) => sum + value * second[i]!, 0);
}

/** Least squares with the extra rows `√damping · scale`, one for each parameter. */
function dampedStep(columns: readonly Float64Array[], residual: Float64Array, scales: Float64Array, damping: number): number[] | undefined {
  const extended = columns.map((column, j) => {
    const longer = new Float64Array(column.length + columns.length);
    longer.set(column);
    longer[column.length + j] = Math.sqrt(damping) * scales[j]!;
    return longer;
  });
  const target = new Float64Array(residual.length + columns.length);
  target.set(residual);
  return solveLeastSquares(extended, target)?.solution;
}

/** By how much the linear model said that the damped step would lower the sum of squares. */
function promisedGain(
  columns: readonly Float64Array[],
  residual: Float64Array,
  step: readonly number[],
  scales: Float64Array,
  damping: number,
): number {
  return step.reduce((sum, change, j) => sum + change * (damping * scales[j]! ** 2 * change + dot(columns[j]!, residual)), 0);
}

function isFlat(columns: readonly Float64Array[], residual: Float64Array): boolean {
  return columns.every((column) => Math.abs(dot(column, residual)) <= FLAT * Math.sqrt(squaredLength(residual) * squaredLength(column)));
}
