import {
  effectiveSampleSize,
  logSumExp,
  type SamplingProblem,
  sampleByFit,
  type WeightedDraws,
  weightedQuantiles,
} from '@wallflow/numerics/sampling';
import { causeOf, type FilterCause, filterCauses, type Hypothesis, hypothesesFor } from './causes.js';
import type { EstimateInput } from './evidence-input.js';
import { bodySource, compactionOf, dropAt } from './filter-model.js';
import { type GasModel, gasModel } from './gas-state.js';
import { type Observation, observationsOf, stateSource, type VehicleState } from './observations.js';
import { type Priors, priorsOf } from './priors.js';
import { trialLogLikelihood } from './trials.js';
import { silentUnknowns, unknowns } from './unknowns.js';

/** A range of a quantity in which it lies with 90 %. */
export interface Range {
  readonly p5: number;
  readonly p50: number;
  readonly p95: number;
}

/** How one thing that was seen bears on one cause. */
export interface Bearing {
  readonly name: string;
  /** Mean of the standardised residual: above 0, more was read than this cause explains. */
  readonly residual: number;
}

export interface CauseEstimate {
  readonly id: FilterCause;
  readonly title: string;
  readonly probability: number;
  readonly bearings: readonly Bearing[];
}

export interface FilterEstimate {
  /** Chance that something restricts the exhaust: the filter, or another part that was seen to. */
  readonly restricted: number;
  /** Most likely first; the probabilities sum to 1. */
  readonly causes: readonly CauseEstimate[];
  /** kg/m³, which is g/L. */
  readonly sootLoad: Range;
  readonly ashLoad: Range;
  /** kg */
  readonly sootMass: Range;
  readonly ashMass: Range;
  /** Drop over that of the clean filter, at the highest flow that was read. */
  readonly cleanRatio: Range;
  /** Chance of a soot load above a limit, kg/m³. */
  readonly chanceOfSootAbove: (limit: number) => number;
  readonly priors: Priors;
  readonly effectiveSize: number;
  /** How often the model of the filter was evaluated: the work that this took. */
  readonly evaluations: number;
  readonly issues: readonly EstimateIssue[];
  /** For questions that are asked of the same draws later. */
  readonly draws: EstimateDraws;
}

export interface EstimateIssue {
  readonly code: 'no_reading' | 'too_few_draws' | 'unexplained';
  readonly effectiveSize?: number;
}

export interface EstimateDraws {
  readonly states: readonly VehicleState[];
  /** Sum to 1. */
  readonly weights: Float64Array;
  readonly input: EstimateInput;
}

export interface EstimateOptions {
  readonly seed?: number;
  /** Draws for each explanation. Default 180. */
  readonly draws?: number;
}

/** Of all draws together; below it ranges are not trusted. */
export const leastEffectiveSize = 100;
/** Errors of readings follow Student's t with this many degrees of freedom: a reading may be simply wrong. */
const degreesOfFreedom = 4;
/** From here on a filter is called restricted: drop over that of the clean filter. */
export const restrictedFrom = 5;
/** A restriction elsewhere counts from this drop at the highest flow that was read, Pa. */
const restrictedPipe = 5000;

interface Explained {
  readonly hypothesis: Hypothesis;
  readonly stateAt: ReturnType<typeof stateSource>;
  readonly result: WeightedDraws;
  readonly logWeight: number;
  /** Of all its draws so far. */
  readonly evaluations: number;
}

interface CauseSums {
  probability: number;
  readonly sums: Float64Array;
}

interface Context {
  readonly observations: readonly Observation[];
  readonly input: EstimateInput;
  readonly priors: Priors;
  readonly seed: number;
}

/** An explanation is drawn again, more closely, from this chance on. */
const worthDrawing = 0.01;
const firstDraws = 24;

/** A state of the gas that stands for the highest flow, to which drops are compared. */
function highestFlow({ readings, vehicle }: EstimateInput): GasModel {
  const highest = readings.reduce((best, reading) => (reading.engineSpeed > best.engineSpeed ? reading : best), {
    engineSpeed: 0,
    pressureDrop: 0,
  });
  const ambient = vehicle.ambientPressure ?? 101_325;
  const reading = highest.engineSpeed > 0 ? highest : { engineSpeed: 40, pressureDrop: 0 };
  return gasModel(reading, ambient + Math.max(0, reading.pressureDrop) / 2, vehicle);
}

