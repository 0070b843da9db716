import { checkInputs, givenData, type Issue, type Path, quantity } from '@wallflow/calculation';
import { absolutePressure, length, temperature } from '@wallflow/units';
import * as z from 'zod/mini';
import { jobSections } from './description.js';
import { type JobFile, jobFile } from './job-file.js';
import type { JobIssue } from './job-issue.js';
import { type Place, putAt, valueAt } from './section.js';
import { upToDate } from './version-1.js';

/** Issues that are listed one by one; what a file gets wrong a hundred thousand times is told once. */
const listed = 20;

/** Each issue once, and not more than a person reads. */
export function bounded(issues: readonly JobIssue[]): readonly JobIssue[] {
  const each = new Map(issues.map((issue) => [JSON.stringify(issue), issue]));
  const all = [...each.values()];
  const more: JobIssue = { code: 'more', where: 'job file', count: all.length - listed };
  return all.length <= listed ? all : [...all.slice(0, listed), more];
}

/** Values of the head that no calculation checks. */
const headFields = {
  odometer: quantity(length, { symbol: 's', label: 'Odometer', range: '0 <= x <= 5000000 km', example: '146300 km', units: ['km', 'mi'] }),
  pressure: quantity(absolutePressure, {
    symbol: 'p_a',
    label: 'Ambient pressure',
    range: '50 <= x <= 110 kPa',
    example: '986 hPa',
    units: ['hPa', 'kPa', 'mbar'],
  }),
  temperature: quantity(temperature, { symbol: 'T_a', label: 'Ambient temperature', range: '-50 <= x <= 60 °C', example: '14 °C' }),
};

function headIssues(job: JobFile): JobIssue[] {
  const given: [keyof typeof headFields, unknown, Path][] = [
    ['odometer', job.vehicle.odometer, ['vehicle', 'odometer']],
    ['pressure', job.ambient.pressure, ['ambient', 'pressure']],
    ['temperature', job.ambient.temperature, ['ambient', 'temperature']],
  ];
  return given.flatMap(([key, value, path]) => {
    if (value === undefined) return [];
    const checked = checkInputs(z.strictObject({ [key]: headFields[key] }), { [key]: value });
    return checked.ok ? [] : checked.issues.map((issue): JobIssue => ({ code: 'input', where: 'job file', issue: { ...issue, path } }));
  });
}

/** A date written another way, as the file wants it; undefined where day and month could be mixed up. */
function asDate(text: unknown): string {
  const match = typeof text === 'string' ? /^(\d{1,2})\.(\d{1,2})\.(\d{4})$/.exec(text.trim()) : null;
  if (match === null) return 'a date; write year, month and day, such as 2026-03-12';
  const [, day = '', month = '', year = ''] = match;
  return `a date as the job needs it; write ${year}-${month.padStart(2, '0')}-${day.padStart(2, '0')}`;
}

const expectations: Readonly<Record<string, string>> = {
  string: 'text',
  object: 'a group of entries',
  array: 'a list',
  record: 'a group of entries',
  number: 'a number',
  boolean: 'yes or no',
};

function expected(found: z.core.$ZodIssue, value: unknown): string {
  switch (found.code) {
    case 'invalid_type':
      return expectations[found.expected] ?? 'what belongs here';
    case 'too_big':
      return found.origin === 'array' ? `a list of at most ${found.maximum}` : `text of at most ${found.maximum} signs`;
    case 'invalid_format':
      return asDate(value);
    case 'invalid_value':
      return `what belongs here; write ${found.values.map((allowed) => `"${String(allowed)}"`).join(' or ')}`;
    default:
      return 'what belongs here';
  }
}

function own(at: unknown, key: PropertyKey): unknown {
  return typeof at === 'object' && at !== null && Object.hasOwn(at, key) ? (at as Record<PropertyKey, unknown>)[key] : undefined;
}

function structureIssue(raw: unknown, found: z.core.$ZodIssue): Issue[] {
  const path = found.path.map((part) => (typeof part === 'symbol' ? String(part) : part));
  if (found.code === 'unrecognized_keys')
    return found.keys.map(
      (key): Issue => ({ code: 'unknown_input', path: [...path, key.slice(0, 200)], given: undefined, candidates: [] }),
    );
  const value = path.reduce<unknown>(own, raw);
  if (value === undefined) return [{ code: 'missing_input', path }];
  return [{ code: 'wrong_type', path, given: givenData(value), expected: expected(found, value) }];
}

/** A job with the sections in it that every job has. */
function withAlways(given: Readonly<Record<string, unknown>>): JobFile {
  const job = structuredClone(given) as Record<string, unknown>;
  for (const { always, place } of jobSections) if (always && valueAt(job, place) === undefined) putAt(job, place, {});
  return job as unknown as JobFile;
}

/** Sections that no calculation reads are checked here, by their own fields. */
function sectionIssues(job: JobFile): JobIssue[] {
  return jobSections.flatMap(({ as, key, place, fields, readBy }) => {
    const value = valueAt(job, place);
    const checkedElsewhere = readBy.length > 0 || place[0] === 'readings' || place[0] === 'reductant' || place[0] === 'ambient';
    if (value === undefined || checkedElsewhere || (as !== 'record' && as !== 'rows')) return [];
    const where = place.join('.');
    const own = as === 'record' ? withoutLists(value, place) : value;
    const schema = as === 'record' ? fields : z.strictObject({ [key]: jobRows(key) });
    const checked = checkInputs(schema as z.ZodMiniObject, as === 'record' ? own : { [key]: value });
    const at = (path: Path) => (as === 'record' ? path : path.slice(1));
    return checked.ok ? [] : checked.issues.map((issue): JobIssue => ({ code: 'input', where, issue: { ...issue, path: at(issue.path) } }));
  });
}

const jobRows = (key: string) => jobSections.find((section) => section.key === key)?.form ?? z.never();

/** The entries of a group without the lists in it that are sections of their own. */
function withoutLists(value: unknown, place: Place): unknown {
  const lists = new Set<string | undefined>(
    jobSections.flatMap((one) => (one.as === 'rows' && one.place.slice(0, -1).join('.') === place.join('.') ? [one.place.at(-1)] : [])),
  );
  return Object.fromEntries(Object.entries(value as object).filter(([key]) => !lists.has(key)));
}

type Checked = { readonly ok: true; readonly job: JobFile } | { readonly ok: false; readonly issues: readonly JobIssue[] };

/** The structure of a job file, and what no calculation checks; what is wrong in words of ours, not of a library. */
export function checkJobFile(raw: unknown): Checked {
  const current = upToDate(raw);
  const parsed = jobFile.safeParse(current);
  if (!parsed.success) {
    const issues = parsed.error.issues.flatMap((found) =>
      structureIssue(current, found).map((issue): JobIssue => ({ code: 'input', where: 'job file', issue })),
    );
    return { ok: false, issues: bounded(issues) };
  }
  const job = withAlways(parsed.data as Record<string, unknown>);
  const issues = [...headIssues(job), ...sectionIssues(job)];
  return issues.length > 0 ? { ok: false, issues: bounded(issues) } : { ok: true, job };
}
