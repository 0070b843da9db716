import type { KindName } from '@wallflow/units';
import type { AnyCalculation, Success } from './definition.js';
import type { Columns, OutputField, Outputs, QuantityOutput } from './outputs.js';

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
      readonly plot?: { readonly x: string; readonly y: readonly string[] };
    };

/** How results are shown. */
export interface PresentOptions {
  /** Unit to show for an output, by its key; the definition's first unit otherwise. */
  readonly units?: Readonly<Record<string, string>>;
}

/** Significant digits to show: what the inputs support, between the least and the most that make sense for the output. */
export function digitsToShow(field: QuantityOutput<KindName>, inputDigits: number): number {
  return Math.min(field.digits, Math.max(field.leastDigits, inputDigits));
}

function inUnit(field: QuantityOutput<KindName>, value: number, unit: string): number {
  const converted = field.kind.in(field.kind.si(value), unit as never);
  return Number(converted.toPrecision(12));
}

function presentTable(field: Extract<OutputField, { type: 'table' }>, rows: readonly Readonly<Record<string, unknown>>[]): Presented {
  const columns: Columns = field.columns;
  const heads = Object.entries(columns).map(([key, column]) => [
    key,
    {
      label: column.label,
      ...(column.type === 'quantity' ? { unit: column.units[0] ?? column.kind.baseUnit, symbol: column.symbol } : {}),
    },
  ]);
  const cell = (key: string, value: unknown): number | string | null => {
    const column = columns[key];
    if (value === undefined || column === undefined) return null;
    if (column.type === 'quantity') return inUnit(column, value as number, column.units[0] ?? column.kind.baseUnit);
    if (column.type === 'choice') return column.options[value as string] ?? (value as string);
    return value as number | string;
  };
  return {
    type: 'table',
    label: field.label,
    columns: Object.fromEntries(heads),
    rows: rows.map((row) => Object.fromEntries(Object.keys(columns).map((key) => [key, cell(key, row[key])]))),
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
  switch (field.type) {
    case 'quantity': {
      const shownIn = unit ?? field.units[0] ?? field.kind.baseUnit;
      const number = value as number;
      const text = toTheCoin(field, uncertainty)
        ? number.toFixed(2)
        : field.kind.format(field.kind.si(number), shownIn as never, {
            digits: digitsToShow(field, inputDigits),
            ...(uncertainty === undefined ? {} : { uncertainty }),
          });
      const spread = uncertainty === undefined ? undefined : field.kind.differenceIn(uncertainty, shownIn as never, number);
      return {
        type: 'quantity',
        label: field.label,
        symbol: field.symbol,
        value: inUnit(field, number, shownIn),
        unit: shownIn,
        ...(spread === undefined ? {} : { uncertainty: Number(spread.toPrecision(6)) }),
        text,
      };
    }
    case 'choice':
      return { type: 'choice', label: field.label, value: value as string, text: field.options[value as string] ?? String(value) };
    case 'count':
      return { type: 'count', label: field.label, symbol: field.symbol, value: value as number, text: String(value) };
    case 'text':
      return { type: 'text', label: field.label, value: value as string, text: value as string };
    case 'table':
      return presentTable(field, value as readonly Readonly<Record<string, unknown>>[]);
  }
}

function presentGroup(
  fields: Outputs,
  values: Readonly<Record<string, unknown>>,
  result: Success<Outputs, Outputs>,
  options: PresentOptions,
): Record<string, Presented> {
  const shown: Record<string, Presented> = {};
  for (const [key, field] of Object.entries(fields)) {
    const value = values[key];
    if (value === undefined) continue;
    shown[key] = presentValue(field, value, result.inputDigits, result.uncertainty?.values[key], options.units?.[key]);
  }
  return shown;
}

/** Outputs and intermediates of a result in the units people use, rounded to what the inputs support; plain data. */
export function present(
  calculation: AnyCalculation,
  result: Success<Outputs, Outputs>,
  options: PresentOptions = {},
): { readonly outputs: Record<string, Presented>; readonly intermediates: Record<string, Presented> } {
  return {
    outputs: presentGroup(calculation.spec.outputs, result.outputs, result, options),
    intermediates: presentGroup(calculation.spec.intermediates, result.intermediates, result, options),
  };
}
