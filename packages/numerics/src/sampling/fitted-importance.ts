import { requireArgument } from '../errors.js';
import { makeRandomSource, type RandomSource } from '../uncertainty/distributions.js';
import { climb, type Evaluator, evaluatorOf, type Mode, type SamplingProblem } from './fit-mode.js';
import { drawGaussian, type Gaussian, gaussianOfPrecision, logDensity, standardGaussian } from './gaussian.js';
import { effectiveSampleSize, logSumExp, weightsFromLogs } from './weights.js';

/** Options of {@link sampleByFit}. */
export interface SamplingOptions {
  /** Draws of the first round. Default 500; a round more is drawn while the effective size is below {@link wantedSize}. */
  readonly draws?: number;
  /** Effective sample size that ends the rounds. Default a fifth of the draws. */
  readonly wantedSize?: number;
  /** At most this many rounds. Default 3. */
  readonly rounds?: number;
  /** The same seed gives the same draws. Default 1. */
  readonly seed?: number;
  /** Points to climb from beside the best prior draws. */
  readonly starts?: readonly Float64Array[];
}

/** Draws from what is known after the observations. */
export interface WeightedDraws {
  /** One point a row. */
  readonly points: readonly Float64Array[];
  /** Sum to 1; all zero when no draw is possible. */
  readonly weights: Float64Array;
  /**
   * ln of the chance of the observations, averaged over what is known before them, up to the same constant for all
   * problems with the same observations. -Infinity when no draw is possible.
   */
  readonly logEvidence: number;
  readonly effectiveSize: number;
  /** Evaluations of the model. */
  readonly evaluations: number;
}

/** Part of what the observations tell that a proposal takes over, and its share of the draws. */
const tempers = [
  { heat: 1.15, share: 0.5 },
  { heat: 3, share: 0.2 },
  { heat: 15, share: 0.12 },
] as const;
const priorShare = 0.18;
const trialStarts = 24;

interface Component {
  readonly gaussian: Gaussian;
  readonly share: number;
}

/**
 * Importance sampling around fitted modes. Draws come from a mixture of normal distributions: around each mode with the
 * precision that the observations give there, with a part of it only, and from the prior, so that neither a narrow
 * posterior nor a tail is missed. Weights are taken against the whole mixture, rounds included (deterministic mixture;
 * A. Owen and Y. Zhou, J. Am. Stat. Assoc. 95 (2000) 135–143), so the evidence is unbiased whatever the fit.
 *
 * @throws NumericsError `invalid_argument` for no dimension, fewer than 50 draws or a seed that is not a whole number
 */
export function sampleByFit(problem: SamplingProblem, options: SamplingOptions = {}): WeightedDraws {
  const { draws = 500, rounds = 3, seed = 1, starts = [], wantedSize = draws / 5 } = options;
  requireArgument(Number.isInteger(problem.dimension) && problem.dimension > 0, 'at least one unknown is needed');
  requireArgument(Number.isInteger(draws) && draws >= 50, 'at least 50 draws are needed');
  requireArgument(Number.isInteger(seed), 'the seed must be a whole number');
  const source = makeRandomSource(seed);
  let evaluations = 0;
  const plain = evaluatorOf(problem);
  const evaluator: Evaluator = {
    ...plain,
    logLikelihood: (point) => {
      evaluations += 1;
      return plain.logLikelihood(point);
    },
  };
  const modes: Mode[] = [];
  for (const start of [...starts, ...bestOfPrior(evaluator, source, 2)]) addMode(modes, climb(evaluator, start));

  const points: Float64Array[] = [];
  const posteriors: number[] = [];
  const components: Component[] = [];
  let outcome = weigh(points, posteriors, components);
  for (let round = 0; round < rounds; round += 1) {
    const added = mixture(modes, problem.dimension);
    for (const { gaussian, share } of added) {
      const count = Math.max(1, Math.round(share * draws));
      components.push({ gaussian, share: count });
      for (let k = 0; k < count; k += 1) {
        const point = new Float64Array(problem.dimension);
        drawGaussian(gaussian, source, point);
        points.push(point);
        posteriors.push(evaluator.logLikelihood(point) + logDensity(standard(problem.dimension), point));
      }
    }
    outcome = weigh(points, posteriors, components);
    if (outcome.effectiveSize >= wantedSize) break;
    // The heaviest draw lies where the proposals are too thin: climb from there.
    const heaviest = outcome.weights.reduce((best, weight, index) => (weight > outcome.weights[best]! ? index : best), 0);
    if (outcome.effectiveSize > 0) addMode(modes, climb(evaluator, points[heaviest]!));
    else for (const start of bestOfPrior(evaluator, source, 2)) addMode(modes, climb(evaluator, start));
  }
  return { points, ...outcome, evaluations };
}

