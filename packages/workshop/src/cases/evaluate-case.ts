import {
  type EstimateInput,
  estimateFilter,
  type FilterCause,
  type FilterEstimate,
  filterCauses,
  greatestRiskOfHeat,
  planOf,
} from '../estimate/index.js';
import { burningDamages } from './burning-damages.js';
import { type GeneratedCase, generateCase } from './generate-case.js';

/** Changes whenever cases, estimate or marking do: stored rows of another version are not comparable. */
export const evaluationVersion = 1;

/** Load that nobody may heat without knowing the material of the filter, kg/m³ (common practice, no source). */
export const heatLimit = 5;

/** The causes in the order in which a row gives their chances. */
export const causeOrder = Object.keys(filterCauses) as readonly FilterCause[];

/** What was said of one case, rounded as it is stored. */
export interface Mark {
  /** Chance of each cause, in thousandths. */
  readonly chances: readonly number[];
  /** Ends of the 90 % ranges, kg/m³. */
  readonly soot: readonly [number, number];
  readonly ash: readonly [number, number];
  /** Chance of a soot load above the limit, in ten thousandths. */
  readonly above: number;
  readonly plan: string;
  readonly fewDraws: boolean;
}

/** One case with what was hidden in it and what was said. */
export interface EvaluationRow {
  readonly seed: number;
  readonly cause: FilterCause;
  readonly soot: number;
  readonly ash: number;
  readonly readings: Mark;
  readonly trials: Mark;
  /** The load alone would let this filter be heated, from the readings or with the trials. */
  readonly heated: boolean;
  /** It would be, and the axial model damages it, drop to idle included. */
  readonly damaged: boolean;
}

const hundredth = (value: number) => Math.round(value * 100) / 100;

function markOf(estimate: FilterEstimate): Mark {
  const chances = new Map(estimate.causes.map(({ id, probability }) => [id, probability]));
  const { sootLoad, ashLoad, effectiveSize } = estimate;
  return {
    chances: causeOrder.map((id) => Math.round(1000 * (chances.get(id) ?? 0))),
    soot: [hundredth(sootLoad.p5), hundredth(sootLoad.p95)],
    ash: [hundredth(ashLoad.p5), hundredth(ashLoad.p95)],
    above: Math.round(1e4 * estimate.chanceOfSootAbove(heatLimit)),
    plan: planOf(estimate, heatLimit).find(({ chosen }) => chosen)?.id ?? '',
    fewDraws: estimate.issues.length > 0 || !(effectiveSize > 0),
  };
}

/**
 * What a technician would find with the trials that are told to be made: hoses, tail pipe, gauge and back-pressure on the vehicle;
 * then the answer to a regeneration where heat is allowed, or rod and scales where the filter comes off.
 */
export function withTrials({ input, trials, resistanceRatio, weighedLoad }: GeneratedCase, before: FilterEstimate): EstimateInput {
  const { rod, ...onVehicle } = trials;
  const chance = (id: FilterCause) => before.causes.find((entry) => entry.id === id)?.probability ?? 0;
  if (before.chanceOfSootAbove(heatLimit) <= greatestRiskOfHeat) return { ...input, trials: { ...onVehicle, resistanceRatio } };
  if (chance('soot') + chance('ash') <= 0.5) return { ...input, trials: onVehicle };
  return { ...input, trials: { ...onVehicle, rod, ...(weighedLoad === undefined ? {} : { weighedLoad }) } };
}

/** Make a case, judge it from its readings and then with its trials, and mark both. */
export function evaluateCase(seed: number): EvaluationRow {
  const made = generateCase(seed);
  const before = estimateFilter(made.input);
  const [readings, trials] = [markOf(before), markOf(estimateFilter(withTrials(made, before)))];
  const heated = [readings, trials].some(({ plan, above }) => plan === 'regenerate' || above <= 500);
  return {
    seed,
    cause: made.truth.cause,
    soot: hundredth(made.truth.sootLoad),
    ash: hundredth(made.truth.ashLoad),
    readings,
    trials,
    heated,
    damaged: heated && burningDamages(made.truth.sootLoad, made.filter),
  };
}
