import { type JobIssue, jobAnnex, jobFromForm, jobIssueText, jobSheet, placeInForm, runJob, sheetAsHtml } from '@wallflow/workshop';
import { issueView } from '../calculator/result-view.js';
import type { FieldData, IssueView } from '../data/types.js';
import { nameOfAfter } from './log-names.js';
import type { Logs, SheetView } from './messages.js';

function view(problem: JobIssue, fields: readonly FieldData[]): IssueView {
  const place = placeInForm(problem);
  if (place === undefined || problem.code !== 'input') return { code: problem.code, fields: [], text: jobIssueText(problem), offers: [] };
  return issueView({ ...problem.issue, path: place, ...(problem.issue.code === 'inconsistent_inputs' ? { paths: [place] } : {}) }, fields);
}

/**
 * The names under which the job finds its logs. Many tools export under one name for ever: then the log of after gets
 * another, since a job file tells its logs apart by their names alone.
 */
function logNames({ before, after }: Logs): { before?: string; after?: string } {
  const same = before !== undefined && before.name === after?.name;
  return {
    ...(before === undefined ? {} : { before: before.name }),
    ...(after === undefined ? {} : { after: same ? nameOfAfter(after.name) : after.name }),
  };
}

/** The job file keeps the answers on its logs, so that it reads alike on another device. */
function withMappings(job: Record<string, unknown>, { before, after }: Logs): Record<string, unknown> {
  const mappings = [before?.mapping, after?.mapping].filter((mapping) => mapping !== undefined);
  return mappings.length === 0 ? job : { ...job, logs: { ...(job.logs as object | undefined), mappings } };
}

/** The sheet for what stands in the form, or what is missing or wrong. */
export function makeSheet(fields: readonly FieldData[], input: Readonly<Record<string, unknown>>, logs: Logs): SheetView {
  const job = withMappings(jobFromForm(input, logNames(logs)), logs);
  const outcome = runJob(job, (_, side) => logs[side]?.text);
  if (!outcome.ok) return { ok: false, issues: outcome.issues.map((problem) => view(problem, fields)) };
  const sheet = jobSheet(outcome.result);
  return {
    ok: true,
    sheet: {
      title: sheet.title,
      html: sheetAsHtml(sheet),
      annex: sheetAsHtml(jobAnnex(outcome.result)),
      job: `${JSON.stringify(job, undefined, 2)}\n`,
    },
  };
}
