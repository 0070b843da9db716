import { factorInPlace, solveFactored } from './gaussian.js';

/** What is unknown, and what was observed of it. */
export interface SamplingProblem {
  /** Number of unknowns; each is standard normal before anything is observed. */
  readonly dimension: number;
  readonly observed: ArrayLike<number>;
  /**
   * What would be observed at a point, and with which scale of error. False where the point is impossible.
   *
   * @param point - the unknowns
   * @param expected - to be filled, one value an observation
   * @param scale - to be filled, above zero
   */
  readonly predict: (point: Float64Array, expected: Float64Array, scale: Float64Array) => boolean;
  /** Of the Student's t distribution that all errors follow. */
  readonly degreesOfFreedom: number;
}

/** A workspace that evaluates one problem again and again. */
export interface Evaluator {
  readonly problem: SamplingProblem;
  /** ln of the likelihood, without the constants of the t distribution; -Infinity where impossible. */
  logLikelihood(point: Float64Array): number;
  /** Standardised residuals of the last point that was evaluated. */
  readonly residuals: Float64Array;
}

export function evaluatorOf(problem: SamplingProblem): Evaluator {
  const count = problem.observed.length;
  const [expected, scale, residuals] = [new Float64Array(count), new Float64Array(count), new Float64Array(count)];
  const freedom = problem.degreesOfFreedom;
  return {
    problem,
    residuals,
    logLikelihood(point) {
      if (!problem.predict(point, expected, scale)) return -Infinity;
      let sum = 0;
      for (let i = 0; i < count; i += 1) {
        const residual = (problem.observed[i]! - expected[i]!) / scale[i]!;
        residuals[i] = residual;
        sum -= Math.log(scale[i]!) + ((freedom + 1) / 2) * Math.log1p((residual * residual) / freedom);
      }
      return Number.isFinite(sum) ? sum : -Infinity;
    },
  };
}

/** A place where the posterior density is highest nearby. */
export interface Mode {
  readonly point: Float64Array;
  /** What the observations add to the precision there, row by row (Gauss–Newton). */
  readonly information: Float64Array;
  readonly logPosterior: number;
}

const step = 1e-4;

/**
 * Climb from a start to the nearest mode by damped Gauss–Newton steps; the heavy tails of the errors enter as weights
 * (iteratively reweighted least squares).
 */
export function climb(evaluator: Evaluator, start: Float64Array, most = 12): Mode | undefined {
  const { problem } = evaluator;
  const size = problem.dimension;
  const count = problem.observed.length;
  const point = start.slice();
  let value = logPosterior(evaluator, point);
  if (!Number.isFinite(value)) return undefined;
  const jacobian = new Float64Array(count * size);
  const information = new Float64Array(size * size);
  const trial = new Float64Array(size);
  for (let turn = 0; ; turn += 1) {
    linearise(evaluator, point, jacobian, information);
    if (turn === most) break;
    const direction = newtonDirection(evaluator, point, jacobian, information);
    if (direction === undefined) break;
    let moved = false;
    for (let part = 1; part > 0.01; part /= 3) {
      for (let i = 0; i < size; i += 1) trial[i] = point[i]! + part * direction[i]!;
      const next = logPosterior(evaluator, trial);
      if (next > value) {
        moved = next > value + 1e-3;
        value = next;
        point.set(trial);
        break;
      }
    }
    if (!moved) {
      linearise(evaluator, point, jacobian, information);
      break;
    }
  }
  return { point, information, logPosterior: value };
}

function logPosterior(evaluator: Evaluator, point: Float64Array): number {
  let squares = 0;
  for (const value of point) squares += value * value;
  return evaluator.logLikelihood(point) - squares / 2;
}

/** Fill the Jacobian of the residuals and the information JᵀWJ; the residuals of the point itself are left in the evaluator. */
function linearise(evaluator: Evaluator, point: Float64Array, jacobian: Float64Array, information: Float64Array): void {
  const { residuals, problem } = evaluator;
  const [size, count, freedom] = [problem.dimension, residuals.length, problem.degreesOfFreedom];
  evaluator.logLikelihood(point);
  const base = residuals.slice();
  const moved = point.slice();
  for (let j = 0; j < size; j += 1) {
    moved[j] = point[j]! + step;
    const possible = evaluator.logLikelihood(moved) > -Infinity;
    for (let i = 0; i < count; i += 1) jacobian[i * size + j] = possible ? (residuals[i]! - base[i]!) / step : 0;
    moved[j] = point[j]!;
  }
  residuals.set(base);
  information.fill(0);
  for (let i = 0; i < count; i += 1) {
    const weight = (freedom + 1) / (freedom + base[i]! ** 2);
    for (let j = 0; j < size; j += 1) {
      const scaled = weight * jacobian[i * size + j]!;
      if (scaled === 0) continue;
      for (let k = 0; k <= j; k += 1) information[j * size + k]! += scaled * jacobian[i * size + k]!;
    }
  }
  for (let j = 0; j < size; j += 1) for (let k = 0; k < j; k += 1) information[k * size + j] = information[j * size + k]!;
}

/** -(I + JᵀWJ)⁻¹ (z + JᵀWr) */
function newtonDirection(
  { residuals, problem }: Evaluator,
  point: Float64Array,
  jacobian: Float64Array,
  information: Float64Array,
): Float64Array | undefined {
  const [size, freedom] = [problem.dimension, problem.degreesOfFreedom];
  const factor = information.slice();
  for (let i = 0; i < size; i += 1) factor[i * size + i]! += 1;
  if (!factorInPlace(factor, size)) return undefined;
  const direction = new Float64Array(size);
  for (let j = 0; j < size; j += 1) {
    let sum = point[j]!;
    for (let i = 0; i < residuals.length; i += 1) {
      sum += ((freedom + 1) / (freedom + residuals[i]! ** 2)) * residuals[i]! * jacobian[i * size + j]!;
    }
    direction[j] = -sum;
  }
  solveFactored(factor, size, direction);
  return direction.every(Number.isFinite) ? direction : undefined;
}
