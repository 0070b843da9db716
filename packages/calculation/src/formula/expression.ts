/** A formula as data: what `parseFormula` makes of a text. */
export type Expression =
  | {
      readonly type: 'number';
      readonly value: number;
      readonly text: string;
      /** With its unit, where the number took the place of a name. */
      readonly tex?: string;
    }
  | { readonly type: 'text'; readonly value: string }
  | { readonly type: 'name'; readonly key: string; readonly column?: string }
  | { readonly type: 'sign'; readonly sign: '-' | 'not'; readonly of: Expression }
  | { readonly type: 'pair'; readonly sign: PairSign; readonly left: Expression; readonly right: Expression }
  | { readonly type: 'call'; readonly name: string; readonly of: readonly Expression[] };

/** Signs between two parts, from the loosest to the tightest. */
export type PairSign = '=' | 'or' | 'and' | '<' | '<=' | '>' | '>=' | '==' | '!=' | '+' | '-' | '*' | '/' | '^';

/** How tightly a sign binds; of equal ones the left goes first, but for powers. */
export const tightness: Readonly<Record<PairSign, number>> = {
  '=': 0,
  or: 1,
  and: 2,
  '<': 4,
  '<=': 4,
  '>': 4,
  '>=': 4,
  '==': 4,
  '!=': 4,
  '+': 5,
  '-': 5,
  '*': 6,
  '/': 6,
  '^': 8,
};

/** Between `not` and a comparison, and between a product and a power. */
export const signTightness = { not: 3, '-': 7 } as const;

type Name = Extract<Expression, { type: 'name' }>;

/** All names in a formula, each once for every place where it stands; `pi` is a number and none of them. */
export function namesIn(expression: Expression): Name[] {
  switch (expression.type) {
    case 'name':
      return expression.key === 'pi' ? [] : [expression];
    case 'sign':
      return namesIn(expression.of);
    case 'pair':
      return [...namesIn(expression.left), ...namesIn(expression.right)];
    case 'call':
      return expression.of.flatMap(namesIn);
    default:
      return [];
  }
}
