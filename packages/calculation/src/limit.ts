import { formatNumber, type Kind, type KindName, typeableNumber } from '@wallflow/units';
import type { LimitInUnit } from './issue.js';
import { readable } from './readable.js';

type UnitIn<K extends KindName> = Parameters<Kind<K>['in']>[1];

/** Digits of a limit that a person reads; more only where fewer would leave the allowed range by much. */
const digits = 6;

/** Whether a unit counts the other way round, as miles per gallon do for fuel use. */
export function isInverted<K extends KindName>(kind: Kind<K>, unit: string): boolean {
  return kind.in(kind.si(2), unit as UnitIn<K>) < kind.in(kind.si(1), unit as UnitIn<K>);
}

/** A number with its unit as a person types it: parts of a mix with a colon, nothing after a number that has no unit. */
function numberText<K extends KindName>(kind: Kind<K>, number: number, unit: string): string {
  const symbol = kind.symbol(unit as UnitIn<K>);
  const written = readable(formatNumber(number));
  if (symbol !== '') return `${typeableNumber(written, unit)} ${symbol}`;
  return kind.kind === 'dilutionRatio' ? `1:${written}` : written;
}

/** A quantity with at most six digits and none that say nothing: `5 mbar`, not `5.00000 mbar`. */
export function shortText<K extends KindName>(kind: Kind<K>, si: number, unit: string): string {
  return numberText(kind, Number(kind.in(kind.si(si), unit as UnitIn<K>).toPrecision(digits)), unit);
}

/** The next number with few digits in a direction, unless the number has few digits itself. */
function roundTowards(value: number, up: boolean): number {
  const nearest = Number(value.toPrecision(digits));
  const noise = 1e-12 * Math.abs(value);
  if (up ? nearest >= value - noise : nearest <= value + noise) return nearest;
  const step = 10 ** (Math.floor(Math.log10(Math.abs(value))) - digits + 1);
  return Number((nearest + (up ? step : -step)).toPrecision(digits + 1));
}

/**
 * A limit in the unit that the user typed, rounded into the allowed range: what a message names can be typed. In a unit in which
 * the limit is no number, as no fuel use is in miles per gallon, it stands in the base unit.
 */
export function limitInUnit<K extends KindName>(
  kind: Kind<K>,
  limit: { readonly si: number; readonly end: 'min' | 'max'; readonly inclusive: boolean },
  wanted: string,
): LimitInUnit {
  const { si, end, inclusive } = limit;
  const unit = Number.isFinite(kind.in(kind.si(si), wanted as UnitIn<K>)) ? wanted : kind.baseUnit;
  const exact = kind.in(kind.si(si), unit as UnitIn<K>);
  // A temperature scale loses digits with its zero: −60 °C is 213.15 K, and comes back as −60.00000000000003 °C.
  const settled = Math.abs(exact) < 1e-9 * Math.abs(kind.differenceIn(si, unit as UnitIn<K>, si || 1)) ? 0 : exact;
  const value = roundTowards(settled, (end === 'min') !== isInverted(kind, unit));
  return { value, unit, text: numberText(kind, value, unit), inclusive };
}
