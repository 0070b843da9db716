import { type Issue, issueText } from '@wallflow/calculation';

/** Why a job cannot be run: an issue of a calculation's input, or of the files around it. */
export type JobIssue =
  | { readonly code: 'input'; readonly where: string; readonly issue: Issue }
  | { readonly code: 'not_json'; readonly where: string; readonly detail: string }
  | { readonly code: 'log_unreadable'; readonly where: string; readonly detail: string }
  | { readonly code: 'log_column_missing'; readonly where: string; readonly column: string; readonly found: readonly string[] }
  | {
      readonly code: 'log_unit';
      readonly where: string;
      readonly column: string;
      readonly given: string;
      readonly candidates: readonly string[];
    }
  | { readonly code: 'log_cell'; readonly where: string; readonly line: number; readonly column: string; readonly given: string }
  | { readonly code: 'log_time_order'; readonly where: string; readonly line: number }
  | { readonly code: 'no_steady_reading'; readonly where: string; readonly need: string };

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
    case 'log_unit':
      return `${problem.where}: the unit "${problem.given}" of column ${problem.column} is not known; use one of ${problem.candidates.join(', ')}.`;
    case 'log_cell':
      return `${problem.where}, line ${problem.line}, ${problem.column}: "${problem.given}" is not a number. Leave the cell empty where there is no value.`;
    case 'log_time_order':
      return `${problem.where}, line ${problem.line}: the time does not increase.`;
    case 'no_steady_reading':
      return `${problem.where} holds no steady reading: ${problem.need}.`;
  }
}
