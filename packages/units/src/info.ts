import { changeFromSI } from './convert.js';
import { rows, sources } from './generated/info.js';
import * as allData from './generated/units.js';
import type { KindData, KindName } from './types.js';

/** Everything that is known of a unit, with its exact factor as text and where that comes from. */
export interface UnitInfo {
  readonly id: string;
  readonly symbol: string;
  readonly name: string;
  readonly kind: KindName;
  /** Exact factor to the base unit: decimals, products and quotients. */
  readonly factor: string;
  /** Added before the factor applies, for °C and °F. */
  readonly offset?: string;
  /** Counts the other way round: base = factor / value. */
  readonly reciprocal?: boolean;
  /** False where the factor itself is a measured or rounded number. */
  readonly exact: boolean;
  readonly source: string;
  readonly aliases: readonly string[];
}

const byKind = new Map((Object.values(allData) as KindData[]).map((data) => [data.kind, data]));

export function unitInfo(kind: KindName, unit: string): UnitInfo | undefined {
  const data = byKind.get(kind);
  if (data === undefined || !Object.hasOwn(data.units, unit)) return undefined;
  const own = data.units[unit];
  const row = rows[kind]?.[unit];
  if (own === undefined || row === undefined) return undefined;
  const [name, factor, exact, source, extra] = row;
  return {
    id: unit,
    symbol: own.symbol,
    name,
    kind,
    factor,
    ...(extra === 'reciprocal' ? { reciprocal: true } : extra === undefined ? {} : { offset: extra }),
    exact,
    source: sources[source] ?? source,
    aliases: own.aliases.split(' ').filter((alias) => alias !== ''),
  };
}

/** The sign of a unit as people write it; empty for the unit one, the id itself where it is not known. */
export function unitSymbol(kind: KindName, unit: string): string {
  const units = byKind.get(kind)?.units;
  return units !== undefined && Object.hasOwn(units, unit) ? (units[unit]?.symbol ?? unit) : unit;
}

/** A small difference (SI) in a unit: scale only, no offset. Reciprocal units need the value at which it lies. */
export function differenceInUnit(kind: KindName, delta: number, unit: string, at = 1): number {
  const units = byKind.get(kind)?.units;
  const own = units !== undefined && Object.hasOwn(units, unit) ? units[unit] : undefined;
  return own === undefined ? Number.NaN : changeFromSI(delta, own, at);
}
