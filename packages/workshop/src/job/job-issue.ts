import { type Issue, issueText } from '@wallflow/calculation';
import type { NumberProblem } from '@wallflow/units';

type CellReason = NumberProblem | 'below_absolute_zero' | 'missing_unit' | 'unknown_unit' | 'ambiguous_unit' | 'wrong_kind';

/** Why a job cannot be run: an issue of a calculation's input, or of the files around it. */
export type JobIssue =
  | { readonly code: 'input'; readonly where: string; readonly issue: Issue }
  | { readonly code: 'not_json'; readonly where: string; readonly detail: string }
  | { readonly code: 'log_unreadable'; readonly where: string; readonly detail: string }
  | { readonly code: 'log_column_missing'; readonly where: string; readonly column: string; readonly found: readonly string[] }
  | { readonly code: 'log_column_twice'; readonly where: string; readonly column: string }
  | {
      readonly code: 'log_unit';
      readonly where: string;
      readonly column: string;
      readonly given: string;
      readonly reason: 'unknown_unit' | 'ambiguous_unit' | 'wrong_kind' | 'missing_unit';
      readonly candidates: readonly string[];
    }
  | {
      readonly code: 'log_row_too_long';
      readonly where: string;
      readonly line: number;
      readonly cells: number;
      readonly columns: number;
      readonly separator: ',' | ';' | '\t';
    }
  | {
      readonly code: 'log_cell';
      readonly where: string;
      readonly line: number;
      readonly column: string;
      readonly given: string;
      readonly reason: CellReason;
    }
  | { readonly code: 'log_time_order'; readonly where: string; readonly line: number }
  | { readonly code: 'no_steady_reading'; readonly where: string; readonly need: string };

function unitText(problem: Extract<JobIssue, { code: 'log_unit' }>): string {
  const { given, column } = problem;
  const use = `use one of ${problem.candidates.join(', ')}.`;
  switch (problem.reason) {
    case 'unknown_unit':
      return `the unit "${given}" of column ${column} is not known; ${use}`;
    case 'ambiguous_unit':
      return `the unit "${given}" of column ${column} can mean more than one unit; ${use}`;
    case 'wrong_kind':
      return `"${given}" of column ${column} is a unit of something else; ${use}`;
    case 'missing_unit':
      return `column ${column} has no unit; ${use}`;
  }
}

/** What is wrong with the text of a cell, and what to do. */
function cellText(reason: CellReason): string {
  switch (reason) {
    case 'ambiguous_separator':
      return 'may be a thousand or a decimal number. Write it with a point, or part the cells with semicolons.';
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
      return `${problem.where}: ${issueText(problem.issue)}`;
    case 'not_json':
      return `${problem.where} is not JSON: ${problem.detail}.`;
    case 'log_unreadable':
      return `${problem.where} cannot be read as a table: ${problem.detail}.`;
    case 'log_column_missing':
      return `${problem.where} has no column ${problem.column}; write it as "${problem.column} [unit]". Found: ${problem.found.join(', ')}.`;
    case 'log_column_twice':
      return `${problem.where} has more than one column ${problem.column}; keep the one that is right.`;
    case 'log_unit':
      return `${problem.where}: ${unitText(problem)}`;
    case 'log_row_too_long':
      return `${problem.where}, line ${problem.line}: ${tooLongText(problem)}`;
    case 'log_cell':
      return `${problem.where}, line ${problem.line}, ${problem.column}: "${problem.given}" ${cellText(problem.reason)}`;
    case 'log_time_order':
      return `${problem.where}, line ${problem.line}: the time goes back.`;
    case 'no_steady_reading':
      return `${problem.where} holds no steady reading: ${problem.need}.`;
  }
}
