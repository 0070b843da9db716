import { requireArgument } from '../errors.js';
import { type Conditional, conditionalSampler } from './conditional.js';
import { climb, type Evaluator, evaluatorOf, type Mode, type SamplingProblem } from './fit-mode.js';
import { conditionalMean, drawTail, type Gaussian, gaussianOfPrecision, standardGaussian, tailLogDensity } from './gaussian.js';
import { pivotOrder } from './pivots.js';
import { makeRandomSource, type RandomSource } from './random-source.js';
import { effectiveSampleSize, logSumExp, weightsFromLogs } from './weights.js';

/** Options of {@link sampleByFit}. */
export interface SamplingOptions {
  /** Number of draws. Default 200. */
  readonly draws?: number;
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
  /** Where the posterior is densest; to start from when more draws are wanted. */
  readonly modes: readonly Float64Array[];
  /** Evaluations of the model. */
  readonly evaluations: number;
}

/** Part of what the observations tell that a proposal takes over, and its share of the draws. */
const tempers = [
  { heat: 1.3, share: 0.5 },
  { heat: 4, share: 0.25 },
] as const;
const priorShare = 0.25;
const trialStarts = 16;

interface Component {
  readonly gaussian: Gaussian;
  readonly count: number;
  /** The narrowest of its mode, or the only one. */
  readonly leads: boolean;
}

/**
 * Importance sampling around fitted modes. The unknowns that the observations tell most about are pivots: for each draw
 * they are fitted anew, given the others, and drawn around that fit. The others come from a mixture of normal
 * distributions: around each mode with most, or a part, of the precision that the observations give there, and from the
 * prior. So a posterior that is thin and curved, as a few sharp readings of many unknowns make it, keeps its draws. Weights
 * are taken against the whole mixture (deterministic mixture; A. Owen and Y. Zhou, J. Am. Stat. Assoc. 95 (2000)
 * 135–143), which leaves the evidence unbiased whatever the fits.
 *
 * @throws NumericsError `invalid_argument` for no unknown, fewer than 10 draws or a seed that is not a whole number
 */
export function sampleByFit(problem: SamplingProblem, options: SamplingOptions = {}): WeightedDraws {
  const { draws = 200, seed = 1, starts = [] } = options;
  requireArgument(Number.isInteger(problem.dimension) && problem.dimension > 0, 'at least one unknown is needed');
  requireArgument(Number.isInteger(draws) && draws >= 10, 'at least 10 draws are needed');
  requireArgument(Number.isInteger(seed), 'the seed must be a whole number');
  const source = makeRandomSource(seed);
  const evaluator = evaluatorOf(problem);
  const modes: Mode[] = [];
  for (const start of starts) addMode(modes, climb(evaluator, start));
  if (starts.length === 0) climbFromPrior(evaluator, source, modes);

  const order = pivotOrder(evaluator, modes[0]?.point ?? new Float64Array(problem.dimension));
  const conditional = conditionalSampler(evaluator, order);
  const components = mixture(modes, order.indices, draws);
  // One start for the pivots from each mode; the first component of a mode is the narrowest.
  const leading = components.filter(({ leads }) => leads);
  const points: Float64Array[] = [];
  const terms: number[] = [];
  const ordered = new Float64Array(problem.dimension);
  for (const { gaussian, count } of components) {
    for (let k = 0; k < count; k += 1) {
      drawTail(gaussian, order.pivots, source, ordered);
      const starts = leading.map((component) => conditionalMean(component.gaussian, order.pivots, ordered));
      const drawn: Conditional | undefined = conditional(ordered, starts, source);
      if (drawn === undefined) {
        points.push(new Float64Array(problem.dimension));
        terms.push(-Infinity);
        continue;
      }
      points.push(drawn.point);
      terms.push(drawn.logPosterior - drawn.logDensity - mixtureLogDensity(components, order.pivots, draws, ordered));
    }
  }
  const weights = weightsFromLogs(terms);
  return {
    points,
    weights,
    logEvidence: logSumExp(terms) - Math.log(terms.length),
    effectiveSize: effectiveSampleSize(weights),
    modes: modes.map(({ point }) => point),
    evaluations: evaluator.count(),
  };
}

/** Climb from the best of some prior draws, and once more from the best of those far from where that led. */
function climbFromPrior(evaluator: Evaluator, source: RandomSource, modes: Mode[]): void {
  const size = evaluator.problem.dimension;
  const found = Array.from({ length: trialStarts }, (_, index) => {
    const point = new Float64Array(size);
    if (index > 0) for (let i = 0; i < size; i += 1) point[i] = source.normal();
    return { point, value: evaluator.logLikelihood(point) };
  })
    .filter(({ value }) => Number.isFinite(value))
    .sort((a, b) => b.value - a.value);
  const [first] = found;
  if (first === undefined) return;
  addMode(modes, climb(evaluator, first.point));
  const far = found.find(({ point }) => modes.every((mode) => distance(mode.point, point) > farAway));
  if (far !== undefined) addMode(modes, climb(evaluator, far.point));
}

const distance = (a: Float64Array, b: Float64Array) => Math.hypot(...a.map((value, i) => value - b[i]!));
const farAway = 1;
const sameMode = 0.5;

function addMode(modes: Mode[], mode: Mode | undefined): void {
  if (mode === undefined) return;
  const near = modes.findIndex((other) => distance(other.point, mode.point) < sameMode);
  if (near < 0) modes.push(mode);
  else if (mode.logPosterior > modes[near]!.logPosterior) modes[near] = mode;
  modes.sort((a, b) => b.logPosterior - a.logPosterior);
}

function mixture(modes: readonly Mode[], indices: readonly number[], draws: number): Component[] {
  const size = indices.length;
  const best = modes[0]?.logPosterior ?? 0;
  // A mode that is far less dense still gets draws: it may be wide.
  const weights = modes.map(({ logPosterior }) => Math.max(0.15, Math.exp(Math.max(-5, logPosterior - best))));
  const total = weights.reduce((sum, weight) => sum + weight, 0);
  const components: Component[] = [];
  modes.forEach(({ point, information }, index) => {
    for (const [place, { heat, share }] of tempers.entries()) {
      const precision = new Float64Array(size * size);
      for (let i = 0; i < size; i += 1) {
        for (let j = 0; j < size; j += 1)
          precision[i * size + j] = information[indices[i]! * size + indices[j]!]! / heat + (i === j ? 1 : 0);
      }
      const mean = Float64Array.from(indices, (original) => point[original]!);
      const gaussian = gaussianOfPrecision(mean, precision);
      const count = Math.round((share * draws * weights[index]!) / total);
      if (gaussian !== undefined && count > 0) components.push({ gaussian, count, leads: place === 0 });
    }
  });
  const count = components.length === 0 ? draws : Math.max(1, Math.round(priorShare * draws));
  return [...components, { gaussian: standardGaussian(size), count, leads: components.length === 0 }];
}

function mixtureLogDensity(components: readonly Component[], from: number, draws: number, ordered: Float64Array): number {
  return logSumExp(components.map(({ gaussian, count }) => Math.log(count / draws) + tailLogDensity(gaussian, from, ordered)));
}
