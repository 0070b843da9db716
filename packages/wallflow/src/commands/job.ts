import { dirname, join, resolve } from 'node:path';
import type { Mapping } from '@wallflow/logs';
import {
  type JobIssue,
  type JobState,
  jobAnnex,
  jobData,
  jobIssueText,
  jobSheet,
  jobState,
  type LogContent,
  type ReadFile,
  runJob,
  sheetAsHtml,
  sheetAsMarkdown,
  sheetAsText,
  UnreadableFile,
} from '@wallflow/workshop';
import { type ExitCode, type Io, json, parseJson, UsageError } from '../io.js';
import { databaseFrom, loadLog } from '../log-content.js';
import { mappingsBeside } from '../mapping-files.js';
import { reasonOf } from '../reason.js';

interface JobOptions {
  readonly json: boolean;
  readonly out: string | undefined;
  readonly can: string | undefined;
}

function refuse(io: Io, issues: readonly JobIssue[], asJson: boolean, state?: JobState): ExitCode {
  const found = issues.map((problem) => ({ ...problem, text: jobIssueText(problem) }));
  if (asJson) io.out(json({ ok: false, issues: found, ...(state === undefined ? {} : { state }) }));
  else io.error(`The job is refused:\n${issues.map((problem) => `  ${jobIssueText(problem)}\n`).join('')}`);
  return 1;
}

function readJob(io: Io, file: string): string {
  let text: string | undefined;
  try {
    text = io.readFile(file);
  } catch (error) {
    throw new UsageError(`${file} cannot be read: ${reasonOf(error)}`);
  }
  if (text === undefined) throw new UsageError(`there is no file ${file}`);
  return text;
}

function write(io: Io, path: string, content: string): void {
  try {
    io.writeFile(path, content);
  } catch (error) {
    throw new UsageError(`${path} cannot be written: ${reasonOf(error)}`);
  }
}

interface LoadedLogs {
  /** By name: what the file holds, or why it is not read. */
  readonly contents: ReadonlyMap<string, LogContent | Error>;
  readonly mappings: readonly Mapping[];
}

/** The logs that a job names, read as what they are: text in any encoding, or signals. */
async function loadLogs(io: Io, folder: string, raw: unknown, mappings: readonly Mapping[], can: string | undefined): Promise<LoadedLogs> {
  const database = await databaseFrom(io, can);
  const { readBytesWithin } = io;
  const logs = typeof raw === 'object' && raw !== null ? (raw as { logs?: unknown }).logs : undefined;
  const named = typeof logs === 'object' && logs !== null ? (logs as Readonly<Record<string, unknown>>) : {};
  const contents = new Map<string, LogContent | Error>();
  const found: Mapping[] = [];
  if (readBytesWithin === undefined) return { contents, mappings: found };
  for (const name of new Set([named.before, named.after])) {
    // Names that lead out of the folder are refused by the job itself, which then asks for none of them.
    if (typeof name !== 'string' || /^[/\\]|^[a-z]:|\0/i.test(name) || name.split(/[/\\]/).includes('..')) continue;
    try {
      const bytes = readBytesWithin(folder, name);
      if (bytes === undefined) continue;
      const loaded = await loadLog(bytes, mappings, database);
      contents.set(name, 'bytes' in loaded ? loaded.bytes : loaded.groups);
      if ('groups' in loaded && loaded.mapping !== undefined) found.push(loaded.mapping);
    } catch (error) {
      contents.set(name, error instanceof UnreadableFile ? error : new UnreadableFile(reasonOf(error)));
    }
  }
  return { contents, mappings: found };
}

/** `wallflow job <file>`: a whole job; with `--out` the sheet is also written as text, Markdown and HTML. */
export async function job(io: Io, file: string | undefined, options: JobOptions): Promise<ExitCode> {
  if (file === undefined) throw new UsageError('name the job file, such as examples/demo-job/job.json');
  const text = readJob(io, file);
  let raw: unknown;
  try {
    raw = parseJson(text);
  } catch (error) {
    return refuse(io, [{ code: 'not_json', where: file, detail: (error as Error).message }], options.json);
  }
  const folder = dirname(resolve(file));
  const mappings = [...mappingsBeside(io, join(folder, 'x'))];
  const { contents, mappings: found } = await loadLogs(io, folder, raw, mappings, options.can);
  const read: ReadFile = (name) => {
    const content = contents.get(name);
    if (content instanceof Error) throw content;
    return content ?? io.readFileWithin(folder, name);
  };
  const outcome = runJob(raw, read, [...found, ...mappings]);
  if (!outcome.ok) return refuse(io, outcome.issues, options.json, jobState(raw, outcome));
  const [sheet, annex] = [jobSheet(outcome.result), jobAnnex(outcome.result)];
  io.out(options.json ? json(jobData(outcome.result)) : sheetAsText(sheet));
  if (options.out !== undefined) {
    const written = [
      ['job-sheet.html', sheetAsHtml(sheet)],
      ['job-sheet.md', sheetAsMarkdown(sheet)],
      ['job-sheet.txt', sheetAsText(sheet)],
      ['job-annex.html', sheetAsHtml(annex)],
      ['job-annex.md', sheetAsMarkdown(annex)],
      ['job-annex.txt', sheetAsText(annex)],
    ] as const;
    for (const [name, content] of written) write(io, join(options.out, name), content);
    if (!options.json) io.out(`\nJob sheet written to ${written.map(([name]) => join(options.out ?? '', name)).join(', ')}\n`);
  }
  return 0;
}
