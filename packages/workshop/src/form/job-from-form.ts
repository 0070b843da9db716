/** What the form holds: for every section its rows, each with the inputs that were filled in. */
export type FormInput = Readonly<Record<string, unknown>>;

type Row = Readonly<Record<string, unknown>>;

/** Where a section with one row stands in the job file. */
export const singleSections: Readonly<Record<string, readonly string[]>> = {
  ambient: ['ambient'],
  engine: ['engine'],
  filter: ['filter'],
  sensor: ['sensor'],
  permissionBefore: ['permission', 'before'],
  permissionAfter: ['permission', 'after'],
  cleaning: ['cleaning'],
  reductant: ['reductant', 'reductant-concentration'],
  dosing: ['reductant', 'dosing-test'],
  reset: ['reset'],
};

/** Where a section of readings, or of lines of text, stands in the job file. */
export const readingSections: Readonly<Record<string, readonly string[]>> = {
  readingsBefore: ['readings', 'before'],
  readingsAfter: ['readings', 'after'],
};
/** Where a section with rows of a calculation's own list stands in the job file. */
export const rowSections: Readonly<Record<string, readonly string[]>> = { dosingRuns: ['reductant', 'dosing-test', 'runs'] };
export const lineSections: Readonly<Record<string, readonly string[]>> = {
  history: ['history'],
  codesBefore: ['faultCodes', 'before'],
  codesAfter: ['faultCodes', 'after'],
  resets: ['resets'],
  advice: ['advice'],
};

/** Lists that may say that there was nothing. */
export const codeSections: ReadonlySet<string> = new Set(['codesBefore', 'codesAfter']);

function isNone(line: unknown): boolean {
  return typeof line === 'string' && /^\s*(none|no codes)\s*[.]?\s*$/i.test(line);
}

/** Sections that every job has, even with nothing in them. */
const always = new Set(['ambient', 'engine', 'filter', 'permissionBefore']);

export function rowsOf(input: FormInput, key: string): readonly Row[] {
  const rows = input[key];
  return Array.isArray(rows) ? (rows as readonly Row[]) : [];
}

function filledRows(input: FormInput, key: string): readonly Row[] {
  return rowsOf(input, key).filter((row) => Object.keys(row).length > 0);
}

/** Put a value at a path of a nested record. */
function put(job: Record<string, unknown>, path: readonly string[], value: unknown): void {
  const [key = '', ...rest] = path;
  if (rest.length === 0) job[key] = value;
  else {
    const inner = (job[key] ?? {}) as Record<string, unknown>;
    job[key] = inner;
    put(inner, rest, value);
  }
}

/** Logs that take the place of typed readings. */
export interface FormLogs {
  readonly before?: string;
  readonly after?: string;
}

/** The job file of what was typed in; `logs` names a log for a side that has one, whose typed readings then do not count. */
export function jobFromForm(input: FormInput, logs: FormLogs = {}): Record<string, unknown> {
  const [about = {}] = rowsOf(input, 'about');
  const [closing = {}] = rowsOf(input, 'closing');
  const { title, vehicle, odometer, ...head } = about;
  const made = typeof vehicle === 'string' ? `Job sheet: ${vehicle}`.slice(0, 200) : 'Job sheet';
  const job: Record<string, unknown> = {
    format: 'wallflow-job/1',
    title: title ?? made,
    ...head,
    vehicle: { ...(vehicle === undefined ? {} : { description: vehicle }), ...(odometer === undefined ? {} : { odometer }) },
    ...closing,
  };
  for (const [key, path] of Object.entries(singleSections)) {
    const [row = {}] = rowsOf(input, key);
    if (always.has(key) || Object.keys(row).length > 0) put(job, path, row);
  }
  for (const [key, path] of Object.entries(rowSections)) {
    const rows = filledRows(input, key);
    if (rows.length > 0) put(job, path, rows);
  }
  const measuredAfter = logs.after !== undefined || rowsOf(input, 'readingsAfter').length > 0;
  for (const [key, path] of Object.entries(lineSections)) {
    const texts = rowsOf(input, key).flatMap(({ line }) => (line === undefined ? [] : [line]));
    // That there were none is a finding, and has to be said: a list that was left empty was not read.
    const none = codeSections.has(key) && texts.length === 1 && isNone(texts[0]);
    if (texts.length > 0) put(job, path, none ? [] : texts);
  }
  for (const [key, path] of Object.entries(readingSections)) {
    const rows = filledRows(input, key);
    const log = logs[path[1] as keyof FormLogs];
    if (log !== undefined) put(job, ['logs', path[1] ?? ''], log);
    else if (rows.length > 0) put(job, path, rows);
  }
  if (!measuredAfter) delete (job.permission as Record<string, unknown>).after;
  return job;
}
