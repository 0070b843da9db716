import { changeFromSI, fromSI } from './convert.js';
import { labelFromName, symbolFromId } from './derived-text.js';
import { type FormatOptions, formatQuantity } from './format.js';
import { UnitError } from './issue.js';
import { remember } from './lookup.js';
import { finish, type ParseResult, parseRecord, parseText } from './parse.js';
import type { Dimension, KindData, KindName, KindRow, Quantity, UnitData, UnitOf, UnitRow } from './types.js';

interface Call<K extends KindName> {
  call(value: number, unit: UnitOf<K>): Quantity<K>;
}
/** Taken from a method, so that the kind of volume, say, is also a kind of anything: `Kind<'volume'>` is a `Kind<KindName>`. */
type Make<K extends KindName> = Call<K>['call'];

/**
 * A kind of quantity: finer than a dimension. Absolute, gauge and differential pressure are three kinds.
 *
 * Called with a number and a unit it makes a quantity, which is a plain SI number whose type carries the kind. It throws
 * `UnitError` for a number that is not finite, an unknown unit, or a value that cannot exist.
 */
export interface Kind<K extends KindName> extends Make<K> {
  readonly kind: K;
  /** In words: `differential pressure`. */
  readonly label: string;
  readonly dimension: Dimension;
  /** The coherent SI unit. */
  readonly baseUnit: UnitOf<K>;
  /** All units, most usual first. */
  readonly units: readonly UnitOf<K>[];
  /** Brand a number that is already SI; nothing is checked. */
  si(value: number): Quantity<K>;
  /** The number in a unit. Throws `UnitError` for an unknown unit. */
  in(quantity: Quantity<K>, unit: UnitOf<K>): number;
  /**
   * A small difference, given in SI, in a unit: scale only, no offset. Reciprocal units such as mpg need the SI value at
   * which the difference lies. Throws `UnitError` for an unknown unit.
   */
  differenceIn(delta: number, unit: UnitOf<K>, at?: number): number;
  /** The sign of a unit as people write it, such as `m³/h`; empty for the unit one. Throws `UnitError` for an unknown unit. */
  symbol(unit: UnitOf<K>): string;
  /** Read `"95 mbar"`, `"9,5 kPa"`, `"95 ± 2 mbar"`. Never throws: what cannot be read comes back as an issue. */
  parse(text: string): ParseResult<K>;
  /** Read a number, or its text, and a unit's spelling, as a record holds them. Never throws. */
  parse(value: number | string, unit: string): ParseResult<K>;
  /** Write a quantity so that a person and `parse` can read it; in the most usual unit unless one is named. */
  format(quantity: Quantity<K>, unit?: UnitOf<K>, options?: FormatOptions): string;
}

function unitData([id, symbol, name, aliases, source, factor, factorText, shift]: UnitRow): UnitData {
  return {
    id,
    symbol: symbol ?? symbolFromId(id),
    name,
    aliases: aliases === '' ? [] : aliases.split(' '),
    source,
    factor,
    factorText: factorText || String(factor),
    offset: typeof shift === 'number' ? shift : 0,
    reciprocal: shift === 'reciprocal',
  };
}

const dataOfKind = new WeakMap<object, KindData>();

/** The data behind a kind, for the modules of this package. */
export function kindData(kind: Kind<KindName>): KindData {
  const data = dataOfKind.get(kind);
  if (data === undefined) throw new TypeError('not a kind of quantity');
  return data;
}

/** Make the callable of a kind from its data. */
export function makeKind<K extends KindName>(row: KindRow<K>): Kind<K> {
  const units = new Map(row.units.map((unit) => [unit[0], unitData(unit)]));
  const order = [...units.keys()];
  const { base, floor = false, ambiguous = [], label = labelFromName(row.kind) } = row;
  const data: KindData = { kind: row.kind, label, base, floor, order, units, ambiguous };
  remember(data);
  const unitNamed = (id: string): UnitData => {
    const unit = units.get(id);
    if (unit === undefined) throw new UnitError({ code: 'unknown_unit', text: id, unit: id, candidates: order.slice(0, 6) });
    return unit;
  };
  const make = (value: number, unit: string): Quantity<K> => {
    const result = finish(data, `${value} ${unit}`, value, unitNamed(unit).id, 1);
    if (!result.ok) throw new UnitError(result.issue);
    return result.quantity as number as Quantity<K>;
  };
  const [length, mass, time, temperature, amount, current] = row.dimension;
  const kind = Object.assign(make, {
    kind: row.kind,
    label,
    dimension: { length, mass, time, temperature, amount, current },
    baseUnit: base,
    units: order as readonly string[] as readonly UnitOf<K>[],
    si: (value: number) => value as Quantity<K>,
    in: (quantity: Quantity<K>, unit: UnitOf<K>) => fromSI(quantity, unitNamed(unit)),
    differenceIn: (delta: number, unit: UnitOf<K>, at = 1) => changeFromSI(delta, unitNamed(unit), at),
    symbol: (unit: UnitOf<K>) => unitNamed(unit).symbol,
    parse: (first: unknown, unit?: unknown) =>
      (typeof first === 'string' && typeof unit !== 'string'
        ? parseText(data, first)
        : parseRecord(data, first, unit)) as unknown as ParseResult<K>,
    format: (quantity: Quantity<K>, unit?: UnitOf<K>, options: FormatOptions = {}) =>
      formatQuantity(row.kind, quantity, unitNamed(unit ?? order[0] ?? base), options),
  });
  dataOfKind.set(kind, data);
  return kind;
}
