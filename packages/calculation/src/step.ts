import type { Expression } from './formula/expression.js';
import type { Source } from './source.js';
import type { Explanation } from './working/explained.js';

/** A calculation within the working of another. */
export interface NestedCalculation {
  readonly title: string;
  readonly spec: object;
  explain(input: never): (Explanation & { readonly ok: true; readonly result: object }) | { readonly ok: false };
}

/** A formula, and the condition under which it counts; without one it always does. */
export interface Way {
  readonly when?: Expression;
  readonly formula: Expression;
}

/** How a step comes to its value. */
export type How =
  | { readonly type: 'formula'; readonly formula: Expression }
  | { readonly type: 'cases'; readonly cases: readonly { readonly when?: Expression; readonly step: Step }[] }
  | {
      readonly type: 'nested';
      readonly calculation: NestedCalculation;
      readonly inputs: Readonly<Record<string, Expression | { readonly is: unknown }>>;
      readonly output: string;
    }
  | { readonly type: 'solved'; readonly equation: Expression; readonly within: number }
  | { readonly type: 'verdict'; readonly conditions: readonly { readonly option: string; readonly when?: Expression }[] }
  | { readonly type: 'found'; readonly conditions: readonly Expression[] }
  | { readonly type: 'table'; readonly at: readonly Expression[] }
  | { readonly type: 'rows'; readonly columns: Readonly<Record<string, readonly Way[]>> };

/** One line of the working: what it gives, how, and where that stands in the source. */
export interface Step<Key extends string = string> {
  readonly gives: Key;
  /** TeX with `[[key]]` for every input, constant, intermediate or output; symbols or numbers are put there. */
  readonly tex?: string;
  /** A sentence in plain words, with the same `[[key]]`. */
  readonly text?: string;
  readonly how?: How;
  /** The source, or its key in `sources`. */
  readonly source?: string | Source;
  readonly locator?: string;
}

/** All formulas and conditions of the columns of a table. */
export function expressionsOf(columns: Readonly<Record<string, readonly Way[]>>): Expression[] {
  return Object.values(columns).flatMap((ways) => ways.flatMap(({ when, formula }) => (when === undefined ? [formula] : [when, formula])));
}
