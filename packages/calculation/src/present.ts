import type { KindName, UnitOf } from '@wallflow/units';
import type * as z from 'zod/mini';
import type { Calculation, Constants, Success } from './definition.js';
import { type NumberSigns, numberSigns, withSigns } from './locale.js';
import type { Columns, OutputField, Outputs, QuantityOutput } from './outputs.js';
import { readable, withPowers } from './readable.js';
import type { UnitSystem } from './system.js';

/** A value ready to be shown or written as JSON. */
export type Presented =
  | {
      readonly type: 'quantity';
      readonly label: string;
      readonly symbol: string;
      readonly value: number;
      readonly unit: string;
      readonly uncertainty?: number;
      readonly text: string;
    }
  | { readonly type: 'choice'; readonly label: string; readonly value: string; readonly text: string }
  | { readonly type: 'count'; readonly label: string; readonly symbol: string; readonly value: number; readonly text: string }
  | { readonly type: 'text'; readonly label: string; readonly value: string; readonly text: string }
  | {
      readonly type: 'table';
      readonly label: string;
      readonly columns: Readonly<Record<string, { readonly label: string; readonly unit?: string; readonly symbol?: string }>>;
      readonly rows: readonly Readonly<Record<string, number | string | null>>[];
      /** The same cells as people read them, with the digits that the inputs support; an empty text where there is no value. */
      readonly texts: readonly Readonly<Record<string, string>>[];
      readonly plot?: { readonly x: string; readonly y: readonly string[] };
    };

type UnitOfField<F> = 0 extends 1 & F
  ? string
  : F extends { readonly type: 'quantity'; readonly kind: { readonly kind: infer K extends KindName } }
    ? UnitOf<K>
    : F extends { readonly type: 'table'; readonly columns: infer C }
      ? { readonly [Key in keyof C as UnitOfField<C[Key]> extends never ? never : Key]?: UnitOfField<C[Key]> }
      : never;

/** Units to show results in, by key; those of a table's columns under the key of the table. */
export type ShownUnits<V> = string extends keyof V
  ? Readonly<Record<string, string | Readonly<Record<string, string | undefined>> | undefined>>
  : { readonly [Key in keyof V as UnitOfField<V[Key]> extends never ? never : Key]?: UnitOfField<V[Key]> };

/** How results are shown. */
export interface PresentOptions<V = Outputs> {
  /** Unit to show for an output, by its key; the definition's first unit otherwise. */
  readonly units?: ShownUnits<V>;
  /** The system of units for all that `units` does not name: `metric` or `usCustomary` from `@wallflow/calculation/display`. */
  readonly system?: UnitSystem;
  /** Tag of the language that numbers are written in, such as `de`. Without it they have a point, and no marks between thousands. */
  readonly locale?: string;
}

type PresentedField<F> = F extends { readonly type: infer T } ? Extract<Presented, { readonly type: T }> : never;

/** Results by key; those that a definition marks as optional may be missing. */
export type PresentedOf<O> = string extends keyof O
  ? Record<string, Presented>
  : { readonly [Key in keyof O]: O[Key] extends { readonly optional: true } ? PresentedField<O[Key]> | undefined : PresentedField<O[Key]> };

/** Significant digits to show: what the inputs support, between the least and the most that make sense for the output. */
export function digitsToShow(field: QuantityOutput<KindName>, inputDigits: number): number {
  return Math.min(field.digits, Math.max(field.leastDigits, inputDigits));
}

function inUnit(field: QuantityOutput<KindName>, value: number, unit: string): number {
  const converted = field.kind.in(field.kind.si(value), unit as never);
  return Number(converted.toPrecision(12));
}

/** How one value is shown, once units and signs are settled. */
interface Showing {
  readonly unit?: string | Readonly<Record<string, string | undefined>> | undefined;
  readonly system?: UnitSystem | undefined;
  readonly signs?: NumberSigns | undefined;
}

function unitFor(field: QuantityOutput<KindName>, named: string | undefined, system: UnitSystem | undefined): string {
  const first = field.units[0] ?? field.kind.baseUnit;
  const unit = named ?? system?.unitFor(field.units, field.kind.units) ?? first;
  if ((field.kind.units as readonly string[]).includes(unit)) return unit;
  throw new TypeError(`${field.label} cannot be shown in "${unit}"; use one of ${field.kind.units.slice(0, 8).join(', ')}`);
}

