import { sources } from './generated/sources.js';
import { getKind } from './get-kind.js';
import { kindData } from './kind.js';
import type { KindName } from './types.js';

/** Everything that is known of a unit, with its exact factor as text and where that comes from. */
export interface UnitInfo {
  readonly id: string;
  /** As people write it: `m³/h`, `°C`, `inH₂O (4 °C)`. */
  readonly symbol: string;
  readonly name: string;
  readonly kind: KindName;
  /** Exact factor to the base unit: decimals, products and quotients, worked from left to right. */
  readonly factor: string;
  /** Added before the factor applies, for °C and °F. */
  readonly offset?: string;
  /** Counts the other way round: base = factor / value. */
  readonly reciprocal?: boolean;
  /** False where the factor itself is a measured or rounded number. */
  readonly exact: boolean;
  /** Where the factor comes from. */
  readonly source: string;
  /** Other spellings that are read, beside the id and the symbol. */
  readonly aliases: readonly string[];
}

/** What is known of a unit of a kind; undefined for a unit that the kind does not have. */
export function unitInfo(kind: KindName, unit: string): UnitInfo | undefined {
  const found = getKind(kind);
  const own = found === undefined ? undefined : kindData(found).units.get(unit);
  if (own === undefined) return undefined;
  return {
    id: unit,
    symbol: own.symbol,
    name: own.name,
    kind,
    factor: own.factorText.replace('~', ''),
    ...(own.offset === 0 ? {} : { offset: String(own.offset) }),
    ...(own.reciprocal ? { reciprocal: true } : {}),
    exact: !own.factorText.startsWith('~'),
    source: sources[own.source] ?? own.source,
    aliases: own.aliases,
  };
}

/** The sign of a unit as people write it; empty for the unit one, the id itself where it is not known. */
export function unitSymbol(kind: KindName, unit: string): string {
  const found = getKind(kind);
  return (found === undefined ? undefined : kindData(found).units.get(unit)?.symbol) ?? unit;
}

/**
 * A small difference, given in SI, in a unit: scale only, no offset. Reciprocal units need the SI value at which it lies.
 * NaN for a unit that the kind does not have.
 */
export function differenceInUnit(kind: KindName, delta: number, unit: string, at = 1): number {
  const found = getKind(kind);
  if (found === undefined || !kindData(found).units.has(unit)) return Number.NaN;
  return found.differenceIn(delta, unit as never, at);
}
