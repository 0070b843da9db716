import { shortText } from './spelling.js';
import type { KindName } from './types.js';

/** Why a text is not a number; `too_small` is a number so close to zero that a double would lose it. */
export type NumberProblem =
  | 'empty'
  | 'too_long'
  | 'control_character'
  | 'not_finite'
  | 'too_small'
  | 'not_numeric'
  | 'ambiguous_separator'
  | 'negative_uncertainty';

/**
 * Why a text is not a quantity. Plain data: the sentence is made elsewhere. `text` is what was given, cut to 200 signs;
 * `candidates` are what could be written instead, the likeliest first; `found` are the kinds that have the unit.
 */
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

export interface Refused {
  readonly ok: false;
  readonly issue: UnitIssue;
}

export function refuse(issue: UnitIssue): Refused {
  return { ok: false, issue: { ...issue, text: shortText(issue.text) } };
}

export function notANumber(text: string, reason: NumberProblem): Refused {
  return refuse({ code: 'not_a_number', text, reason });
}

/** Thrown where a program, not a user, makes a quantity that cannot be. */
export class UnitError extends Error {
  /** The same plain data that `parse` would have returned. */
  readonly issue: UnitIssue;
  constructor(issue: UnitIssue) {
    super(`${issue.code}: ${issue.text}`);
    this.name = 'UnitError';
    this.issue = issue;
  }
}
