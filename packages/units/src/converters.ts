import { fromSI, toSI } from './convert.js';
import { UnitError } from './issue.js';
import { type Kind, kindData } from './kind.js';
import type { KindName, UnitData, UnitOf } from './types.js';

function unitNamed<K extends KindName>(kind: Kind<K>, id: string): UnitData {
  const data = kindData(kind as unknown as Kind<KindName>);
  const unit = data.units.get(id);
  if (unit === undefined) throw new UnitError({ code: 'unknown_unit', text: id, unit: id, candidates: data.order.slice(0, 6) });
  return unit;
}

/**
 * The conversion of one unit to SI, looked up once for many numbers; it gives the same number to the last bit as reading the
 * quantity does. It checks nothing: a number that is not finite, or below what can exist, comes out as it went in.
 *
 * @throws `UnitError` for an unknown unit
 */
export function numbersToSI<K extends KindName>(kind: Kind<K>, unit: UnitOf<K>): (value: number) => number {
  const data = unitNamed(kind, unit);
  return (value) => toSI(value, data);
}

/**
 * The conversion of SI to one unit, looked up once for many numbers.
 *
 * @throws `UnitError` for an unknown unit
 */
export function numbersFromSI<K extends KindName>(kind: Kind<K>, unit: UnitOf<K>): (si: number) => number {
  const data = unitNamed(kind, unit);
  return (si) => fromSI(si, data);
}
