import type { KindName, Quantity, UnitOf } from '@wallflow/units';
import type * as z from 'zod/mini';
import type { Failure, Uncertainty } from '../definition.js';
import type { Issue, Warning } from '../issue.js';
import type { Columns, Outputs, ValuesOf } from '../outputs.js';

/** Units of a checked input that is a quantity; any text where the types of a calculation are not known. */
type UnitsOfValue<T> = 0 extends 1 & T ? string : [T] extends [Quantity<infer K extends KindName>] ? UnitOf<K> : never;

/** A unit for any of the inputs that are quantities. */
export type InputUnits<I extends z.core.$ZodObject> = {
  readonly [Key in keyof z.output<I> as UnitsOfValue<NonNullable<z.output<I>[Key]>> extends never ? never : Key]?: UnitsOfValue<
    NonNullable<z.output<I>[Key]>
  >;
};

type UnitsOfField<F> = 0 extends 1 & F
  ? string
  : F extends { readonly type: 'quantity'; readonly kind: { readonly kind: infer K extends KindName } }
    ? UnitOf<K>
    : never;

/** A unit for any of the results that are quantities. */
export type ResultUnits<V extends Outputs> = {
  readonly [Key in keyof V as UnitsOfField<V[Key]> extends never ? never : Key]?: UnitsOfField<V[Key]>;
};

/** A number in the unit that was said for its column; as text it is read as a typed number is. */
type Cell = number | string;

/** One row: numbers where a unit was said, all else as `run` takes it; what `given` holds may be left out. */
export type Row<I extends z.core.$ZodObject, U, G> = {
  readonly [Key in keyof z.input<I> as Key extends keyof G ? never : Key]: Key extends keyof U ? RowCell<z.input<I>[Key]> : z.input<I>[Key];
} & { readonly [Key in keyof G & keyof z.input<I>]?: Key extends keyof U ? Cell : z.input<I>[Key] };
type RowCell<T> = undefined extends T ? Cell | undefined : Cell;

/** Columns of equal length: numbers of those with a unit, of the others any list of what `run` takes. */
export type InputColumns<I extends z.core.$ZodObject, U, G> = {
  readonly [Key in keyof z.input<I> as Key extends keyof G ? never : Key]: Column<Key, z.input<I>[Key], U>;
} & { readonly [Key in keyof G & keyof z.input<I>]?: Column<Key, z.input<I>[Key], U> };
type Column<Key, T, U> = Key extends keyof U ? Float64Array | ArrayLike<RowCell<T>> : ArrayLike<T>;

/** A row that was worked out: what `run` gives of it in SI, without assumptions, advice and digits. */
export interface RowSuccess<O extends Outputs, M extends Outputs> {
  readonly ok: true;
  readonly outputs: ValuesOf<O>;
  readonly intermediates: ValuesOf<M>;
  readonly warnings: readonly Warning[];
  readonly method: string;
  /** Where a value of the row had a ±. */
  readonly uncertainty?: Uncertainty;
}

/** A row, worked out or refused. */
export type RowResult<O extends Outputs, M extends Outputs> = RowSuccess<O, M> | Failure;

/** What is wrong with a row, counted from 0. */
export interface RowIssues {
  readonly row: number;
  readonly issues: readonly Issue[];
}

/** What a user must know of a row, counted from 0. */
export interface RowWarnings {
  readonly row: number;
  readonly warnings: readonly Warning[];
}

type ColumnOf<F> = F extends { readonly type: 'quantity' | 'count' }
  ? Float64Array
  : F extends { readonly type: 'choice'; readonly options: Readonly<Record<infer O, string>> }
    ? (O | undefined)[]
    : F extends { readonly type: 'table'; readonly columns: infer C extends Columns }
      ? (readonly ValuesOf<C>[] | undefined)[]
      : (string | undefined)[];

/** Results in columns: not a number, or nothing, where a row was refused or has no such result. */
export interface ColumnResult<V extends Outputs> {
  readonly rows: number;
  readonly results: { readonly [Key in keyof V]: ColumnOf<V[Key]> };
  readonly issues: readonly RowIssues[];
  readonly warnings: readonly RowWarnings[];
}
