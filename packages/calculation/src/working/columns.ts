import { evaluate, type Value } from '../formula/evaluate.js';
import type { Expression } from '../formula/expression.js';
import { formulaTex } from '../formula/render.js';
import type { OutputField } from '../outputs.js';
import type { ColumnWorking } from './explained.js';
import { printedResult } from './line.js';
import { type Run, symbols } from './run.js';
import { type Names, rowScope, symbolTex } from './scope.js';

/** Bare names of a table's own columns written with the table, so that they are printed with their kinds. */
function ownNames(expression: Expression, table: string, names: Names): Expression {
  switch (expression.type) {
    case 'name': {
      if (expression.column !== undefined) return expression;
      const own = names.column(table, expression.key);
      return own === undefined ? expression : { type: 'name', key: table, column: expression.key };
    }
    case 'sign':
      return { ...expression, of: ownNames(expression.of, table, names) };
    case 'pair':
      return { ...expression, left: ownNames(expression.left, table, names), right: ownNames(expression.right, table, names) };
    case 'call':
      return { ...expression, of: expression.of.map((one) => ownNames(one, table, names)) };
    default:
      return expression;
  }
}

/** The formulas of a table's columns with the numbers of one row, and every row worked out again. */
export function columnsWorked(
  columns: Readonly<Record<string, Expression>>,
  table: string,
  field: OutputField,
  value: unknown,
  run: Run,
): ColumnWorking[] {
  if (field.type !== 'table' || !Array.isArray(value)) return [];
  const rows = value as readonly Readonly<Record<string, Value>>[];
  return Object.entries(columns).flatMap(([key, formula]): ColumnWorking[] => {
    const column = field.columns[key];
    if (column === undefined) return [];
    const shown = ownNames(formula, table, run.names);
    // Of a formula that looks back, the second row is the first that shows how.
    const example = rows.findIndex(
      (row, index) => row[key] !== undefined && evaluate(formula, rowScope(run.names, table, index, column)) !== undefined,
    );
    const recomputed = rows.map((_, index) => evaluate(formula, rowScope(run.names, table, index, column)));
    const there = rows[example]?.[key];
    const line =
      typeof there === 'number'
        ? printedResult(formula, key, column, there, rowRun(run, table), rowScope(run.names, table, example, column))
        : undefined;
    const symbol = `{${symbolTex(column, key)}}`;
    return [
      {
        column: key,
        label: column.label,
        tex: `${symbol}=${formulaTex(shown, symbols(rowRun(run, table).names))}`,
        ...(line === undefined ? {} : { ...line, numbersTex: `${symbol}=${line.numbersTex}` }),
        recomputed,
      },
    ];
  });
}

/** The names of a row: a column of the table comes before anything else of the same name. */
function rowRun(run: Run, table: string): Run {
  const { names } = run;
  return {
    ...run,
    names: {
      get: (key) => {
        const field = names.column(table, key);
        return field === undefined ? names.get(key) : { key, field, value: undefined, input: false };
      },
      column: (key, column) => names.column(key === 'previous' ? table : key, column),
    },
  };
}
