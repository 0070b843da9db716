import { givenData, type Issue } from '@wallflow/calculation';
import type * as z from 'zod';
import { type Attempt, evaluate, inputsFor, isCalculation, numberOf, si, succeeded, unknownInputs, wordOf } from './evaluation.js';
import { type JobFile, jobFile } from './job-file.js';
import type { JobIssue } from './job-issue.js';
import { type ReadFile, readLogFile } from './log-file.js';
import { dropOf, type MeasuredSide, measureSide } from './measured-side.js';
import { readLog } from './read-log.js';
import { resetOf } from './reset-of.js';
import { steadyReadings } from './steady.js';
import { typedReadings } from './typed-readings.js';

/** Everything a job sheet can say, as data. */
export interface JobResult {
  readonly job: JobFile;
  readonly before: MeasuredSide;
  readonly after?: MeasuredSide;
  readonly permissionBefore: Attempt;
  readonly permissionAfter?: Attempt;
  readonly cleaning?: Attempt;
  readonly comparison?: Attempt;
  readonly reductant: readonly Attempt[];
  readonly reset?: Attempt;
}

/** The result of a job, or what is to be mended in its files. */
export type JobOutcome = { readonly ok: true; readonly result: JobResult } | { readonly ok: false; readonly issues: readonly JobIssue[] };

function structureIssues(raw: unknown, error: z.ZodError): JobIssue[] {
  return error.issues.map((found): JobIssue => {
    const path = found.path.map((part) => (typeof part === 'symbol' ? String(part) : part));
    const value = path.reduce<unknown>(
      (at, key) => (typeof at === 'object' && at !== null ? (at as Record<string | number, unknown>)[key] : undefined),
      raw,
    );
    const issue: Issue =
      found.code === 'unrecognized_keys'
        ? { code: 'unknown_input', path: [...path, found.keys[0] ?? ''], given: undefined, candidates: [] }
        : value === undefined
          ? { code: 'missing_input', path }
          : { code: 'wrong_type', path, given: givenData(value), expected: found.message };
    return { code: 'input', where: 'job file', issue };
  });
}

const readers = {
  engine: ['exhaust-mass-flow'],
  filter: ['filter-condition', 'soot-mass-from-pressure-drop', 'regeneration-permission', 'cleaning-volumes'],
} as const;

function strayInputs(job: JobFile): JobIssue[] {
  return Object.entries(readers).flatMap(([section, ids]) =>
    unknownInputs(job[section as keyof typeof readers], ids).map((key): JobIssue => {
      const issue: Issue = {
        code: 'unknown_input',
        path: [key],
        given: givenData(job[section as keyof typeof readers][key]),
        candidates: [],
      };
      return { code: 'input', where: section, issue };
    }),
  );
}

/** Least uncertainty of a soot load by pressure drop, g/L: what goes into the wall first is not in the range of the estimate. */
const leastSootUncertainty = 1;

/** Soot load for the permission, with the whole way up to the most that the drop allows as its uncertainty. */
function sootLoadOf({ soot }: MeasuredSide): Readonly<Record<string, unknown>> {
  if (!succeeded(soot)) return {};
  const { mostSootLoad } = soot.result.outputs as Readonly<Record<string, unknown>>;
  // Without an upper end nothing is known that a permission could rest on.
  if (typeof mostSootLoad !== 'number') return {};
  const load = numberOf(soot, 'sootLoad');
  return { sootLoad: si(load, 'kg/m3'), sootLoadUncertainty: si(Math.max(leastSootUncertainty, mostSootLoad - load), 'kg/m3') };
}

function permissionOf(side: MeasuredSide, known: Readonly<Record<string, unknown>>, job: JobFile): Attempt {
  const coolant = side.deciding.steady.mean.coolantTemperature;
  return evaluate('regeneration-permission', {
    ...inputsFor('regeneration-permission', job.filter),
    ...sootLoadOf(side),
    ...(side.zero?.mean.pressureDrop === undefined ? {} : { pressureSensorZero: si(side.zero.mean.pressureDrop, 'Pa') }),
    ...(coolant === undefined ? {} : { coolantTemperature: si(coolant, 'K') }),
    ...known,
  });
}

/** Conditions that say that the readings themselves are wrong; nothing can be proven with them. */
const wrongReadings = new Set(['zero-fault', 'contradiction']);

