import type { KindName } from '@wallflow/units';

/** Where in the input something is: keys and list positions. */
export type Path = readonly (string | number)[];

/** A limit as the user should read it: in the unit that the user typed. */
export interface LimitInUnit {
  readonly value: number;
  readonly unit: string;
  readonly text: string;
  readonly inclusive: boolean;
}

/** Which part of a record `{ value, unit, uncertainty }` an issue is about, where a form keeps them in fields of their own. */
export type RecordPart = 'value' | 'unit' | 'uncertainty';

/** What a person calls the inputs that an issue is about; missing where it is about none, or where no definition knows them. */
interface IssueLabels {
  readonly label?: string;
  /** In the order of `paths`. */
  readonly labels?: readonly string[];
}

type IssueKind =
  /** `paths` where any one of several would do. */
  | { readonly code: 'missing_input'; readonly path: Path; readonly paths?: readonly Path[]; readonly example?: string }
  | { readonly code: 'unknown_input'; readonly path: Path; readonly given: unknown; readonly candidates: readonly string[] }
  | { readonly code: 'wrong_type'; readonly path: Path; readonly given: unknown; readonly expected: string; readonly example?: string }
  | {
      readonly code: 'not_a_number';
      readonly path: Path;
      readonly part?: RecordPart;
      readonly given: unknown;
      readonly reason?: string;
      readonly example?: string;
    }
  | {
      readonly code: 'missing_unit';
      readonly path: Path;
      readonly part?: RecordPart;
      readonly given: unknown;
      readonly candidates: readonly string[];
      readonly example?: string;
    }
  | {
      readonly code: 'unknown_unit' | 'ambiguous_unit';
      readonly path: Path;
      readonly part?: RecordPart;
      readonly given: unknown;
      readonly unit: string;
      readonly candidates: readonly string[];
    }
  | {
      readonly code: 'wrong_kind';
      readonly path: Path;
      readonly part?: RecordPart;
      readonly given: unknown;
      readonly unit: string;
      readonly expected: KindName;
      readonly found: readonly KindName[];
      readonly candidates: readonly string[];
    }
  | {
      readonly code: 'out_of_range';
      readonly path: Path;
      readonly given: unknown;
      readonly bound: 'min' | 'max';
      readonly limit: LimitInUnit;
    }
  | { readonly code: 'not_a_choice'; readonly path: Path; readonly given: unknown; readonly candidates: readonly string[] }
  | {
      readonly code: 'list_length';
      readonly path: Path;
      readonly given: number;
      readonly bound: 'min' | 'max';
      readonly limit: number;
    }
  | { readonly code: 'inconsistent_inputs'; readonly path: Path; readonly paths: readonly Path[]; readonly reason: string }
  | { readonly code: 'no_solution'; readonly path: Path; readonly reason: string; readonly cause?: 'not_finite' };

/**
 * Why an input was refused. The code and its fields are for machines; `issueText` makes the sentence.
 * `given` is what the user typed, unchanged unless it is very long, deep, or nothing that JSON has a word for: then it is cut,
 * so that issues are always plain data of bounded size.
 */
export type Issue = IssueKind & IssueLabels;

/** The code of an issue; codes stay, their sentences may change. */
export type IssueCode = Issue['code'];

/** Something true of the result that the user must know before acting on it; `output` names the output that it is about. */
export type Warning =
  | {
      readonly code: 'outside_usual_range';
      readonly path: Path;
      readonly given: unknown;
      readonly bound: 'min' | 'max';
      readonly limit: LimitInUnit;
      readonly text: string;
    }
  | { readonly code: 'uncertainty_incomplete'; readonly path: Path; readonly text: string }
  | { readonly code: string; readonly path?: Path; readonly output?: string; readonly text: string };

/** What was assumed to get the result: the definition's own assumptions and any default that was used. */
export interface Assumption {
  readonly code: string;
  readonly text: string;
  readonly path?: Path;
}

/** Thrown by `calculate`; carries the same issues that `run` returns. */
export class CalculationError extends Error {
  readonly issues: readonly Issue[];
  constructor(message: string, issues: readonly Issue[]) {
    super(message);
    this.name = 'CalculationError';
    this.issues = issues;
  }
}

/** A path as a person reads it: `points[2].flow`. */
export function pathText(path: Path): string {
  let text = '';
  for (const part of path) text += typeof part === 'number' ? `[${part}]` : text === '' ? part : `.${part}`;
  return text;
}
