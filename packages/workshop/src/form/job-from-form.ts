import { jobSections } from '../job/description.js';
import { type JobSection, putAt } from '../job/section.js';

/** What the form holds: for every section its record or its rows, with the inputs that were filled in. */
export type FormInput = Readonly<Record<string, unknown>>;

type Row = Readonly<Record<string, unknown>>;

function rowsOf(input: FormInput, key: string): readonly Row[] {
  const rows = input[key];
  return Array.isArray(rows) ? (rows as readonly Row[]) : [];
}

function recordOf(input: FormInput, key: string): Row {
  const record = input[key];
  return typeof record === 'object' && record !== null && !Array.isArray(record) ? (record as Row) : {};
}

function isNone(line: unknown): boolean {
  return typeof line === 'string' && /^\s*(none|no codes)\s*[.]?\s*$/i.test(line);
}

/** Logs that take the place of typed readings. */
export interface FormLogs {
  readonly before?: string;
  readonly after?: string;
}

function put(
  job: Record<string, unknown>,
  { as, key, place, places, always, noneIsFinding }: JobSection,
  input: FormInput,
  logs: FormLogs,
) {
  const found = rowsOf(input, key);
  const row = recordOf(input, key);
  switch (as) {
    case 'head':
      for (const [name, at] of Object.entries(places)) if (row[name] !== undefined) putAt(job, at, row[name]);
      return;
    case 'record':
      if (always || Object.keys(row).length > 0) putAt(job, place, { ...row });
      return;
    case 'lines': {
      const texts = found.flatMap(({ line }) => (line === undefined ? [] : [line]));
      // That there were none is a finding, and has to be said: a list that was left empty was not read.
      const none = noneIsFinding && texts.length === 1 && isNone(texts[0]);
      if (texts.length > 0) putAt(job, place, none ? [] : texts);
      return;
    }
    case 'rows': {
      const filled = found.filter((one) => Object.keys(one).length > 0);
      const log = place[0] === 'readings' ? logs[place[1] as keyof FormLogs] : undefined;
      if (log !== undefined) putAt(job, ['logs', place[1] ?? ''], log);
      else if (filled.length > 0) putAt(job, place, filled);
    }
  }
}

/** The job file of what was typed in; `logs` names a log for a side that has one, whose typed readings then do not count. */
export function jobFromForm(input: FormInput, logs: FormLogs = {}): Record<string, unknown> {
  const job: Record<string, unknown> = { format: 'wallflow-job/2', vehicle: {} };
  // Groups first: a list inside a group joins what the group holds.
  for (const section of jobSections) if (section.as !== 'rows') put(job, section, input, logs);
  for (const section of jobSections) if (section.as === 'rows') put(job, section, input, logs);
  if (job.title === undefined) {
    const { description } = job.vehicle as { readonly description?: unknown };
    job.title = typeof description === 'string' ? `Job sheet: ${description}`.slice(0, 200) : 'Job sheet';
  }
  const measuredAfter = logs.after !== undefined || rowsOf(input, 'readingsAfter').length > 0;
  if (!measuredAfter) delete (job.permission as Record<string, unknown>).after;
  return job;
}
