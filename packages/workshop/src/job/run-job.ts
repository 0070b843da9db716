import { givenData, type Issue } from '@wallflow/calculation';
import { checkMapping, type Mapping } from '@wallflow/logs';
import type { FilterEstimate } from '../estimate/index.js';
import { comparisonOf } from './comparison.js';
import { jobSections } from './description.js';
import { estimateOf } from './estimate-of.js';
import { type Attempt, evaluate, inputsFor, isCalculation, succeeded, unknownInputs } from './evaluation.js';
import type { JobFile } from './job-file.js';
import type { JobIssue } from './job-issue.js';
import { bounded, checkJobFile } from './job-issues.js';
import { type ReadFile, readLogFile } from './log-file.js';
import { type MeasuredSide, measureSide } from './measured-side.js';
import { permissionOf } from './permission-of.js';
import { readJobLog } from './read-log.js';
import { resetOf } from './reset-of.js';
import { valueAt } from './section.js';
import { typedReadings } from './typed-readings.js';
import { assumedCharge, type TypicalValue, withTypical } from './typical.js';

/** Everything a job sheet can say, as data. */
export interface JobResult {
  readonly job: JobFile;
  /** What was taken as typical because it was not entered. */
  readonly assumed: readonly TypicalValue[];
  readonly before: MeasuredSide;
  readonly after?: MeasuredSide;
  /** From everything that was read on each side; absent where neither displacement nor filter volume is known. */
  readonly estimateBefore?: FilterEstimate;
  readonly estimateAfter?: FilterEstimate;
  readonly permissionBefore: Attempt;
  readonly permissionAfter?: Attempt;
  readonly cleaning?: Attempt;
  readonly comparison?: Attempt;
  readonly reductant: readonly Attempt[];
  readonly reset?: Attempt;
}

/** The result of a job, or what is to be mended in its files. */
export type JobOutcome = { readonly ok: true; readonly result: JobResult } | { readonly ok: false; readonly issues: readonly JobIssue[] };

/** Names in a section that none of the calculations which read it knows. */
function strayInputs(job: JobFile): JobIssue[] {
  return [job.engine, job.filter].flatMap((given) => {
    const section = jobSections.find(({ place }) => valueAt(job, place) === given);
    if (section === undefined) return [];
    const record = given as Readonly<Record<string, unknown>>;
    return unknownInputs(record, section.readBy).map((key): JobIssue => {
      const issue: Issue = { code: 'unknown_input', path: [key], given: givenData(record[key]), candidates: [] };
      return { code: 'input', where: section.place.join('.'), issue };
    });
  });
}

const materials: Readonly<Record<string, string>> = {
  'silicon-carbide': 'silicon carbide',
  cordierite: 'cordierite',
  unknown: 'not known',
};

/** The material of the filter is one: what the sections say of it must agree. */
function substrateIssues(job: JobFile): JobIssue[] {
  const given = [job.filter.substrate, job.permission.before.substrate, job.permission.after?.substrate].filter((one) => one !== undefined);
  const different = [...new Set(given)];
  if (different.length < 2) return [];
  const words = different.map((one) => (typeof one === 'string' ? materials[one] : undefined) ?? 'something else').join(' and ');
  const reason = `the filter material is entered more than once, and not alike: ${words}. Keep the one that is right`;
  return [{ code: 'input', where: 'filter', issue: { code: 'inconsistent_inputs', path: ['substrate'], paths: [['substrate']], reason } }];
}

/** The job with the ash that the work has left in the filter, where it was weighed or a new filter was fitted. */
function withAshLeft(job: JobFile): JobFile {
  const { filterWork, ashBasis, residualAsh } = job.reset ?? {};
  const weighed = ashBasis === 'weighed' && residualAsh !== undefined && (filterWork === 'off-vehicle' || filterWork === 'exchange');
  const left = filterWork === 'new' ? '0 g' : weighed ? residualAsh : undefined;
  if (left === undefined) return job;
  const { ashPlugShare: _, ...filter } = job.filter;
  return { ...job, filter: { ...filter, ashMass: left } };
}

/** The answers that the job file keeps for its logs. */
function mappingsOf(
  job: JobFile,
): { readonly ok: true; readonly mappings: readonly Mapping[] } | { readonly ok: false; readonly issues: JobIssue[] } {
  const checked = (job.logs?.mappings ?? []).map(checkMapping);
  const mappings = checked.flatMap((one) => (one.ok ? [one.mapping] : []));
  if (mappings.length === checked.length) return { ok: true, mappings };
  const wrong = checked.find((one) => !one.ok);
  const detail = `the answers kept for its columns cannot be used: ${wrong?.ok === false ? wrong.problem.detail : ''}`;
  return { ok: false, issues: [{ code: 'log_unreadable', where: 'job file', detail }] };
}

