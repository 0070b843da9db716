import { fieldOf, type Issue, issueText, itemSchema, type Path, shapeOf } from '@wallflow/calculation';
import type * as z from 'zod/mini';
import { jobForm } from '../form/fields.js';
import { placeInForm } from '../form/issue-place.js';
import { channels } from './channels.js';
import { jobSections } from './description.js';
import type { JobIssue } from './job-issue.js';

/** Parts of a job that are no section of its description, as a person calls them. */
const otherParts: Readonly<Record<string, string>> = {
  'job file': 'Job file',
  reductant: 'Reductant',
  logs: 'Comparison of before and after',
};

/** What a person calls the part of a job at a place. */
function partAt(where: string): string | undefined {
  return otherParts[where] ?? jobSections.find(({ place }) => place.length > 0 && place.join('.') === where)?.title;
}

function sideOf(where: string): string | undefined {
  return where.startsWith('readings.') ? partAt(where) : undefined;
}

/** Labels on the way to a place in the form: section, row of a list, field. */
function labelsAt(schema: z.core.$ZodObject, [key, ...rest]: Path): readonly string[] {
  const child = shapeOf(schema).find(([name]) => name === key)?.[1];
  const field = child === undefined ? undefined : fieldOf(child);
  if (child === undefined || field === undefined) return [];
  const item = itemSchema(child);
  if (item === undefined) return [field.label];
  const label = jobSections.find((section) => section.key === key)?.title ?? field.label;
  if (field.type === 'group') return [label, ...labelsAt(item, rest)];
  const [row, ...inner] = rest;
  const rowLabel = typeof row !== 'number' ? [] : [`row ${row + 1}`];
  return [label, ...rowLabel, ...labelsAt(item, inner)];
}

/** A name that somebody wrote where none is known: it is quoted, so that it can be found in the file. */
function quoted(path: Path): string {
  const name = path.at(-1);
  return name === undefined ? 'an entry' : `"${String(name).slice(0, 60)}"`;
}

/** One sentence about an input, by the labels of the form in place of names in the file. */
function inputText(problem: Extract<JobIssue, { code: 'input' }>): string {
  const { where, issue } = problem;
  const place = placeInForm(problem);
  const labels = place === undefined ? [] : labelsAt(jobForm, place);
  const part = labels[0] ?? partAt(where) ?? partAt(where.split('.')[0] ?? '') ?? 'Job file';
  if (issue.code === 'unknown_input') {
    const meant = issue.candidates.length === 0 ? '' : ` Did you mean ${issue.candidates.map((name) => `"${name}"`).join(' or ')}?`;
    return `${part}: ${quoted(issue.path)} is not known here.${meant}`;
  }
  const name = labels.slice(1).join(', ');
  if (issue.code === 'missing_input') {
    const example = issue.example === undefined ? '' : `; for example ${issue.example}`;
    return `${name === '' ? part : `${part}: ${name}`} is missing${example}.`;
  }
  if (issue.code === 'no_solution') return `${part}: ${issueText(issue)}`;
  const named = relabelled(issue, where, name === '' ? 'this entry' : name);
  return `${part}: ${issueText(named)}`;
}

/** The issue with labels where it had names of inputs; `issueText` makes the sentence of it. */
function relabelled(issue: Issue, where: string, name: string): Issue {
  if (issue.code !== 'inconsistent_inputs') return { ...issue, label: name };
  const paths = issue.paths.map((path): Path => {
    const place = placeInForm({ code: 'input', where, issue: { code: 'missing_input', path } });
    const labels = place === undefined ? [] : labelsAt(jobForm, place);
    return [labels.length > 1 ? labels.slice(1).join(', ') : (labels[0] ?? 'this entry')];
  });
  const [first = [name]] = paths;
  const unique = [first, ...paths.slice(1).filter((path) => path[0] !== first[0])];
  return { ...issue, label: first.join(), labels: unique.map((path) => path.join()) };
}

function labelOf(column: string): string {
  return Object.entries(channels).find(([name]) => name === column)?.[1].label ?? column;
}

const usualUnits: Readonly<Record<string, string>> = { time: 's', engineSpeed: 'rpm', gasTemperature: '°C', pressureDrop: 'mbar' };

/** One sentence with the file, the place and what would be right. */
export function jobIssueText(problem: JobIssue): string {
  switch (problem.code) {
    case 'input':
      return inputText(problem);
    case 'not_json':
      return `${problem.where} is not JSON: ${problem.detail}.`;
    case 'log_unreadable':
      return `${problem.where} cannot be read as a log: ${problem.detail.replace(/\.$/, '')}.`;
    case 'log_column_missing':
      return `${problem.where} has no column that is understood as the ${labelOf(problem.column)}. Found: ${problem.found.join(', ')}. Say it in the title, as in “${labelOf(problem.column)} [${usualUnits[problem.column] ?? 'unit'}]”.`;
    case 'log_question':
      return `${problem.where}: ${problem.question} Write it into the title of the column, as in “gas temperature before the filter [°C]”.`;
    case 'no_steady_reading':
      return `${sideOf(problem.where) ?? problem.where}: no steady reading that can be used: ${problem.need}.`;
    case 'more':
      return `${problem.count} more of the same are not listed.`;
  }
}