function presentTable(
  field: Extract<OutputField, { type: 'table' }>,
  rows: readonly Readonly<Record<string, unknown>>[],
  inputDigits: number,
  { unit, system, signs }: Showing,
): Presented {
  const columns: Columns = field.columns;
  const named = typeof unit === 'object' ? unit : {};
  const unknown = Object.keys(named).find((key) => columns[key]?.type !== 'quantity');
  if (unknown !== undefined) throw new TypeError(`${field.label} has no column "${unknown}" with a unit`);
  const units: Record<string, string> = {};
  for (const [key, column] of Object.entries(columns)) if (column.type === 'quantity') units[key] = unitFor(column, named[key], system);
  const heads = Object.entries(columns).map(([key, column]) => [
    key,
    { label: column.label, ...(column.type === 'quantity' ? { unit: units[key], symbol: column.symbol } : {}) },
  ]);
  const cell = (key: string, value: unknown): number | string | null => {
    const column = columns[key];
    if (value === undefined || column === undefined) return null;
    if (column.type === 'quantity') return inUnit(column, value as number, units[key] ?? column.kind.baseUnit);
    if (column.type === 'choice') return column.options[value as string] ?? (value as string);
    return value as number | string;
  };
  const powers = signs === undefined ? readable : withPowers;
  const text = (key: string, value: unknown): string => {
    const column = columns[key];
    if (column?.type !== 'quantity' || value === undefined) return String(cell(key, value) ?? '');
    const options = { digits: digitsToShow(column, inputDigits), unitless: true };
    const written = toTheCoin(column, undefined)
      ? (value as number).toFixed(2)
      : powers(column.kind.format(column.kind.si(value as number), units[key] as never, options));
    return signs === undefined ? written : withSigns(written, signs);
  };
  const each = (read: (key: string, value: unknown) => number | string | null) =>
    rows.map((row) => Object.fromEntries(Object.keys(columns).map((key) => [key, read(key, row[key])])));
  return {
    type: 'table',
    label: field.label,
    columns: Object.fromEntries(heads),
    rows: each(cell),
    texts: each(text) as Record<string, string>[],
    ...(field.plot === undefined ? {} : { plot: field.plot }),
  };
}

/** Fewer digits make an amount of money an estimate. */
const digitsOfMoney = 5;

/** Whether a value is written as on a bill: where a comma parts decimals, `31.600` would be read as 31 thousand. */
function toTheCoin(field: QuantityOutput<KindName>, uncertainty: number | undefined): boolean {
  return field.kind.kind === 'money' && field.digits >= digitsOfMoney && uncertainty === undefined;
}

/** Present one value by its field. */
export function presentValue(field: OutputField, value: unknown, inputDigits: number, uncertainty?: number, unit?: string): Presented {
  return shown(field, value, inputDigits, uncertainty, { unit });
}

/** Present one value by its field, in a unit, system and language. */
export function shown(
  field: OutputField,
  value: unknown,
  inputDigits: number,
  uncertainty: number | undefined,
  showing: Showing,
): Presented {
  const { signs } = showing;
  const written = (text: string) => (signs === undefined ? text : withSigns(text, signs));
  const powers = signs === undefined ? readable : withPowers;
  switch (field.type) {
    case 'quantity': {
      const shownIn = unitFor(field, typeof showing.unit === 'string' ? showing.unit : undefined, showing.system);
      const number = value as number;
      const text = toTheCoin(field, uncertainty)
        ? number.toFixed(2)
        : powers(
            field.kind.format(field.kind.si(number), shownIn as never, {
              digits: digitsToShow(field, inputDigits),
              ...(uncertainty === undefined ? {} : { uncertainty }),
            }),
          );
      const spread = uncertainty === undefined ? undefined : field.kind.differenceIn(uncertainty, shownIn as never, number);
      return {
        type: 'quantity',
        label: field.label,
        symbol: field.symbol,
        value: inUnit(field, number, shownIn),
        unit: shownIn,
        ...(spread === undefined ? {} : { uncertainty: Number(spread.toPrecision(6)) }),
        text: written(text),
      };
    }
    case 'choice':
      return { type: 'choice', label: field.label, value: value as string, text: field.options[value as string] ?? String(value) };
    case 'count':
      return { type: 'count', label: field.label, symbol: field.symbol, value: value as number, text: written(String(value)) };
    case 'text':
      return { type: 'text', label: field.label, value: value as string, text: value as string };
    case 'table':
      return presentTable(field, value as readonly Readonly<Record<string, unknown>>[], inputDigits, showing);
  }
}

function presentGroup<O extends Outputs>(
  fields: O,
  values: Readonly<Record<string, unknown>>,
  result: Success<Outputs, Outputs>,
  options: PresentOptions,
): PresentedOf<O> {
  const { system } = options;
  const signs = options.locale === undefined ? undefined : numberSigns(options.locale);
  const all: Record<string, Presented> = {};
  for (const [key, field] of Object.entries<OutputField>(fields)) {
    const value = values[key];
    if (value === undefined) continue;
    const unit = options.units?.[key];
    all[key] = shown(field, value, result.inputDigits, result.uncertainty?.values[key], { unit, system, signs });
  }
  return all as PresentedOf<O>;
}

/**
 * Outputs and intermediates of a result in the units people use, rounded to what the inputs support; plain data.
 *
 * @throws `TypeError` if `units` names a unit or a result that does not exist
 */
export function present<I extends z.core.$ZodObject, O extends Outputs, M extends Outputs, C extends Constants>(
  calculation: Calculation<I, O, M, C>,
  result: Success<NoInfer<O>, NoInfer<M>>,
  options: PresentOptions<NoInfer<O & M>> = {},
): { readonly outputs: PresentedOf<O>; readonly intermediates: PresentedOf<M> } {
  const { outputs, intermediates } = calculation.spec;
  const unknown = Object.keys(options.units ?? {}).find((key) => !(key in outputs || key in intermediates));
  if (unknown !== undefined) throw new TypeError(`${calculation.title} has no result "${unknown}"`);
  const plain = result as unknown as Success<Outputs, Outputs>;
  return {
    outputs: presentGroup(outputs, plain.outputs, plain, options as PresentOptions),
    intermediates: presentGroup(intermediates, plain.intermediates, plain, options as PresentOptions),
  };
}
