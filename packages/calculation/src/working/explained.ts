/** A change of unit that a pocket calculator needs: `60 mbar = 6000 Pa`. */
export interface UnitChange {
  readonly key: string;
  readonly label: string;
  readonly tex: string;
  readonly text: string;
  readonly from: { readonly value: number; readonly unit: string };
  /** In SI, as it is printed. */
  readonly to: number;
}

/** One comparison of a verdict, or a condition that what was found meets. */
export interface Comparison {
  /** What would be the verdict if it held, in words; empty for a condition. */
  readonly verdict: string;
  /** In symbols. */
  readonly tex: string;
  readonly numbersTex: string;
  /** As one reads it aloud: `0.72 < 0.8`. */
  readonly numbers: string;
  readonly holds: boolean;
}

/** The formula of one column of a table. */
export interface ColumnWorking {
  readonly column: string;
  readonly label: string;
  /** Of a column with several ways: when this one is taken, as in the row that is shown. */
  readonly when?: string;
  readonly tex: string;
  /** With the numbers of the first row in which it has a value. */
  readonly numbersTex?: string;
  readonly numbers?: string;
  /** The value there, as it is printed in SI, and how many digits of it count. */
  readonly printed?: number;
  readonly printedDigits?: number;
  /** The formula, worked out for every row from values that were not rounded. */
  readonly recomputed: readonly unknown[];
}

/** One step of `explain` with its numbers. */
export interface ExplainedStep {
  readonly gives: string;
  readonly symbol?: string;
  readonly label: string;
  /** Whether this is what the calculation is asked for. */
  readonly answer: boolean;
  /** Units that change on the way into this step. */
  readonly changes: readonly UnitChange[];
  /** Of a step with several ways: when this one is taken. */
  readonly when?: string;
  /** The formula in symbols. */
  readonly tex?: string;
  /** The same with numbers in place of symbols; `digits` of each are as many as the result needs. */
  readonly numbersTex?: string;
  /** The numbers alone, as one types them into a calculator; they give `printed` in `printedUnit`. */
  readonly numbers?: string;
  readonly printed?: number;
  /** How many digits of `printed` count. */
  readonly printedDigits?: number;
  /** Unit of `printed`; the coherent SI unit unless the formula is tied to another. */
  readonly printedUnit?: string;
  /** The formula, worked out from values that were not rounded. */
  readonly recomputed?: unknown;
  readonly text?: string;
  /** Of an iteration or a search: how far the two sides of its equation differ, relative. */
  readonly residual?: number;
  readonly within?: number;
  readonly comparisons?: readonly Comparison[];
  readonly columns?: readonly ColumnWorking[];
  /** The working of the calculation that made this value. */
  readonly nested?: Explanation & { readonly title: string };
  readonly value: unknown;
  /** The value in the unit that people use, with its uncertainty. */
  readonly valueText: string;
  readonly valueTex?: string;
  readonly source?: string;
  /** What kind of step it is. */
  readonly how: 'formula' | 'nested' | 'solved' | 'verdict' | 'found' | 'table' | 'rows' | 'words';
}

/** The working of a result, in the order of the steps. */
export interface Explanation {
  readonly definition: { readonly id: string; readonly version: string };
  readonly steps: readonly ExplainedStep[];
}
