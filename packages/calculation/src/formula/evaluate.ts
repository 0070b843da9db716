import type { Expression, PairSign } from './expression.js';
import { columnFunction, functionOf } from './functions.js';

/** What a name stands for: a number, the key of a choice, yes or no, a column, or nothing where it was not given. */
export type Value = number | string | boolean | undefined | readonly (number | string | boolean | undefined)[];

/** Where a formula finds what its names stand for. */
export interface Scope {
  /** In SI, or in a unit where one is named. */
  value(key: string, column: string | undefined, unit?: string): Value;
  /** In a row of a table: the same names with other tables' columns whole, for what is summed over all their rows. */
  readonly whole?: Scope;
  /** SI value of a number in a unit of the quantity that the formula gives. */
  quantity(number: number, unit: string): number;
}

type Single = Exclude<Value, readonly unknown[]>;

function isColumn(value: Value): value is readonly Single[] {
  return Array.isArray(value);
}

function numberOf(value: Single): number {
  return typeof value === 'number' ? value : Number.NaN;
}

function compare(sign: PairSign, left: Single, right: Single): boolean {
  if (sign === '==') return left === right;
  if (sign === '!=') return left !== right;
  const [a, b] = [numberOf(left), numberOf(right)];
  return sign === '<' ? a < b : sign === '<=' ? a <= b : sign === '>' ? a > b : a >= b;
}

function pairOf(sign: PairSign, left: Single, right: Single): Single {
  const [a, b] = [numberOf(left), numberOf(right)];
  // What was not given makes nothing of what it takes part in.
  if ((left === undefined || right === undefined) && '+-*/^'.includes(sign)) return undefined;
  switch (sign) {
    case '+':
      return a + b;
    case '-':
      return a - b;
    case '*':
      return a * b;
    case '/':
      return a / b;
    case '^':
      return a ** b;
    default:
      return compare(sign, left, right);
  }
}

/** Row by row where a column takes part, as a table is worked out by hand. */
function each(values: readonly Value[], of: (...values: Single[]) => Single): Value {
  const length = values.find(isColumn)?.length;
  if (length === undefined) return of(...(values as Single[]));
  return Array.from({ length }, (_, row) => of(...values.map((value) => (isColumn(value) ? value[row] : value))));
}

function call(name: string, of: readonly Expression[], scope: Scope): Value {
  const [first, second] = of;
  if (first === undefined) return undefined;
  if (name === 'known') return isKnown(first, scope);
  if ((name === 'in' || name === 'as') && second?.type === 'text') {
    if (name === 'in' && first.type === 'name') return scope.value(first.key, first.column, second.value);
    return each([evaluate(first, scope)], (value) => (value === undefined ? undefined : scope.quantity(numberOf(value), second.value)));
  }
  if (name === 'where' && second !== undefined) {
    return each([evaluate(first, scope), evaluate(second, scope)], (value, holds) => (holds === true ? value : undefined));
  }
  const overColumn = columnFunction(name);
  const values = of.map((one) => evaluate(one, overColumn === undefined || of.length > 1 ? scope : (scope.whole ?? scope)));
  if (overColumn !== undefined) {
    // Rows in which an optional value is missing do not count.
    return overColumn(
      values
        .flatMap((value) => (isColumn(value) ? value : [value]))
        .filter((value) => value !== undefined)
        .map(numberOf),
    );
  }
  const plain = functionOf(name);
  return plain === undefined
    ? undefined
    : each(values, (...singles) => (singles.includes(undefined) ? undefined : plain(...singles.map(numberOf))));
}

function isKnown(expression: Expression, scope: Scope): boolean {
  const value = evaluate(expression, scope);
  return isColumn(value) ? value.length > 0 : value !== undefined;
}

/** Work a formula out. */
export function evaluate(expression: Expression, scope: Scope): Value {
  switch (expression.type) {
    case 'number':
      return expression.value;
    case 'text':
      return expression.value;
    case 'name':
      return expression.key === 'pi' ? Math.PI : expression.key === 'true' ? true : scope.value(expression.key, expression.column);
    case 'sign':
      if (expression.sign === 'not') return each([evaluate(expression.of, scope)], (value) => value !== true);
      return each([evaluate(expression.of, scope)], (value) => (value === undefined ? undefined : -numberOf(value)));
    case 'pair': {
      const { sign } = expression;
      const left = evaluate(expression.left, scope);
      // As people read it: what follows is not looked at where the answer is known already.
      if (sign === 'and' && left === false) return false;
      if (sign === 'or' && left === true) return true;
      const right = evaluate(expression.right, scope);
      return sign === 'and' || sign === 'or' ? right === true : each([left, right], (a, b) => pairOf(sign, a, b));
    }
    case 'call':
      return call(expression.name, expression.of, scope);
  }
}
