import { evaluate, type Scope, type Value } from './evaluate.js';
import type { Expression } from './expression.js';
import { columnFunction } from './functions.js';

type Name = Extract<Expression, { type: 'name' }>;
type NumberNode = Extract<Expression, { type: 'number' }>;

/** More rows than this are not written out. */
const mostRows = 12;

/** How a number of a formula is printed; `row` where it stands in a column. */
export type Print = (name: Name, value: number, unit?: string) => NumberNode;

/** A formula in which a column has too many rows, or a name stands for nothing that a line of numbers can show. */
class NoNumbers extends Error {}

function literal(value: number): NumberNode {
  return { type: 'number', value, text: String(value) };
}

function rowsOf(expression: Expression, scope: Scope): number | undefined {
  const value = evaluate(expression, scope);
  return Array.isArray(value) ? value.length : undefined;
}

/** The rows of a column that count: those in which every value is there. */
function rowsThatCount(expression: Expression, scope: Scope): number[] {
  const value = evaluate(expression, scope) as readonly Value[];
  return value.flatMap((one, row) => (one === undefined || (typeof one === 'number' && Number.isNaN(one)) ? [] : [row]));
}

function joined(parts: readonly Expression[]): Expression {
  const [first, ...others] = parts;
  if (first === undefined) return literal(0);
  return others.reduce<Expression>((left, right) => ({ type: 'pair', sign: '+', left, right }), first);
}

/** The formula with printed numbers in place of names, sums written out; undefined where that cannot be shown. */
export function withNumbers(expression: Expression, scope: Scope, print: Print): Expression | undefined {
  // In a row of a table, what is summed takes whole columns.
  const columns = scope.whole ?? scope;
  const put = (part: Expression, row?: number): Expression => {
    switch (part.type) {
      case 'name':
        return part.key === 'pi' ? part : number(part, row);
      case 'sign':
        return { ...part, of: put(part.of, row) };
      case 'pair':
        return { ...part, left: put(part.left, row), right: put(part.right, row) };
      case 'call':
        return callOf(part, row);
      default:
        return part;
    }
  };

  const number = (name: Name, row: number | undefined, unit?: string): Expression => {
    const value = (row === undefined ? scope : columns).value(name.key, name.column, unit);
    const one = Array.isArray(value) && row !== undefined ? value[row] : value;
    if (typeof one === 'number') return print(name, one, unit);
    if (typeof one === 'string') return { type: 'text', value: one };
    throw new NoNumbers();
  };

  const callOf = (part: Extract<Expression, { type: 'call' }>, row?: number): Expression => {
    const [first, second] = part.of;
    if (first === undefined) throw new NoNumbers();
    if (part.name === 'in' && first.type === 'name' && second?.type === 'text') return number(first, row, second.value);
    // Rows in which the condition does not hold were left out before.
    if (part.name === 'as' || part.name === 'where') return put(first, row);
    const rows =
      part.of.length === 1 && row === undefined ? rowsOf(first, columnFunction(part.name) === undefined ? scope : columns) : undefined;
    if (rows === undefined) return { ...part, of: part.of.map((one) => put(one, row)) };
    const counted = rowsThatCount(first, columns);
    if (part.name === 'count') return literal(counted.length);
    if (counted.length > mostRows) throw new NoNumbers();
    const parts = counted.map((one) => put(first, one));
    if (part.name === 'first') return parts[0] ?? literal(Number.NaN);
    if (part.name === 'last') return parts.at(-1) ?? literal(Number.NaN);
    if (part.name === 'sum') return joined(parts);
    const average: Expression = { type: 'pair', sign: '/', left: joined(parts), right: literal(parts.length) };
    if (part.name === 'mean') return average;
    if (part.name !== 'deviation') return { ...part, of: parts };
    const middle = evaluate(average, scope);
    if (typeof middle !== 'number') throw new NoNumbers();
    // The mean stands in it as a number, as one writes it down.
    const mean = literal(Number(middle.toPrecision(10)));
    const squares = parts.map((one): Expression => {
      const off: Expression = { type: 'pair', sign: '-', left: one, right: mean };
      return { type: 'pair', sign: '^', left: off, right: literal(2) };
    });
    return { type: 'call', name: 'sqrt', of: [{ type: 'pair', sign: '/', left: joined(squares), right: literal(parts.length - 1) }] };
  };

  try {
    return put(expression);
  } catch (error) {
    if (error instanceof NoNumbers) return undefined;
    throw error;
  }
}
