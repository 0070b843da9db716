import type { Issue } from '@wallflow/calculation';

/** Why a job cannot be run: an issue of a calculation's input, or of the files around it. */
export type JobIssue =
  | { readonly code: 'input'; readonly where: string; readonly issue: Issue }
  | { readonly code: 'not_json'; readonly where: string; readonly detail: string }
  | { readonly code: 'log_unreadable'; readonly where: string; readonly detail: string }
  | { readonly code: 'log_column_missing'; readonly where: string; readonly column: string; readonly found: readonly string[] }
  | { readonly code: 'log_question'; readonly where: string; readonly question: string }
  | { readonly code: 'no_steady_reading'; readonly where: string; readonly need: string }
  | { readonly code: 'more'; readonly where: string; readonly count: number };
