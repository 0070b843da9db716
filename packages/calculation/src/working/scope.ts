import type { Kind, KindName } from '@wallflow/units';
import { fieldOf, type InputField } from '../field.js';
import type { Scope, Value } from '../formula/evaluate.js';
import type { Expression } from '../formula/expression.js';
import type { OutputField, Outputs } from '../outputs.js';
import { textTex } from '../tex.js';
import { itemSchema, shapeOf } from '../walk.js';
import type { AnySpec } from './spec.js';

type Values = Readonly<Record<string, unknown>>;
type Field =
  | InputField
  | OutputField
  | { readonly type: 'constant'; readonly kind: Kind<KindName>; readonly symbol: string; readonly label: string };

/** What a formula's name stands for in one run. */
export interface Known {
  readonly key: string;
  readonly field: Field;
  readonly value: unknown;
  readonly input: boolean;
}

/** All names of a definition with their values in one run. */
export interface Names {
  get(key: string): Known | undefined;
  /** The field of a column of a list or table. */
  column(key: string, column: string): Field | undefined;
}

export function namesOf(spec: AnySpec, input: Values, results: Values): Names {
  const names = new Map<string, Known>();
  for (const [key, { kind, symbol, label, value }] of Object.entries(spec.constants)) {
    names.set(key, { key, field: { type: 'constant', kind, symbol, label }, value, input: false });
  }
  for (const [key, schema] of shapeOf(spec.inputs)) {
    const field = fieldOf(schema);
    if (field !== undefined) names.set(key, { key, field, value: input[key], input: true });
  }
  for (const [key, field] of Object.entries({ ...spec.intermediates, ...spec.outputs } as Outputs)) {
    names.set(key, { key, field, value: results[key], input: false });
  }
  return {
    get: (key) => names.get(key),
    column: (key, column) => columnField(spec, names.get(key), column),
  };
}

function columnField(spec: AnySpec, known: Known | undefined, column: string): Field | undefined {
  if (known?.field.type === 'table') return known.field.columns[column];
  const schema = known === undefined ? undefined : spec.inputs._zod.def.shape[known.key];
  const item = schema === undefined ? undefined : itemSchema(schema);
  const inner = item?._zod.def.shape[column];
  return inner === undefined ? undefined : fieldOf(inner);
}

export function symbolTex(field: Field | undefined, key: string): string {
  if (field === undefined) return textTex(key);
  return 'symbol' in field ? field.symbol : textTex(field.label);
}

function inUnit(field: Field | undefined, value: unknown, unit: string | undefined): Value {
  if (unit === undefined || typeof value !== 'number' || field === undefined || !('kind' in field)) return value as Value;
  return field.kind.in(field.kind.si(value), unit as never);
}

/** Where formulas of a run find their values. `gives` is the field that a formula's own unit belongs to. */
export function scopeOf(names: Names, gives: Field | undefined): Scope {
  return {
    value(key, column, unit) {
      const known = names.get(key);
      if (known === undefined) return undefined;
      if (column === undefined) return inUnit(known.field, known.value, unit);
      // Of a group there is one record, of a list or table there are many.
      if (typeof known.value === 'object' && !Array.isArray(known.value)) {
        return inUnit(names.column(key, column), (known.value as Values)[column], unit);
      }
      const rows = Array.isArray(known.value) ? (known.value as readonly Values[]) : [];
      return rows.map((row) => inUnit(names.column(key, column), row[column], unit)) as Value;
    },
    quantity(number, unit) {
      if (gives === undefined || !('kind' in gives)) return Number.NaN;
      const parsed = (gives.kind as Kind<KindName>).parse(number, unit);
      return parsed.ok ? parsed.quantity : Number.NaN;
    },
  };
}

/** The same, with the words of choices in place of their keys. */
export function scopeInWords(names: Names): Scope {
  const scope = scopeOf(names, undefined);
  return {
    ...scope,
    value(key, column, unit) {
      const value = scope.value(key, column, unit);
      const field = column === undefined ? names.get(key)?.field : names.column(key, column);
      return field?.type === 'choice' && typeof value === 'string' ? (field.options[value] ?? value) : value;
    },
  };
}

/** One row of a table as a scope: bare names are its own columns first. */
export function rowScope(names: Names, table: string, row: number, gives: Field | undefined): Scope {
  const whole = scopeOf(names, gives);
  const own: Scope = {
    ...whole,
    value(key, column, unit) {
      if (key === 'previous' && column !== undefined) return row === 0 ? undefined : cell(whole.value(table, column, unit), row - 1);
      if (key === 'row' && column === undefined) return row + 1;
      if (column !== undefined) return cell(whole.value(key, column, unit), row);
      return names.column(table, key) === undefined ? whole.value(key, undefined, unit) : cell(whole.value(table, key, unit), row);
    },
  };
  const columns: Scope = {
    ...own,
    value: (key, column, unit) => (column === undefined || key === 'previous' ? own : whole).value(key, column, unit),
  };
  return { ...own, whole: columns };
}

function cell(value: Value, row: number): Value {
  return Array.isArray(value) ? (value as readonly Value[])[row] : value;
}

/** The words of a choice in place of its key, where a condition compares with it. */
export function withWords(expression: Expression, names: Names): Expression {
  if (expression.type === 'sign') return { ...expression, of: withWords(expression.of, names) };
  if (expression.type === 'call') return { ...expression, of: expression.of.map((one) => withWords(one, names)) };
  if (expression.type !== 'pair') return expression;
  const { left, right } = expression;
  if (left.type === 'name' && right.type === 'text') {
    const field = left.column === undefined ? names.get(left.key)?.field : names.column(left.key, left.column);
    if (field?.type === 'choice') return { ...expression, right: { type: 'text', value: field.options[right.value] ?? right.value } };
  }
  return { ...expression, left: withWords(left, names), right: withWords(right, names) };
}
