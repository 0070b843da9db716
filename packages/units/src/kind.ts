import { fromSI } from './convert.js';
import { type FormatOptions, formatQuantity } from './format.js';
import { UnitError } from './issue.js';
import { finish, type ParseResult, parseRecord, parseText } from './parse.js';
import type { Dimension, KindData, KindName, Quantity, UnitData, UnitOf } from './types.js';

/**
 * A kind of quantity: finer than a dimension. Absolute, gauge and differential pressure are three kinds.
 *
 * Called with a number and a unit it makes a quantity, which is a plain SI number whose type carries the kind.
 */
export interface Kind<K extends KindName> {
  /** Make a quantity. Throws `UnitError` for a number that is not finite, an unknown unit, or a value that cannot exist. */
  (value: number, unit: UnitOf<K>): Quantity<K>;
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
  /** The number in a unit. */
  in(quantity: Quantity<K>, unit: UnitOf<K>): number;
  /** Read `"360 mbar"`, `"36,0 kPa"`, `"360 ± 5 mbar"`, or a number and a unit's spelling. Never throws. */
  parse(text: string): ParseResult<K>;
  parse(value: number, unit: string): ParseResult<K>;
  /** Write a quantity so that a person and `parse` can read it; in the most usual unit unless one is named. */
  format(quantity: Quantity<K>, unit?: UnitOf<K>, options?: FormatOptions): string;
}

function unitData(data: KindData, id: string): UnitData {
  const unit = Object.hasOwn(data.units, id) ? data.units[id] : undefined;
  if (unit === undefined) throw new UnitError({ code: 'unknown_unit', text: id, unit: id, candidates: data.order });
  return unit;
}

/** Make the callable of a kind from its data. */
export function makeKind<K extends KindName>(data: KindData & { readonly kind: K }): Kind<K> {
  const make = (value: number, unit: string): Quantity<K> => {
    unitData(data, unit);
    const result = finish(data, `${value} ${unit}`, value, unit, 1);
    if (!result.ok) throw new UnitError(result.issue);
    return result.parsed.quantity as number as Quantity<K>;
  };
  const parse = (first: string | number, unit?: string): ParseResult<K> => {
    const result = typeof first === 'string' ? parseText(data, first) : parseRecord(data, first, unit ?? '');
    return (result.ok ? { ok: true, ...result.parsed } : result) as unknown as ParseResult<K>;
  };
  return Object.assign(make, {
    kind: data.kind,
    label: data.label,
    dimension: data.dimension,
    baseUnit: data.base as UnitOf<K>,
    units: data.order as readonly UnitOf<K>[],
    si: (value: number) => value as Quantity<K>,
    in: (quantity: Quantity<K>, unit: UnitOf<K>) => fromSI(quantity, unitData(data, unit)),
    parse,
    format: (quantity: Quantity<K>, unit?: UnitOf<K>, options: FormatOptions = {}) => {
      const id = unit ?? data.order[0] ?? data.base;
      unitData(data, id);
      return formatQuantity(data, quantity, id, options);
    },
  }) as Kind<K>;
}
