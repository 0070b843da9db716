import { dirname, join, resolve } from 'node:path';
import { present } from '@wallflow/calculation';
import {
  type Attempt,
  type JobIssue,
  type JobResult,
  jobIssueText,
  jobSheet,
  type MeasuredSide,
  runJob,
  sheetAsHtml,
  sheetAsMarkdown,
  sheetAsText,
  succeeded,
} from '@wallflow/workshop';
import { type ExitCode, type Io, json, UsageError } from '../io.js';

interface JobOptions {
  readonly json: boolean;
  readonly out: string | undefined;
}

function attemptData(attempt: Attempt | undefined) {
  if (attempt === undefined) return undefined;
  const { id, version } = attempt.calculation;
  if (!succeeded(attempt)) return { calculation: id, version, ok: false, issues: attempt.issues };
  const { warnings, assumptions, advice } = attempt.result;
  return { calculation: id, version, ok: true, ...present(attempt.calculation, attempt.result), warnings, assumptions, advice };
}

function sideData(side: MeasuredSide | undefined) {
  if (side === undefined) return undefined;
  const { file, leftOut, deciding } = side;
  return {
    file,
    leftOut,
    decidingReading: deciding.state,
    massFlow: attemptData(deciding.massFlow),
    volumeFlow: attemptData(deciding.volumeFlow),
    condition: attemptData(side.condition),
    soot: attemptData(side.soot),
  };
}

/** The result as plain data with units, for a program that keeps records. */
function resultData(result: JobResult) {
  return {
    ok: true,
    job: result.job,
    before: sideData(result.before),
    after: sideData(result.after),
    permissionBefore: attemptData(result.permissionBefore),
    permissionAfter: attemptData(result.permissionAfter),
    cleaning: attemptData(result.cleaning),
    comparison: attemptData(result.comparison),
    reductant: result.reductant.map(attemptData),
  };
}

function refuse(io: Io, issues: readonly JobIssue[], asJson: boolean): ExitCode {
  if (asJson) io.out(json({ ok: false, issues: issues.map((problem) => ({ ...problem, text: jobIssueText(problem) })) }));
  else io.error(`The job is refused:\n${issues.map((problem) => `  ${jobIssueText(problem)}\n`).join('')}`);
  return 1;
}

/** `wallflow job <file>`: a whole job; with `--out` the sheet is also written as text, Markdown and HTML. */
export function job(io: Io, file: string | undefined, options: JobOptions): ExitCode {
  if (file === undefined) throw new UsageError('name the job file, such as examples/demo-job/job.json');
  const text = io.readFile(file);
  if (text === undefined) throw new UsageError(`there is no file ${file}`);
  let raw: unknown;
  try {
    raw = JSON.parse(text);
  } catch (error) {
    return refuse(io, [{ code: 'not_json', where: file, detail: (error as Error).message }], options.json);
  }
  const folder = dirname(resolve(file));
  const outcome = runJob(raw, (name) => io.readFile(join(folder, name)));
  if (!outcome.ok) return refuse(io, outcome.issues, options.json);
  const sheet = jobSheet(outcome.result);
  io.out(options.json ? json(resultData(outcome.result)) : sheetAsText(sheet));
  if (options.out !== undefined) {
    const written = [
      ['job-sheet.html', sheetAsHtml(sheet)],
      ['job-sheet.md', sheetAsMarkdown(sheet)],
      ['job-sheet.txt', sheetAsText(sheet)],
    ] as const;
    for (const [name, content] of written) io.writeFile(join(options.out, name), content);
    if (!options.json) io.out(`\nJob sheet written to ${written.map(([name]) => join(options.out ?? '', name)).join(', ')}\n`);
  }
  return 0;
}
