import { evaluate, type Value } from '../formula/evaluate.js';
import type { Expression } from '../formula/expression.js';
import { formulaTex, formulaText } from '../formula/render.js';
import type { OutputField } from '../outputs.js';
import type { Way } from '../step.js';
import type { ColumnWorking } from './explained.js';
import { printedResult } from './line.js';
import { type Run, symbols, words } from './run.js';
import { type Names, rowScope, symbolTex, withWords } from './scope.js';

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
  columns: Readonly<Record<string, readonly Way[]>>,
  table: string,
  field: OutputField,
  value: unknown,
  run: Run,
): ColumnWorking[] {
  if (field.type !== 'table' || !Array.isArray(value)) return [];
  const rows = value as readonly Readonly<Record<string, Value>>[];
  return Object.entries(columns).flatMap(([key, ways]): ColumnWorking[] => {
    const column = field.columns[key];
    if (column === undefined) return [];
    const scopes = rows.map((_, index) => rowScope(run.names, table, index, column));
    const taken = scopes.map((scope) => ways.find(({ when }) => when === undefined || evaluate(when, scope) === true));
    const recomputed = scopes.map((scope, index) => (taken[index] === undefined ? undefined : evaluate(taken[index].formula, scope)));
    // Of a formula that looks back, the second row is the first that shows how.
    const example = Math.max(
      0,
      rows.findIndex((row, index) => row[key] !== undefined && recomputed[index] !== undefined),
    );
    const way = taken[example] ?? ways[0];
    const [scope, there] = [scopes[example], rows[example]?.[key]];
    if (way === undefined) return [];
    const named = rowRun(run, table);
    const line =
      typeof there === 'number' && scope !== undefined ? printedResult(way.formula, key, column, there, named, scope) : undefined;
    const symbol = `{${symbolTex(column, key)}}`;
    const shown = formulaTex(ownNames(way.formula, table, run.names), symbols(named.names));
    return [
      {
        column: key,
        label: column.label,
        ...(way.when === undefined ? {} : { when: formulaText(withWords(way.when, named.names), words(named.names)) }),
        tex: `${symbol}=${shown}`,
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
