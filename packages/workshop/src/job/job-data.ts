import { type Advice, type Assumption, type Issue, type Presented, present, type Warning } from '@wallflow/calculation';
import { type EstimateData, estimateData, type JobEstimate, jobEstimate, type ReductantData, reductantData } from './estimate-data.js';
import { type Attempt, succeeded } from './evaluation.js';
import type { JobFile } from './job-file.js';
import { type JobState, stateOf } from './job-state.js';
import type { MeasuredSide } from './measured-side.js';
import type { JobResult } from './run-job.js';

/** One calculation of a job as plain data: values with units, or why there is none. */
export type AttemptData =
  | {
      readonly calculation: string;
      readonly version: string;
      readonly ok: true;
      readonly outputs: Readonly<Record<string, Presented>>;
      readonly intermediates: Readonly<Record<string, Presented>>;
      readonly warnings: readonly Warning[];
      readonly assumptions: readonly Assumption[];
      readonly advice: readonly Advice[];
    }
  | { readonly calculation: string; readonly version: string; readonly ok: false; readonly issues: readonly Issue[] };

/** What the readings before, or after, the work say, as plain data. */
export interface SideData {
  /** The log, or where in the job the readings were typed in. */
  readonly file: string;
  /** Readings that were left out, and why. */
  readonly leftOut: readonly string[];
  /** The reading that decided the condition: its place among those that were used, from 0, and its engine state. */
  readonly decidingIndex: number;
  readonly decidingReading: string;
  readonly massFlow: AttemptData;
  readonly volumeFlow: AttemptData;
  readonly condition: AttemptData;
  readonly soot: AttemptData;
}

/** A whole job as plain data: it survives JSON and `structuredClone`, for a program that keeps records. */
export interface JobData extends Partial<JobEstimate> {
  /** Before the work, where there are readings of both sides. */
  readonly estimateBefore?: EstimateData;
  readonly reductantEstimate?: ReductantData;
  readonly ok: true;
  readonly job: JobFile;
  /** What is known and missing, what may be done and what must not. */
  readonly state: JobState;
  readonly before: SideData;
  readonly after?: SideData;
  readonly permissionBefore: AttemptData;
  readonly permissionAfter?: AttemptData;
  readonly cleaning?: AttemptData;
  readonly comparison?: AttemptData;
  readonly reductant: readonly AttemptData[];
  readonly reset?: AttemptData;
}

function attemptData(attempt: Attempt): AttemptData {
  const { id, version } = attempt.calculation;
  if (!succeeded(attempt)) return { calculation: id, version, ok: false, issues: attempt.issues };
  const { warnings, assumptions, advice } = attempt.result;
  return { calculation: id, version, ok: true, ...present(attempt.calculation, attempt.result), warnings, assumptions, advice };
}

function sideData({ file, leftOut, readings, deciding, condition, soot }: MeasuredSide): SideData {
  return {
    file,
    leftOut,
    decidingIndex: readings.indexOf(deciding),
    decidingReading: deciding.state,
    massFlow: attemptData(deciding.massFlow),
    volumeFlow: attemptData(deciding.volumeFlow),
    condition: attemptData(condition),
    soot: attemptData(soot),
  };
}

/** The result of a job as plain data with units; a `JobResult` itself carries the calculations, which are functions. */
export function jobData(result: JobResult): JobData {
  const { estimateBefore, estimateAfter } = result;
  const reductantEstimate = reductantData(result);
  const { job, before, after, permissionBefore, permissionAfter, cleaning, comparison, reductant, reset } = result;
  return {
    ok: true,
    job,
    state: stateOf(result),
    ...jobEstimate(result),
    ...(reductantEstimate === undefined ? {} : { reductantEstimate }),
    ...(estimateBefore === undefined || estimateAfter === undefined ? {} : { estimateBefore: estimateData(estimateBefore) }),
    before: sideData(before),
    ...(after === undefined ? {} : { after: sideData(after) }),
    permissionBefore: attemptData(permissionBefore),
    ...(permissionAfter === undefined ? {} : { permissionAfter: attemptData(permissionAfter) }),
    ...(cleaning === undefined ? {} : { cleaning: attemptData(cleaning) }),
    ...(comparison === undefined ? {} : { comparison: attemptData(comparison) }),
    reductant: reductant.map(attemptData),
    ...(reset === undefined ? {} : { reset: attemptData(reset) }),
  };
}
