import { requireArgument } from '../errors.js';
import { mean, standardDeviation } from '../statistics/moments.js';
import { type CorrelationMatrix, factorCorrelation } from './correlation-matrix.js';
import { type DistributionShape, drawStandardised, makeRandomSource } from './distributions.js';
import { findInputProblem, type UncertainInput } from './propagate.js';
import type { Model } from './sensitivity.js';

/** One input of a simulation. */
export interface SimulatedInput extends UncertainInput {
  /** Default `normal`. */
  readonly shape?: DistributionShape;
}

/** Options of {@link simulateUncertainty}. */
export interface SimulationOptions {
  /** Number of draws. Default 100 000; JCGM 101:2008, 7.2 advises 1 000 000 for 95 % intervals to two digits. */
  readonly trials?: number;
  /** The same seed gives the same result. Default 1. */
  readonly seed?: number;
  /** Probability that the intervals cover. Default 0.95. */
  readonly probability?: number;
  /** For inputs that are all normal. */
  readonly correlation?: CorrelationMatrix;
}

/** How a simulation ended. */
export type SimulationStatus =
  | 'done'
  | 'not_finite'
  | 'invalid_uncertainty'
  /** Not a correlation matrix, or a correlated input is not normal. */
  | 'invalid_correlation'
  /** More than one draw in a thousand had no finite output. */
  | 'model_undefined';

/** Distribution of one output. */
export interface SimulatedOutput {
  readonly mean: number;
  readonly standardDeviation: number;
  readonly median: number;
  /** Interval with as much probability below as above it. */
  readonly symmetricInterval: readonly [number, number];
  /** Shortest interval with the same probability. */
  readonly shortestInterval: readonly [number, number];
}

/** Outcome of {@link simulateUncertainty}. */
export interface SimulationResult {
  readonly status: SimulationStatus;
  readonly outputs: readonly SimulatedOutput[];
  readonly trials: number;
  /** Draws for which an output was NaN or infinite; they are left out. */
  readonly lostTrials: number;
}

/**
 * Propagation of distributions by Monte Carlo (JCGM 101:2008, clause 7): no approximation of the
 * model, at the price of many evaluations.
 *
 * @throws NumericsError `invalid_argument` for fewer than 1000 trials, a seed that is not a whole
 * number or a probability outside of 0 to 1; `unequal_lengths` for a correlation matrix of another size
 */
export function simulateUncertainty(model: Model, inputs: readonly SimulatedInput[], options: SimulationOptions = {}): SimulationResult {
  const { trials = 100_000, seed = 1, probability = 0.95, correlation } = options;
  requireArgument(Number.isInteger(trials) && trials >= 1000, 'at least 1000 trials are needed');
  requireArgument(Number.isInteger(seed), 'the seed must be a whole number');
  requireArgument(probability > 0 && probability < 1, 'the probability must lie between 0 and 1');
  const end = (status: SimulationStatus, outputs: SimulatedOutput[] = [], lostTrials = 0): SimulationResult => ({
    status,
    outputs,
    trials,
    lostTrials,
  });
  const problem = findInputProblem(inputs);
  if (problem) return end(problem);
  if (inputs.some(({ shape, degreesOfFreedom }) => shape === 'student_t' && degreesOfFreedom === undefined)) {
    return end('invalid_uncertainty');
  }
  const factor = correlation && factorCorrelation(correlation, inputs.length);
  if (correlation && (!factor || inputs.some(({ shape = 'normal' }) => shape !== 'normal'))) {
    return end('invalid_correlation');
  }

  const source = makeRandomSource(seed);
  const outputCount = model(inputs.map(({ value }) => value)).length;
  const draws = Array.from({ length: outputCount }, () => new Float64Array(trials));
  let kept = 0;
  for (let trial = 0; trial < trials; trial += 1) {
    const standardised = inputs.map(({ shape = 'normal', degreesOfFreedom = Infinity }) =>
      drawStandardised(source, shape, degreesOfFreedom),
    );
    const deviates = factor ? factor.map((row) => row.reduce((sum, l, j) => sum + l * standardised[j]!, 0)) : standardised;
    const outputs = model(inputs.map(({ value, standardUncertainty }, i) => value + standardUncertainty * deviates[i]!));
    if (!outputs.every(Number.isFinite)) continue;
    for (let k = 0; k < outputCount; k += 1) draws[k]![kept] = outputs[k]!;
    kept += 1;
  }
  const lostTrials = trials - kept;
  if (lostTrials > trials / 1000) return end('model_undefined', [], lostTrials);
  const summaries = draws.map((values) => summarise(values.subarray(0, kept), probability));
  const outputs = summaries.filter((summary) => summary !== undefined);
  return outputs.length < outputCount ? end('not_finite') : end('done', outputs, lostTrials);
}

/** Undefined when the moments are beyond the range of doubles. */
function summarise(values: Float64Array, probability: number): SimulatedOutput | undefined {
  const sorted = values.slice().sort();
  const count = sorted.length;
  // JCGM 101:2008, 7.7: of q = p M values in the interval, r lie below it.
  const covered = Math.min(count - 1, Math.round(probability * count));
  const below = Math.floor((count - covered) / 2);
  let shortest = 0;
  for (let start = 1; start + covered < count; start += 1) {
    if (sorted[start + covered]! - sorted[start]! < sorted[shortest + covered]! - sorted[shortest]!) shortest = start;
  }
  const average = mean(sorted);
  const spread = standardDeviation(sorted);
  if (average === undefined || spread === undefined) return undefined;
  return {
    mean: average,
    standardDeviation: spread,
    median: 0.5 * (sorted[(count - 1) >> 1]! + sorted[count >> 1]!),
    symmetricInterval: [sorted[below]!, sorted[below + covered]!],
    shortestInterval: [sorted[shortest]!, sorted[shortest + covered]!],
  };
}
