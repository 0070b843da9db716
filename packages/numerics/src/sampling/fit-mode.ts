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
  /**
   * ln of the chance of anything else that was seen, for evidence that is weak or has several shapes: it weights the draws, but
   * no fit follows it.
   */
  readonly weigh?: (point: Float64Array) => number;
  /** Unknowns that no observation depends on, wherever the others are. */
  readonly silent?: ReadonlySet<number>;
}

/** A workspace that evaluates one problem again and again. */
export interface Evaluator {
  readonly problem: SamplingProblem;
  /** ln of the likelihood, without the constants of the t distribution; -Infinity where impossible. */
  logLikelihood(point: Float64Array): number;
  /** Standardised residuals of the last point that was evaluated. */
  readonly residuals: Float64Array;
  /** How often the model was evaluated. */
  count(): number;
}

export function evaluatorOf(problem: SamplingProblem): Evaluator {
  const length = problem.observed.length;
  const [expected, scale, residuals] = [new Float64Array(length), new Float64Array(length), new Float64Array(length)];
  const freedom = problem.degreesOfFreedom;
  let evaluations = 0;
  return {
    problem,
    residuals,
    count: () => evaluations,
    logLikelihood(point) {
      evaluations += 1;
      if (!problem.predict(point, expected, scale)) return -Infinity;
      let sum = 0;
      for (let i = 0; i < length; i += 1) {
        const residual = (problem.observed[i]! - expected[i]!) / scale[i]!;
        residuals[i] = residual;
        sum -= Math.log(scale[i]!) + ((freedom + 1) / 2) * Math.log1p((residual * residual) / freedom);
      }
      return Number.isFinite(sum) ? sum : -Infinity;
    },
  };
}

/** A place where the posterior density is highest nearby, along some of the unknowns. */
export interface Mode {
  readonly point: Float64Array;
  /** What the observations add to the precision of these unknowns there, row by row (Gauss–Newton). */
  readonly information: Float64Array;
  readonly logPosterior: number;
}

const step = 1e-4;

/** Climb from a start to the nearest mode along all unknowns. */
export function climb(evaluator: Evaluator, start: Float64Array, most = 15): Mode | undefined {
  return climbAlong(
    evaluator,
    start,
    Array.from(start, (_, index) => index),
    most,
  );
}

/**
 * Climb to the nearest mode along the named unknowns by damped Gauss–Newton steps; the heavy tails of the errors enter as
 * weights (iteratively reweighted least squares). Undefined when the start is impossible.
 */
export function climbAlong(evaluator: Evaluator, start: Float64Array, along: readonly number[], most: number): Mode | undefined {
  const size = along.length;
  const point = start.slice();
  let value = logPosterior(evaluator, point);
  if (!Number.isFinite(value)) return undefined;
  const trial = point.slice();
  const information = new Float64Array(size * size);
  for (let turn = 0; ; turn += 1) {
    const base = evaluator.residuals.slice();
    const columns = jacobian(evaluator, point, along, base);
    const weights = base.map((residual) => weightOf(evaluator, residual));
    const gradient = fill(information, columns, weights, base);
    if (turn === most) break;
    const direction = newtonDirection(information, gradient, point, along);
    if (direction === undefined) break;
    let gain = 0;
    for (let part = 1; part > 0.02; part /= 3) {
      for (let i = 0; i < size; i += 1) trial[along[i]!] = point[along[i]!]! + part * direction[i]!;
      const next = logPosterior(evaluator, trial);
      if (next > value) {
        gain = next - value;
        value = next;
        point.set(trial);
        break;
      }
    }
    // The residuals are those of the point again before they are used.
    if (gain < 1e-2) break;
  }
  return { point, information, logPosterior: value };
}

/** Columns of the Jacobian of the standardised residuals, each times the root of its weight. */
export function linearised(evaluator: Evaluator, point: Float64Array): Float64Array[] {
  evaluator.logLikelihood(point);
  const base = evaluator.residuals.slice();
  const all = Array.from(point, (_, index) => index);
  return jacobian(evaluator, point, all, base).map((column) => column.map((value, i) => value * Math.sqrt(weightOf(evaluator, base[i]!))));
}

const weightOf = ({ problem: { degreesOfFreedom } }: Evaluator, residual: number) =>
  (degreesOfFreedom + 1) / (degreesOfFreedom + residual * residual);

function logPosterior(evaluator: Evaluator, point: Float64Array): number {
  let squares = 0;
  for (const value of point) squares += value * value;
  return evaluator.logLikelihood(point) - squares / 2;
}

function jacobian(evaluator: Evaluator, point: Float64Array, along: readonly number[], base: Float64Array): Float64Array[] {
  const moved = point.slice();
  return along.map((j) => {
    if (evaluator.problem.silent?.has(j) === true) return new Float64Array(base.length);
    moved[j] = point[j]! + step;
    const possible = evaluator.logLikelihood(moved) > -Infinity;
    moved[j] = point[j]!;
    return base.map((residual, i) => (possible ? (evaluator.residuals[i]! - residual) / step : 0));
  });
}

/** Fill JᵀWJ; gives JᵀWr. */
function fill(information: Float64Array, columns: readonly Float64Array[], weights: Float64Array, residuals: Float64Array): Float64Array {
  const size = columns.length;
  const gradient = new Float64Array(size);
  for (let j = 0; j < size; j += 1) {
    for (let k = 0; k <= j; k += 1) {
      let sum = 0;
      for (let i = 0; i < weights.length; i += 1) sum += weights[i]! * columns[j]![i]! * columns[k]![i]!;
      information[j * size + k] = sum;
      information[k * size + j] = sum;
    }
    for (let i = 0; i < weights.length; i += 1) gradient[j]! += weights[i]! * residuals[i]! * columns[j]![i]!;
  }
  return gradient;
}

/** -(I + JᵀWJ)⁻¹ (z + JᵀWr) */
function newtonDirection(
  information: Float64Array,
  gradient: Float64Array,
  point: Float64Array,
  along: readonly number[],
): Float64Array | undefined {
  const size = along.length;
  const factor = information.slice();
  for (let i = 0; i < size; i += 1) factor[i * (size + 1)]! += 1;
  if (!factorInPlace(factor, size)) return undefined;
  const direction = gradient.map((value, i) => -(value + point[along[i]!]!));
  solveFactored(factor, size, direction);
  return direction.every(Number.isFinite) ? direction : undefined;
}