const standards = new Map<number, Gaussian>();
function standard(size: number): Gaussian {
  const known = standards.get(size) ?? standardGaussian(size);
  standards.set(size, known);
  return known;
}

function bestOfPrior(evaluator: Evaluator, source: RandomSource, count: number): Float64Array[] {
  const size = evaluator.problem.dimension;
  const found = Array.from({ length: trialStarts }, (_, index) => {
    const point = new Float64Array(size);
    if (index > 0) for (let i = 0; i < size; i += 1) point[i] = source.normal();
    return { point, value: evaluator.logLikelihood(point) };
  });
  return found
    .sort((a, b) => b.value - a.value)
    .slice(0, count)
    .filter(({ value }) => Number.isFinite(value))
    .map(({ point }) => point);
}

const sameMode = 0.3;
const mostModes = 4;

function addMode(modes: Mode[], mode: Mode | undefined): void {
  if (mode === undefined) return;
  const near = modes.findIndex((other) => Math.hypot(...other.point.map((value, i) => value - mode.point[i]!)) < sameMode);
  if (near >= 0) {
    if (mode.logPosterior > modes[near]!.logPosterior) modes[near] = mode;
    return;
  }
  modes.push(mode);
  modes.sort((a, b) => b.logPosterior - a.logPosterior);
  modes.length = Math.min(modes.length, mostModes);
}

function mixture(modes: readonly Mode[], size: number): Component[] {
  const best = modes[0]?.logPosterior ?? 0;
  // A mode that is far less dense still gets draws: it may be wide.
  const weights = modes.map(({ logPosterior }) => Math.max(0.1, Math.exp(Math.max(-5, logPosterior - best))));
  const total = weights.reduce((sum, weight) => sum + weight, 0);
  const around = modes.flatMap((mode, index) =>
    tempers.flatMap(({ heat, share }) => {
      const precision = mode.information.map((value) => value / heat);
      for (let i = 0; i < size; i += 1) precision[i * size + i]! += 1;
      const gaussian = gaussianOfPrecision(mode.point, precision);
      return gaussian === undefined ? [] : [{ gaussian, share: (share * weights[index]!) / total }];
    }),
  );
  return [...around, { gaussian: standard(size), share: modes.length === 0 ? 1 : priorShare }];
}

function weigh(points: readonly Float64Array[], posteriors: readonly number[], components: readonly Component[]) {
  const count = components.reduce((sum, { share }) => sum + share, 0);
  const logShares = components.map(({ share }) => Math.log(share / count));
  const terms = new Float64Array(components.length);
  const logs = points.map((point, index) => {
    if (!Number.isFinite(posteriors[index]!)) return -Infinity;
    for (let k = 0; k < components.length; k += 1) terms[k] = logShares[k]! + logDensity(components[k]!.gaussian, point);
    return posteriors[index]! - logSumExp(terms);
  });
  const weights = weightsFromLogs(logs);
  return {
    weights,
    logEvidence: points.length === 0 ? -Infinity : logSumExp(logs) - Math.log(points.length),
    effectiveSize: effectiveSampleSize(weights),
  };
}