function comparisonOf(before: MeasuredSide, after: MeasuredSide, job: JobFile): Attempt {
  const side = (measured: MeasuredSide) => ({
    drop: si(dropOf(measured.deciding, measured.zero), 'Pa'),
    flow: si(numberOf(measured.deciding.volumeFlow, 'exhaustVolumeFlow'), 'm3/s'),
    temperature: si(measured.deciding.steady.mean.gasTemperature ?? 0, 'K'),
  });
  const [first, second] = [side(before), side(after)];
  const input = {
    dropBefore: first.drop,
    flowBefore: first.flow,
    temperatureBefore: first.temperature,
    dropAfter: second.drop,
    flowAfter: second.flow,
    temperatureAfter: second.temperature,
    // The clean filter at the later flow and temperature, as the condition after the work was judged against it.
    cleanDrop: si(numberOf(after.condition, 'cleanDrop'), 'Pa'),
    cleanFrom: 'calculated',
    ...(job.sensor?.zeroUncertainty === undefined ? {} : { dropUncertainty: job.sensor.zeroUncertainty }),
    ...(job.sensor?.flowUncertainty === undefined ? {} : { flowUncertainty: job.sensor.flowUncertainty }),
  };
  const wrong = [before, after].find((measured) => wrongReadings.has(wordOf(measured.condition, 'verdict')));
  const compared = evaluate('before-after', input);
  if (wrong === undefined) return compared;
  const issue: Issue = { code: 'no_solution', path: [], reason: `the readings of ${wrong.file} cannot be trusted` };
  return { calculation: compared.calculation, input, issues: [issue] };
}

function readSide(side: 'before' | 'after', job: JobFile, readFile: ReadFile): ReturnType<typeof measureSide> | undefined {
  const name = job.logs?.[side];
  const typed = job.readings?.[side];
  const where = `readings.${side}`;
  if (name !== undefined && typed !== undefined) {
    const reason = 'give the log or the readings of one side, not both';
    const issue: Issue = { code: 'inconsistent_inputs', path: ['readings', side], paths: [['logs', side]], reason };
    return { ok: false, issues: [{ code: 'input', where: 'job file', issue }] };
  }
  if (typed !== undefined) {
    const readings = typedReadings(typed, where);
    return readings.ok ? measureSide(where, readings.steady, job) : readings;
  }
  if (name === undefined) return undefined;
  const file = readLogFile(name, readFile);
  if (!file.ok) return file;
  const log = readLog(file.text, name);
  return log.ok ? measureSide(name, steadyReadings(log.log.rows), job) : log;
}

/** Issues of sections that a user wrote by hand: those are mistakes to mend, not missing results. */
function sectionIssues(where: string, attempt: Attempt | undefined): JobIssue[] {
  if (attempt === undefined || succeeded(attempt)) return [];
  return attempt.issues.filter((issue) => issue.code !== 'no_solution').map((issue) => ({ code: 'input', where, issue }));
}

/** Run a whole job from its parsed JSON. Never throws on data. */
export function runJob(raw: unknown, readFile: ReadFile): JobOutcome {
  const parsed = jobFile.safeParse(raw);
  if (!parsed.success) return { ok: false, issues: structureIssues(raw, parsed.error) };
  const job = parsed.data;
  const stray = strayInputs(job);
  if (stray.length > 0) return { ok: false, issues: stray };
  const before = readSide('before', job, readFile);
  const after = readSide('after', job, readFile);
  if (before === undefined) {
    const issue: Issue = { code: 'missing_input', path: ['readings', 'before'], example: 'logs.before, the name of a log' };
    return { ok: false, issues: [{ code: 'input', where: 'job file', issue }] };
  }
  if (!before.ok || after?.ok === false) {
    return { ok: false, issues: [...(before.ok ? [] : before.issues), ...(after?.ok === false ? after.issues : [])] };
  }
  const permissionBefore = permissionOf(before.side, job.permission.before, job);
  const permissionAfter = after === undefined ? undefined : permissionOf(after.side, job.permission.after ?? {}, job);
  const cleaning =
    job.cleaning === undefined
      ? undefined
      : evaluate('cleaning-volumes', { ...inputsFor('cleaning-volumes', job.filter), ...job.cleaning });
  const comparison = after === undefined ? undefined : comparisonOf(before.side, after.side, job);
  const reset = resetOf(job.reset, comparison);
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
  if (issues.length > 0) return { ok: false, issues };
  return {
    ok: true,
    result: {
      job,
      before: before.side,
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
