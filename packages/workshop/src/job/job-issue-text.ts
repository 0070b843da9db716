import { fieldOf, type Issue, issueText, itemSchema, type Path, shapeOf } from '@wallflow/calculation';
import type * as z from 'zod/mini';
import { jobForm } from '../form/fields.js';
import { placeInForm } from '../form/issue-place.js';
import { channels } from './channels.js';
import { jobSections } from './description.js';
import type { CellReason, JobIssue } from './job-issue.js';

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
  if (issue.code !== 'inconsistent_inputs') return { ...issue, path: [name] };
  const paths = issue.paths.map((path): Path => {
    const place = placeInForm({ code: 'input', where, issue: { code: 'missing_input', path } });
    const labels = place === undefined ? [] : labelsAt(jobForm, place);
    return [labels.length > 1 ? labels.slice(1).join(', ') : (labels[0] ?? 'this entry')];
  });
  const [first = [name]] = paths;
  const unique = [first, ...paths.slice(1).filter((path) => path[0] !== first[0])];
  return { ...issue, path: first, paths: unique };
}

function labelOf(column: string): string {
  return Object.entries(channels).find(([name]) => name === column)?.[1].label ?? column;
}

function unitText(problem: Extract<JobIssue, { code: 'log_unit' }>): string {
  const { given } = problem;
  const column = `of the ${labelOf(problem.column)}`;
  const use = `use one of ${problem.candidates.join(', ')}.`;
  switch (problem.reason) {
    case 'unknown_unit':
      return `the unit "${given}" ${column} is not known; ${use}`;
    case 'ambiguous_unit':
      return `the unit "${given}" ${column} can mean more than one unit; ${use}`;
    case 'wrong_kind':
      return `"${given}" ${column} is a unit of something else; ${use}`;
    case 'missing_unit':
      return `the column ${column} has no unit; ${use}`;
  }
}

/** What is wrong with the text of a cell, and what to do. */
function cellText(reason: CellReason): string {
  switch (reason) {
    case 'ambiguous_separator':
      return 'may be a thousand or a decimal number. Write thousands without a sign between them, and all decimals alike.';
    case 'below_absolute_zero':
      return 'is below what exists.';
    case 'not_finite':
      return 'is too large, or not a finite number.';
    case 'too_small':
      return 'is too close to zero to be kept.';
    case 'control_character':
      return 'contains a control character.';
    case 'unknown_unit':
    case 'ambiguous_unit':
    case 'wrong_kind':
      return 'holds more than a number. The unit belongs into the header alone.';
    default:
      return 'is not a number. Leave the cell empty where there is no value.';
  }
}

function tooLongText({ cells, columns, separator }: Extract<JobIssue, { code: 'log_row_too_long' }>): string {
  const counted = `${cells} cells under ${columns} columns.`;
  if (separator !== ',') return `${counted} Give every column a title.`;
  return `${counted} If its numbers have decimal commas, write them with points or part the cells with semicolons.`;
}

/** One sentence with the file, the place and what would be right. */
export function jobIssueText(problem: JobIssue): string {
  switch (problem.code) {
    case 'input':
      return inputText(problem);
    case 'not_json':
      return `${problem.where} is not JSON: ${problem.detail}.`;
    case 'log_unreadable':
      return `${problem.where} cannot be read as a table: ${problem.detail}.`;
    case 'log_column_missing':
      return `${problem.where} has no column for the ${labelOf(problem.column)}; its title must be "${problem.column} [unit]". Found: ${problem.found.join(', ')}.`;
    case 'log_column_twice':
      return `${problem.where} has more than one column for the ${labelOf(problem.column)}; keep the one that is right.`;
    case 'log_unit':
      return `${problem.where}: ${unitText(problem)}`;
    case 'log_row_too_long':
      return `${problem.where}, line ${problem.line}: ${tooLongText(problem)}`;
    case 'log_cell':
      return `${problem.where}, line ${problem.line}, ${channels[problem.column].label}: "${problem.given}" ${cellText(problem.reason)}`;
    case 'log_question':
      return `${problem.where}: ${problem.question} Write it into the title of the column, as in “gas temperature before the filter [°C]”.`;
    case 'log_time_order':
      return `${problem.where}, line ${problem.line}: the time goes back.`;
    case 'no_steady_reading':
      return `${sideOf(problem.where) ?? problem.where}: no steady reading that can be used: ${problem.need}.`;
    case 'more':
      return `${problem.count} more of the same are not listed.`;
  }
}
