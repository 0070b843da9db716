import { sootBandsOf } from '@wallflow/exhaust';
import {
  type FilterEstimate,
  greatestRiskOfHeat,
  nextTests,
  type PlanOption,
  planOf,
  type Range,
  type ReductantEstimate,
  type TestValue,
} from '../estimate/index.js';
import { type Attempt, succeeded, wordOf } from './evaluation.js';
import { type ForecastData, forecastOf } from './forecast-of.js';
import { type QuoteLine, quoteOf } from './quote-of.js';
import { reductantOf } from './reductant-of.js';
import type { JobResult } from './run-job.js';

/** The estimate of a filter as plain data. */
export interface EstimateData {
  readonly restricted: number;
  /** Most likely first; they sum to 1. */
  readonly causes: ReadonlyArray<{ readonly id: string; readonly title: string; readonly probability: number }>;
  /** g/L, with the ends of the 90 % range. */
  readonly sootLoad: Range;
  readonly ashLoad: Range;
}

/** Whether heat may be used: the conditions of the calculation, and the chance of a load above the limit on top. */
export interface PermissionData {
  readonly verdict: 'permitted' | 'refused' | 'not-known';
  /** g/L */
  readonly sootLimit: number;
  readonly chanceAboveLimit: number;
  readonly greatestChance: number;
}

export interface VerificationData {
  readonly verdict: 'proved' | 'improved-not-proved' | 'no-change' | 'worse' | 'not-comparable';
  /** Chance that nothing restricts the exhaust after the work. */
  readonly probability: number;
  /** The test that would sharpen it most for its time. */
  readonly sharpen?: TestValue;
}

export interface JobEstimate {
  readonly estimate: EstimateData;
  readonly nextTest?: TestValue;
  readonly plan: readonly PlanOption[];
  readonly permission: PermissionData;
  readonly verification?: VerificationData;
  readonly forecast?: ForecastData;
  /** What each option of the plan costs; absent where no price of work was entered. */
  readonly quote?: readonly QuoteLine[];
}

/** The reductant side of a job, where something of it was tested. */
export interface ReductantData {
  readonly causes: ReductantEstimate['causes'];
  /** Urea that reaches the exhaust over that of full fluid in full quantity. */
  readonly dose: Range;
}

export function reductantData(result: JobResult): ReductantData | undefined {
  const estimate = reductantOf(result.reductant);
  return estimate === undefined ? undefined : { causes: estimate.causes, dose: estimate.dose };
}

const substrates = { 'silicon-carbide': 'silicon-carbide', cordierite: 'cordierite' } as const;

/** The load above which heat is refused in practice; that of the more delicate material where it is not known. */
function sootLimitOf({ job }: JobResult): number {
  const given = job.filter.substrate ?? job.permission.before.substrate;
  return sootBandsOf(given === substrates['silicon-carbide'] ? 'silicon-carbide' : 'cordierite').service;
}

export function estimateData({ restricted, causes, sootLoad, ashLoad }: FilterEstimate): EstimateData {
  return { restricted, causes: causes.map(({ id, title, probability }) => ({ id, title, probability })), sootLoad, ashLoad };
}

function permissionData(estimate: FilterEstimate, attempt: Attempt, sootLimit: number): PermissionData {
  const chanceAboveLimit = estimate.chanceOfSootAbove(sootLimit);
  const word = succeeded(attempt) ? wordOf(attempt, 'verdict') : 'unknown';
  const refused = chanceAboveLimit > greatestRiskOfHeat || word === 'refused';
  return {
    verdict: refused ? 'refused' : word === 'permitted' && estimate.issues.length === 0 ? 'permitted' : 'not-known',
    sootLimit,
    chanceAboveLimit,
    greatestChance: greatestRiskOfHeat,
  };
}

export const verified: Readonly<Record<string, VerificationData['verdict']>> = {
  cleaned: 'proved',
  improved: 'improved-not-proved',
  'improved-unproven': 'improved-not-proved',
  unchanged: 'no-change',
  worse: 'worse',
};

/** Proved only where readings at comparable flow and the estimate of the filter after the work say so both. */
function verificationData({ comparison, estimateAfter }: JobResult): VerificationData | undefined {
  if (comparison === undefined || estimateAfter === undefined) return undefined;
  const compared = succeeded(comparison) ? (verified[wordOf(comparison, 'verdict')] ?? 'not-comparable') : 'not-comparable';
  const probability = 1 - estimateAfter.restricted;
  const [sharpen] = nextTests(estimateAfter);
  return {
    verdict: compared === 'proved' && probability < 0.9 ? 'improved-not-proved' : compared,
    probability,
    ...(sharpen === undefined ? {} : { sharpen }),
  };
}

const drawn = new WeakMap<JobResult, JobEstimate | undefined>();

/** All that a job draws from its estimate; undefined where there is none. After the work the later side counts. Drawn once for a result. */
export function jobEstimate(result: JobResult): JobEstimate | undefined {
  if (!drawn.has(result)) drawn.set(result, draw(result));
  return drawn.get(result);
}

function draw(result: JobResult): JobEstimate | undefined {
  const estimate = result.estimateAfter ?? result.estimateBefore;
  if (estimate === undefined) return undefined;
  const sootLimit = sootLimitOf(result);
  const [nextTest] = nextTests(estimate);
  const attempt = result.estimateAfter === undefined ? result.permissionBefore : (result.permissionAfter ?? result.permissionBefore);
  const verification = verificationData(result);
  const plan = planOf(result.estimateBefore ?? estimate, sootLimit);
  const forecast = forecastOf(result.job, estimate, result.estimateAfter !== undefined);
  const quote = quoteOf(result.job, plan, result.cleaning);
  return {
    estimate: estimateData(estimate),
    ...(nextTest === undefined ? {} : { nextTest }),
    plan,
    permission: permissionData(estimate, attempt, sootLimit),
    ...(verification === undefined ? {} : { verification }),
    ...(forecast === undefined ? {} : { forecast }),
    ...(quote === undefined ? {} : { quote }),
  };
}
