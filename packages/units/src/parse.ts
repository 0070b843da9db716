import { changeFromSI, changeToSI, fromSI, toSI } from './convert.js';
import { notANumber, type Refused, refuse, type UnitIssue } from './issue.js';
import { type QuantityText, readQuantityText, resolveUnit, resolveUnitOf } from './quantity-text.js';
import { hasControlCharacter, longestText, plainText, shortText } from './spelling.js';
import { readTypedNumber } from './typed-number.js';
import type { KindData, KindName, Quantity, UnitData, UnitOf } from './types.js';

/** A quantity that was read, with what the text said beyond its SI value. */
export interface Parsed<K extends KindName> {
  readonly ok: true;
  readonly quantity: Quantity<K>;
  /** The number as it was typed. */
  readonly value: number;
  readonly unit: UnitOf<K>;
  /** How many digits were typed, leading zeros left out; trailing zeros count. */
  readonly significantDigits: number;
  /** SI, as a difference. */
  readonly uncertainty?: number;
  /** The uncertainty in the unit of the value. */
  readonly uncertaintyInUnit?: number;
  /** Units that the spelling means as well, where they differ by less than the digits typed and the conventional one was taken. */
  readonly alternatives?: readonly string[];
}

/** What reading a text or record gives: the quantity, or a coded issue. */
export type ParseResult<K extends KindName> = Parsed<K> | { readonly ok: false; readonly issue: UnitIssue };

type Finished = Omit<Parsed<KindName>, 'ok' | 'unit'> & { readonly ok: true; readonly unit: string };

export function unitOf(data: KindData, id: string): UnitData {
  const unit = data.units.get(id);
  if (unit === undefined) throw new RangeError(`${data.kind} has no unit ${id}`);
  return unit;
}

/** Check and convert a number whose unit is known. */
export function finish(data: KindData, text: string, value: number, unitId: string, significantDigits: number): Finished | Refused {
  const unit = unitOf(data, unitId);
  const quantity = toSI(value, unit);
  if (!Number.isFinite(value) || !Number.isFinite(quantity)) return notANumber(text, 'not_finite');
  if (data.floor && quantity < 0) {
    return refuse({ code: 'below_absolute_zero', text, unit: unitId, limit: unit.offset === 0 ? 0 : -unit.offset });
  }
  return { ok: true, quantity: quantity as Quantity<KindName>, value, unit: unitId, significantDigits };
}

function spreadToSI(data: KindData, read: QuantityText, value: number, quantity: number): number {
  const { spread } = read;
  if (spread === undefined) return 0;
  if ('percent' in spread) return changeToSI((spread.percent.value / 100) * Math.abs(value), unitOf(data, read.unit), value);
  const unit = unitOf(data, spread.unit);
  return changeToSI(spread.number.value, unit, unit.reciprocal ? fromSI(quantity, unit) : value);
}

/** Read `<number> <unit>` with an optional `±` part. */
export function parseText(data: KindData, raw: string): Finished | Refused {
  const read = readQuantityText(data, raw);
  if (!read.ok) return read;
  const { number, divisor, spread } = read;
  const value = divisor === undefined ? number.value : number.value / divisor.value;
  // Parts of a mix are counted, so that "1:4" says more than one digit would.
  const digits = divisor === undefined ? number.significantDigits : Math.min(number.significantDigits, divisor.significantDigits) + 2;
  const checked = finish(data, raw, value, read.unit, digits);
  if (!checked.ok) return checked;
  const finished = read.alternatives === undefined ? checked : { ...checked, alternatives: read.alternatives };
  if (spread === undefined) return finished;
  const uncertainty = spreadToSI(data, read, value, finished.quantity);
  if (!Number.isFinite(uncertainty)) return notANumber(raw, 'not_finite');
  const typedInUnit = 'number' in spread && spread.unit === read.unit;
  return {
    ...finished,
    uncertainty,
    uncertaintyInUnit: typedInUnit ? spread.number.value : changeFromSI(uncertainty, unitOf(data, read.unit), finished.quantity),
  };
}

/** Digits of a number that came as a number: those of its shortest decimal form. */
function digitsOf(value: number): number {
  const digits = String(Math.abs(value)).replace(/e.*$/, '').replace('.', '').replace(/^0+/, '');
  return Math.max(1, Math.min(12, digits.length));
}

/** A number and a unit that were typed apart: neither is taken for a part of the other. */
function parseApart(data: KindData, value: string, typed: string): Finished | Refused {
  // Parts of a mix say by themselves what they are.
  if (data.kind === 'dilutionRatio' && value.includes(':')) return parseText(data, value);
  const text = `${value} ${typed}`.trim();
  const number = readTypedNumber(value);
  if (typeof number === 'string') return notANumber(value, number);
  if (typed.length > longestText || hasControlCharacter(typed))
    return refuse({ code: 'unknown_unit', text, unit: shortText(typed), candidates: [] });
  const resolved = resolveUnitOf(data, plainText(typed), text, number);
  if ('ok' in resolved) return resolved;
  if (readTypedNumber(value, resolved.unit) === 'ambiguous_separator') return notANumber(value, 'ambiguous_separator');
  const found = finish(data, text, number.value, resolved.unit, number.significantDigits);
  return found.ok && resolved.alternatives !== undefined ? { ...found, alternatives: resolved.alternatives } : found;
}

/** Read the record form: a number and a unit's spelling. Takes anything, as data of unknown origin brings it. */
export function parseRecord(data: KindData, value: unknown, unit: unknown): Finished | Refused {
  const typed = typeof unit === 'string' ? unit : '';
  if (typeof value === 'string') return parseApart(data, value, typed);
  const text = `${typeof value === 'number' ? value : typeof value} ${shortText(typed)}`.trim();
  if (typeof value !== 'number') return notANumber(text, 'not_numeric');
  if (!Number.isFinite(value)) return notANumber(text, 'not_finite');
  if (typed.length > longestText) return notANumber(text, 'too_long');
  if (hasControlCharacter(typed)) return notANumber(text, 'control_character');
  // A number of a record was not typed, so that its digits settle no ambiguity of its unit.
  const unitId = resolveUnit(data, plainText(typed), text);
  return typeof unitId === 'string' ? finish(data, text, value, unitId, digitsOf(value)) : unitId;
}
