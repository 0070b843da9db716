import type { Kind, KindName, Quantity } from '@wallflow/units';
import type * as z from 'zod/mini';
import { optionalInput } from './rules.js';

/** A number with a kind that a calculation gives. */
export interface QuantityOutput<K extends KindName = KindName> {
  readonly type: 'quantity';
  readonly kind: Kind<K>;
  readonly symbol: string;
  readonly label: string;
  readonly description?: string;
  /** Significant digits that make sense at most. */
  readonly digits: number;
  /** Digits shown however coarse the inputs are: more than 3 where only the last ones tell, as in a refractive index. */
  readonly leastDigits: number;
  /** Units to show it in, most usual first. */
  readonly units: readonly string[];
  readonly optional: boolean;
}

/** A verdict or another choice among named possibilities. */
export interface ChoiceOutput<O extends string = string> {
  readonly type: 'choice';
  readonly label: string;
  readonly description?: string;
  readonly options: Readonly<Record<O, string>>;
  readonly optional: boolean;
}

/** A whole number. */
export interface CountOutput {
  readonly type: 'count';
  readonly symbol: string;
  readonly label: string;
  readonly description?: string;
  readonly optional: boolean;
}

/** A sentence or a name. */
export interface TextOutput {
  readonly type: 'text';
  readonly label: string;
  readonly description?: string;
  readonly optional: boolean;
}

/** Rows of results: a time series, a profile along the filter, the conditions of a gate. */
export interface TableOutput<C extends Columns = Columns> {
  readonly type: 'table';
  readonly label: string;
  readonly description?: string;
  readonly columns: C;
  /** How to draw it: one column across, one or more of one kind up. */
  readonly plot?: { readonly x: string; readonly y: readonly string[] };
  readonly optional: boolean;
}

/** Columns of a table by key. */
export type Columns = Readonly<Record<string, QuantityOutput<KindName> | ChoiceOutput | CountOutput | TextOutput>>;
/** One output or intermediate, told apart by `type`. */
export type OutputField = QuantityOutput<KindName> | ChoiceOutput | CountOutput | TextOutput | TableOutput;
/** Outputs or intermediates by key, in the order in which they are shown. */
export type Outputs = Readonly<Record<string, OutputField>>;

interface Described {
  readonly label: string;
  readonly description?: string;
}

type Optional<F> = Omit<F, 'optional'> & { readonly optional: true };
type Required<F> = Omit<F, 'optional'> & { readonly optional: false };

/** An output that is a quantity; `digits` defaults to 4 and `leastDigits` to 3. */
export function quantityOutput<K extends KindName>(
  kind: Kind<K>,
  options: Described & {
    readonly symbol: string;
    readonly digits?: number;
    readonly leastDigits?: number;
    readonly units?: readonly Parameters<Kind<K>['in']>[1][];
  },
): Required<QuantityOutput<K>> {
  const digits = options.digits ?? 4;
  if (digits < 1 || digits > 12) throw new Error(`${options.label}: digits between 1 and 12`);
  const leastDigits = Math.min(digits, options.leastDigits ?? 3);
  return { type: 'quantity', kind, ...options, digits, leastDigits, units: options.units ?? kind.units, optional: false };
}

/** An output that is one of named possibilities; `options` are their keys with the words a person reads. */
export function choiceOutput<const O extends string>(
  options: Described & { readonly options: Readonly<Record<O, string>> },
): Required<ChoiceOutput<O>> {
  return { type: 'choice', ...options, optional: false };
}

/** An output that is a whole number. */
export function countOutput(options: Described & { readonly symbol: string }): Required<CountOutput> {
  return { type: 'count', ...options, optional: false };
}

/** An output that is a sentence or a name. */
export function textOutput(options: Described): Required<TextOutput> {
  return { type: 'text', ...options, optional: false };
}

/** An output that is rows with the same columns; `plot` says which column to draw over which. */
export function tableOutput<const C extends Columns>(
  options: Described & { readonly columns: C; readonly plot?: { readonly x: keyof C & string; readonly y: readonly (keyof C & string)[] } },
): Required<TableOutput<C>> {
  return { type: 'table', ...options, optional: false };
}

/**
 * Mark what may be missing: an input that may be left out, or an output that does not exist for every input, and is then
 * `undefined`, never a made-up number.
 */
export function optional<F extends OutputField>(field: F): Optional<F>;
export function optional<S extends z.core.$ZodType>(schema: S): z.core.$ZodOptional<S>;
export function optional(field: OutputField | z.core.$ZodType): unknown {
  return '_zod' in field ? optionalInput(field) : { ...field, optional: true };
}

type PresentValue<F> = F extends { readonly type: 'quantity'; readonly kind: Kind<infer K> }
  ? Quantity<K>
  : F extends { readonly type: 'choice'; readonly options: Readonly<Record<infer O, string>> }
    ? O
    : F extends { readonly type: 'count' }
      ? number
      : F extends { readonly type: 'text' }
        ? string
        : F extends { readonly type: 'table'; readonly columns: infer C }
          ? readonly ValuesOf<C>[]
          : never;

type ValueOf<F> = F extends { readonly optional: true } ? PresentValue<F> | undefined : PresentValue<F>;

/** The values that fields describe, as results give them: branded SI numbers for quantities. */
export type ValuesOf<O> = { readonly [Key in keyof O]: ValueOf<O[Key]> };

type PlainPresent<F> = F extends { readonly type: 'quantity' }
  ? number
  : F extends { readonly type: 'table'; readonly columns: infer C }
    ? readonly PlainValuesOf<C>[]
    : PresentValue<F>;
type PlainValue<F> = F extends { readonly optional: true } ? PlainPresent<F> | undefined : PlainPresent<F>;

/** What `compute` returns: the same values with plain SI numbers, as kernels give them. */
export type PlainValuesOf<O> = { readonly [Key in keyof O]: PlainValue<O[Key]> };

/** What a result keeps of a value: of the rows of a table the columns that it declares. */
export function declared(field: OutputField, value: unknown): unknown {
  if (field.type !== 'table' || value === undefined) return value;
  const keys = Object.keys(field.columns);
  return (value as readonly Readonly<Record<string, unknown>>[]).map((row) => Object.fromEntries(keys.map((key) => [key, row[key]])));
}