/** Order of what was seen must not matter: sort it before anything is drawn. */
function inOrder(input: EstimateInput): EstimateInput {
  return {
    ...input,
    readings: [...input.readings].sort((a, b) => a.engineSpeed - b.engineSpeed || a.pressureDrop - b.pressureDrop),
    ...(input.backPressures === undefined
      ? {}
      : { backPressures: [...input.backPressures].sort((a, b) => a.engineSpeed - b.engineSpeed || a.backPressure - b.backPressure) }),
  };
}

/** How one explanation is drawn: a few draws tell whether it counts; more follow for those that do. */
function explainer(hypothesis: Hypothesis, index: number, context: Context) {
  const { observations, input, priors, seed } = context;
  const stateAt = stateSource(hypothesis, bodySource(priors));
  const fitted = observations.filter(({ logChance }) => logChance === undefined);
  const weak = observations.flatMap(({ logChance }) => logChance ?? []);
  let evaluations = 0;
  const problem: SamplingProblem = {
    dimension: unknowns.length,
    observed: fitted.map(({ value }) => value),
    degreesOfFreedom,
    predict: (point, expected, scale) => {
      const state = stateAt(point);
      if (state === undefined) return false;
      for (let i = 0; i < fitted.length; i += 1) [expected[i], scale[i]] = fitted[i]!.predict(state) as [number, number];
      return true;
    },
    silent: silentUnknowns(input, hypothesis),
    ...(weak.length === 0
      ? {}
      : {
          weigh: (point: Float64Array) => {
            const state = stateAt(point);
            return state === undefined ? -Infinity : weak.reduce((sum, logChance) => sum + logChance(state), 0);
          },
        }),
  };
  const before = Math.log(hypothesis.weight) + trialLogLikelihood(hypothesis.id, input.trials ?? {});
  return (draws: number, round: number, starts: readonly Float64Array[] = []): Explained => {
    const result = sampleByFit(problem, { seed: seed * 1000 + index * 10 + round, draws, starts });
    evaluations += result.evaluations;
    return { hypothesis, stateAt, result, logWeight: before + result.logEvidence, evaluations };
  };
}

/** The draws with the most weight: where a fit that started there may find what the first missed. */
function heaviest({ points, weights }: WeightedDraws): Float64Array[] {
  const order = points.map((_, k) => k).sort((a, b) => weights[b]! - weights[a]!);
  return order.slice(0, 3).map((k) => points[k]!);
}

/** What nearly everything rests on must not rest on a few draws: the explanation that limits the effective size is drawn anew. */
function drawMoreWhereNeeded(explained: Explained[], again: (index: number, round: number) => Explained): void {
  for (let round = 2; round < 5; round += 1) {
    const total = logSumExp(explained.map(({ logWeight }) => logWeight));
    const lost = explained.map(({ logWeight, result }) => Math.exp(2 * (logWeight - total)) / Math.max(1, result.effectiveSize));
    if (1 / lost.reduce((sum, part) => sum + part, 0) >= 1.3 * leastEffectiveSize) return;
    const worst = lost.indexOf(Math.max(...lost));
    explained[worst] = again(worst, round);
  }
}

/**
 * One estimate of the filter from all that is known: for each explanation, draws of everything that is unknown, weighted
 * by how well they give what was read; the explanations weighted by how likely they make it.
 *
 * The same seed gives the same estimate; the order of readings does not matter. Never throws on numbers within physics.
 */