function readSide(
  side: 'before' | 'after',
  job: JobFile,
  readFile: ReadFile,
  given: readonly Mapping[],
): ReturnType<typeof measureSide> | undefined {
  const name = job.logs?.[side];
  const typed = job.readings?.[side];
  const where = `readings.${side}`;
  if (name !== undefined && typed !== undefined) {
    const reason = 'enter either the log or the readings of one side, not both';
    const issue: Issue = { code: 'inconsistent_inputs', path: ['readings', side], paths: [['readings', side]], reason };
    return { ok: false, issues: [{ code: 'input', where: 'job file', issue }] };
  }
  if (typed !== undefined) {
    const readings = typedReadings(typed, where);
    return readings.ok ? measureSide({ file: where, steady: readings.steady }, job) : readings;
  }
  if (name === undefined) return undefined;
  const file = readLogFile(name, side, readFile);
  if (!file.ok) return file;
  const mappings = mappingsOf(job);
  if (!mappings.ok) return mappings;
  const log = readJobLog(file.content, name, [...mappings.mappings, ...given]);
  return log.ok ? measureSide({ file: name, ...log.log }, job) : log;
}

/** Issues of sections that a user wrote by hand: those are mistakes to mend, not missing results. */
function sectionIssues(where: string, attempt: Attempt | undefined): JobIssue[] {
  if (attempt === undefined || succeeded(attempt)) return [];
  return attempt.issues.filter((issue) => issue.code !== 'no_solution').map((issue) => ({ code: 'input', where, issue }));
}

/**
 * Run a whole job from its parsed JSON. Never throws on data. `mappings` are answers on the columns of logs, besides those that the job
 * file keeps; the one that was made for a log's titles is used.
 */
export function runJob(raw: unknown, readFile: ReadFile, mappings: readonly Mapping[] = []): JobOutcome {
  const checked = checkJobFile(raw);
  if (!checked.ok) return checked;
  const { job } = checked;
  const stray = [...strayInputs(job), ...substrateIssues(job)];
  if (stray.length > 0) return { ok: false, issues: bounded(stray) };
  const { job: filled, assumed } = withTypical(job);
  const before = readSide('before', filled, readFile, mappings);
  const after = readSide('after', withAshLeft(filled), readFile, mappings);
  if (before === undefined) {
    const issue: Issue = {
      code: 'missing_input',
      path: ['readings', 'before'],
      example: 'a row with the engine off, one at idle, one at raised speed, or a log',
    };
    return { ok: false, issues: [{ code: 'input', where: 'job file', issue }] };
  }
  if (!before.ok || after?.ok === false) {
    return { ok: false, issues: bounded([...(before.ok ? [] : before.issues), ...(after?.ok === false ? after.issues : [])]) };
  }
  const withoutAir = [before.side, ...(after === undefined ? [] : [after.side])].some(({ readings }) =>
    readings.some(({ steady }) => steady.mean.airMassFlow === undefined),
  );
  const estimateBefore = estimateOf(before.side, job, false);
  const estimateAfter = after === undefined ? undefined : estimateOf(after.side, withAshLeft(job), true);
  const permissionBefore = permissionOf(before.side, job.permission.before, job, estimateBefore);
  const permissionAfter = after === undefined ? undefined : permissionOf(after.side, job.permission.after ?? {}, job, estimateAfter);
  const cleaning =
    job.cleaning === undefined
      ? undefined
      : evaluate('cleaning-volumes', { ...inputsFor('cleaning-volumes', filled.filter), ...job.cleaning });
  const comparison = after === undefined ? undefined : comparisonOf(before.side, after.side, job);
  const reset = resetOf(job.reset, comparison, estimateAfter);
  const reductant = Object.entries(job.reductant ?? {}).map(
    ([id, input]) => [id, isCalculation(id) ? evaluate(id, input) : undefined] as const,
  );
  const issues = [
    ...sectionIssues('permission.before', permissionBefore),
    ...sectionIssues('permission.after', permissionAfter),
    ...sectionIssues('cleaning', cleaning),
    ...sectionIssues('logs', comparison),
    ...sectionIssues('reset', reset),
    ...reductant.flatMap(([id, attempt]) =>
      attempt === undefined
        ? [{ code: 'input' as const, where: 'reductant', issue: { code: 'unknown_input' as const, path: [id], given: id, candidates: [] } }]
        : sectionIssues(`reductant.${id}`, attempt),
    ),
  ];
  if (issues.length > 0) return { ok: false, issues: bounded(issues) };
  return {
    ok: true,
    result: {
      job,
      assumed: [...assumed, ...assumedCharge(job, withoutAir)],
      before: before.side,
      ...(estimateBefore === undefined ? {} : { estimateBefore }),
      ...(estimateAfter === undefined ? {} : { estimateAfter }),
      permissionBefore,
      ...(after === undefined ? {} : { after: after.side }),
      ...(permissionAfter === undefined ? {} : { permissionAfter }),
      ...(cleaning === undefined ? {} : { cleaning }),
      ...(comparison === undefined ? {} : { comparison }),
      ...(reset === undefined ? {} : { reset }),
      reductant: reductant.flatMap(([, attempt]) => (attempt === undefined ? [] : [attempt])),
    },
  };
}
