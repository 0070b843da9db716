import { type Expression, namesIn } from '../formula/expression.js';
import type { TypedInput } from '../given.js';
import { pathText } from '../issue.js';
import { quantityTex, unitTex } from '../tex.js';
import { numberText } from '../written.js';
import type { UnitChange } from './explained.js';
import { printNumber } from './print.js';
import type { Run } from './run.js';

/** Rows of a list whose change of unit is written out. */
const mostRows = 12;
const digits = 8;

/** The units that change between what was typed and the SI numbers of these formulas, each once in the whole working. */
export function unitChanges(expressions: readonly Expression[], run: Run): UnitChange[] {
  return expressions.flatMap(namesIn).flatMap(({ key, column }): UnitChange[] => {
    const name = column === undefined ? key : `${key}.${column}`;
    if (run.changed.has(name) || run.names.get(key)?.input !== true) return [];
    run.changed.add(name);
    const typed = run.given.typed.filter(
      ({ path }) => path[0] === key && (column === undefined ? path.length === 1 : path.at(-1) === column),
    );
    return typed.slice(0, mostRows).flatMap((one) => unitChange(one, key, column, run));
  });
}

function unitChange({ path, value, unit }: TypedInput, key: string, column: string | undefined, run: Run): UnitChange[] {
  const field = column === undefined ? run.names.get(key)?.field : run.names.column(key, column);
  if (field === undefined || !('kind' in field) || unit === field.kind.baseUnit) return [];
  const { kind } = field;
  const parsed = kind.parse(value, unit);
  if (!parsed.ok) return [];
  const to = Number((parsed.quantity as number).toPrecision(digits));
  const from = printNumber(value, 12);
  const [symbol, si] = [kind.symbol(unit as never), kind.symbol(kind.baseUnit)];
  return [
    {
      key: pathText(path),
      label: field.label,
      tex: `{${field.symbol}}=${from.tex}${symbol === '' ? '' : `\\,${unitTex(symbol)}`}=${quantityTex(kind, to, kind.baseUnit, digits)}`,
      text: `${from.text} ${symbol} = ${numberText(to, digits)} ${si}`.replaceAll('  ', ' ').trim(),
      from: { value, unit },
      to,
    },
  ];
}
