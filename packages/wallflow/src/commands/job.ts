import { dirname, join, resolve } from 'node:path';
import {
  type JobIssue,
  type JobState,
  jobAnnex,
  jobData,
  jobIssueText,
  jobSheet,
  jobState,
  runJob,
  sheetAsHtml,
  sheetAsMarkdown,
  sheetAsText,
} from '@wallflow/workshop';
import { type ExitCode, type Io, json, parseJson, UsageError } from '../io.js';
import { reasonOf } from '../reason.js';

interface JobOptions {
  readonly json: boolean;
  readonly out: string | undefined;
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

/** `wallflow job <file>`: a whole job; with `--out` the sheet is also written as text, Markdown and HTML. */
export function job(io: Io, file: string | undefined, options: JobOptions): ExitCode {
  if (file === undefined) throw new UsageError('name the job file, such as examples/demo-job/job.json');
  const text = readJob(io, file);
  let raw: unknown;
  try {
    raw = parseJson(text);
  } catch (error) {
    return refuse(io, [{ code: 'not_json', where: file, detail: (error as Error).message }], options.json);
  }
  const folder = dirname(resolve(file));
  const outcome = runJob(raw, (name) => io.readFileWithin(folder, name));
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