export function estimateFilter(given: EstimateInput, options: EstimateOptions = {}): FilterEstimate {
  const input = inOrder(given);
  const priors = priorsOf(input.vehicle);
  const fast = highestFlow(input);
  const highestRhoQQ = fast(new Float64Array(unknowns.length)).rhoQQ;
  const observations = observationsOf(input, priors, highestRhoQQ);
  const context: Context = { observations, input, priors, seed: options.seed ?? 1 };
  const first = hypothesesFor(input, priors, highestRhoQQ).map((hypothesis, index) => {
    const draw = explainer(hypothesis, index, context);
    return { draw, explained: draw(firstDraws, 0) };
  });
  const firstTotal = logSumExp(first.map(({ explained }) => explained.logWeight));
  const draws = options.draws ?? 180;
  const explained = first.map(({ draw, explained }) =>
    Math.exp(explained.logWeight - firstTotal) < worthDrawing ? explained : draw(draws, 1, explained.result.modes),
  );
  drawMoreWhereNeeded(explained, (index, round) => {
    const { modes } = explained[index]!.result;
    return first[index]!.draw(4 * draws, round, [...modes, ...heaviest(explained[index]!.result)]);
  });
  const total = logSumExp(explained.map(({ logWeight }) => logWeight));
  const states: VehicleState[] = [];
  const weights: number[] = [];
  const byCause = new Map<FilterCause, CauseSums>();
  for (const part of explained) {
    const probability = Math.exp(part.logWeight - total);
    const entry = byCause.get(causeOf(part.hypothesis.id)) ?? { probability: 0, sums: new Float64Array(observations.length) };
    entry.probability += probability;
    byCause.set(causeOf(part.hypothesis.id), entry);
    part.result.points.forEach((point, k) => {
      const weight = probability * part.result.weights[k]!;
      const state = weight < 1e-7 ? undefined : part.stateAt(point);
      if (state === undefined) return;
      states.push(state);
      weights.push(weight);
      observations.forEach(({ predict, value }, i) => {
        const [expected, scale] = predict(state);
        entry.sums[i]! += (weight * (value - expected)) / scale;
      });
    });
  }
  const shares = Float64Array.from(weights);
  const effectiveSize = effectiveSampleSize(shares);
  const ratios = states.map((state) => ratioToClean(state, fast));
  const restricted = states.reduce((sum, state, k) => sum + (isRestricted(state, ratios[k]!, highestRhoQQ) ? shares[k]! : 0), 0);
  const rangeOf = (values: readonly number[]): Range => {
    const [p5 = Number.NaN, p50 = Number.NaN, p95 = Number.NaN] = weightedQuantiles(values, shares, [0.05, 0.5, 0.95]);
    return { p5, p50, p95 };
  };
  const sootLoads = states.map(({ sootLoad }) => sootLoad);
  const issues: EstimateIssue[] = [];
  if (input.readings.length === 0) issues.push({ code: 'no_reading' });
  if (!(effectiveSize >= leastEffectiveSize)) issues.push({ code: 'too_few_draws', effectiveSize });
  return {
    restricted: Math.min(1, restricted),
    causes: [...allCauses(byCause, observations.length)]
      .map(([id, { probability, sums }]) => ({
        id,
        title: filterCauses[id],
        probability,
        bearings: observations.map(({ name }, i) => ({ name, residual: probability > 0 ? sums[i]! / probability : 0 })),
      }))
      .sort((a, b) => b.probability - a.probability),
    sootLoad: rangeOf(sootLoads),
    ashLoad: rangeOf(states.map(({ ashLoad }) => ashLoad)),
    sootMass: rangeOf(states.map(({ sootLoad, volume }) => sootLoad * volume)),
    ashMass: rangeOf(states.map(({ ashLoad, volume }) => ashLoad * volume)),
    cleanRatio: rangeOf(ratios),
    chanceOfSootAbove: (limit) => sootLoads.reduce((sum, load, k) => sum + (load > limit ? shares[k]! : 0), 0),
    priors,
    effectiveSize,
    evaluations: explained.reduce((sum, part) => sum + part.evaluations, 0),
    issues,
    draws: { states, weights: shares, input },
  };
}

/** Causes that were not weighed at all have no chance, but a place in the list. */
function allCauses(weighed: ReadonlyMap<FilterCause, CauseSums>, observations: number): Map<FilterCause, CauseSums> {
  const none = { probability: 0, sums: new Float64Array(observations) };
  return new Map((Object.keys(filterCauses) as FilterCause[]).map((id) => [id, weighed.get(id) ?? none]));
}

function ratioToClean(state: VehicleState, fast: GasModel): number {
  const clean = state.clean();
  if (clean === undefined) return Number.NaN;
  const { muQ, rhoQQ } = fast(state.point);
  const compaction = compactionOf(state.point);
  return dropAt(state.resistance, muQ, rhoQQ, compaction) / dropAt(clean, muQ, rhoQQ, compaction);
}

function isRestricted({ hypothesis, point }: VehicleState, ratio: number, highestRhoQQ: number): boolean {
  const elsewhere = hypothesis.elsewhere?.pipe(point) ?? 0;
  return ratio > restrictedFrom || elsewhere * highestRhoQQ > restrictedPipe;
}
