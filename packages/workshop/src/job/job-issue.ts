import type { Issue } from '@wallflow/calculation';
import type { NumberProblem } from '@wallflow/units';
import type { ChannelName } from './channels.js';

export type CellReason = NumberProblem | 'below_absolute_zero' | 'missing_unit' | 'unknown_unit' | 'ambiguous_unit' | 'wrong_kind';

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
      readonly column: ChannelName;
      readonly given: string;
      readonly reason: CellReason;
    }
  | { readonly code: 'log_question'; readonly where: string; readonly question: string }
  | { readonly code: 'log_time_order'; readonly where: string; readonly line: number }
  | { readonly code: 'no_steady_reading'; readonly where: string; readonly need: string }
  | { readonly code: 'more'; readonly where: string; readonly count: number };
