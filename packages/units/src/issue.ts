import type { KindName } from './types.js';

export type NumberProblem =
  | 'empty'
  | 'too_long'
  | 'control_character'
  | 'not_finite'
  | 'not_numeric'
  | 'ambiguous_separator'
  | 'negative_uncertainty';

/** Why a text is not a quantity. Plain data: the sentence is made elsewhere. `text` is what was given, cut to 200 signs. */
export type UnitIssue =
  | { readonly code: 'not_a_number'; readonly text: string; readonly reason: NumberProblem }
  | { readonly code: 'missing_unit'; readonly text: string; readonly expected: KindName; readonly candidates: readonly string[] }
  | { readonly code: 'unknown_unit'; readonly text: string; readonly unit: string; readonly candidates: readonly string[] }
  | { readonly code: 'ambiguous_unit'; readonly text: string; readonly unit: string; readonly candidates: readonly string[] }
  | {
      readonly code: 'wrong_kind';
      readonly text: string;
      readonly unit: string;
      readonly expected: KindName;
      readonly found: readonly KindName[];
    }
  | { readonly code: 'below_absolute_zero'; readonly text: string; readonly unit: string; readonly limit: number };

/** Thrown where a program, not a user, makes a quantity that cannot be. */
export class UnitError extends Error {
  readonly issue: UnitIssue;
  constructor(issue: UnitIssue) {
    super(`${issue.code}: ${issue.text}`);
    this.name = 'UnitError';
    this.issue = issue;
  }
}
