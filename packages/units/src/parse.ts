import { changeToSI, toSI } from './convert.js';
import type { NumberProblem, UnitIssue } from './issue.js';
import { lookUpUnit } from './lookup.js';
import { type NumberText, readNumber } from './number-text.js';
import { hasControlCharacter, longestText, plainText } from './spelling.js';
import type { KindData, KindName, Quantity, UnitData, UnitOf } from './types.js';

/** A quantity that was read, with what the text said beyond its SI value. */
export interface Parsed<K extends KindName> {
  readonly ok: true;
  readonly quantity: Quantity<K>;
  /** The number as it was typed. */
  readonly value: number;
  readonly unit: UnitOf<K>;
  readonly significantDigits: number;
  /** SI, as a difference. */
  readonly uncertainty?: number;
  readonly uncertaintyInUnit?: number;
}

export type ParseResult<K extends KindName> = Parsed<K> | { readonly ok: false; readonly issue: UnitIssue };

type Result = { readonly ok: true; readonly parsed: Omit<Parsed<KindName>, 'ok'> } | { readonly ok: false; readonly issue: UnitIssue };

const plusMinus = /\s*(?:±|\+\/-|\+-)\s*/;

function notANumber(text: string, reason: NumberProblem): Result {
  return { ok: false, issue: { code: 'not_a_number', text: text.slice(0, longestText), reason } };
}

function resolveUnit(data: KindData, typed: string, text: string): string | { readonly ok: false; readonly issue: UnitIssue } {
  if (typed === '') {
    if (data.base === '1') return '1';
    return { ok: false, issue: { code: 'missing_unit', text, expected: data.kind as KindName, candidates: data.order } };
  }
  const looked = lookUpUnit(data, typed);
  if ('found' in looked) return looked.found;
  if ('ambiguous' in looked) return { ok: false, issue: { code: 'ambiguous_unit', text, unit: typed, candidates: looked.ambiguous } };
  if ('otherKinds' in looked) {
    return { ok: false, issue: { code: 'wrong_kind', text, unit: typed, expected: data.kind as KindName, found: looked.otherKinds } };
  }
  return { ok: false, issue: { code: 'unknown_unit', text, unit: typed, candidates: looked.candidates } };
}

/** `1:4` is four parts of diluent to one of concentrate; `2:3` is one and a half. */
function readParts(data: KindData, text: string): Result | undefined {
  const parts = /^(\d+(?:[.,]\d+)?) ?: ?(\d+(?:[.,]\d+)?)$/.exec(text);
  if (parts === null || data.kind !== 'dilutionRatio') return undefined;
  const [first, second] = [parts[1] ?? '', parts[2] ?? ''].map((part) => Number(part.replace(',', '.')));
  if (first === undefined || second === undefined || first === 0) return notANumber(text, 'not_finite');
  const digits = Math.min(...[parts[1] ?? '', parts[2] ?? ''].map((part) => part.replace(/\D/g, '').length + 2));
  const value = second / first;
  return { ok: true, parsed: { quantity: value as Quantity<KindName>, value, unit: '1' as UnitOf<KindName>, significantDigits: digits } };
}

interface Spread {
  readonly head: string;
  readonly tail?: string;
}

/** Cut `360 ± 5 mbar` in two; brackets around the number pair are dropped. */
function cutAtPlusMinus(text: string): Spread {
  const bracketed = /^\(([^()]*)\) ?(.*)$/.exec(text);
  const flat = bracketed !== null && plusMinus.test(bracketed[1] ?? '') ? `${bracketed[1]} ${bracketed[2]}` : text;
  const found = plusMinus.exec(flat);
  if (found === null || found.index === 0) return { head: flat };
  return { head: flat.slice(0, found.index), tail: flat.slice(found.index + found[0].length) };
}

function unitAfter(text: string, number: NumberText): string {
  return text.slice(number.length).trim();
}

/** Read `<number> <unit>` with an optional `±` part. Looks at no more than 200 signs. */
export function parseText(data: KindData, raw: string): Result {
  if (raw.length > longestText) return notANumber(raw, 'too_long');
  if (hasControlCharacter(raw)) return notANumber(raw, 'control_character');
  const text = plainText(raw);
  if (text === '') return notANumber(raw, 'empty');
  const parts = readParts(data, text);
  if (parts !== undefined) return parts;
  const { head, tail } = cutAtPlusMinus(text);
  const number = readNumber(head);
  if (typeof number === 'string') return notANumber(raw, number);
  const spread = tail === undefined ? undefined : readNumber(tail);
  if (typeof spread === 'string') return notANumber(raw, spread);
  if (spread !== undefined && spread.value < 0) return notANumber(raw, 'negative_uncertainty');
  const headUnit = unitAfter(head, number);
  const tailUnit = spread === undefined || tail === undefined ? '' : unitAfter(tail, spread);
  const relative = spread !== undefined && tailUnit === '%' && headUnit !== '';
  const typed = headUnit !== '' ? headUnit : tailUnit;
  const unitId = resolveUnit(data, typed, raw);
  if (typeof unitId !== 'string') return unitId;
  const finished = finish(data, raw, number.value, unitId, number.significantDigits);
  if (!finished.ok || spread === undefined) return finished;
  const spreadUnit = relative || headUnit === '' || tailUnit === '' ? unitId : resolveUnit(data, tailUnit, raw);
  if (typeof spreadUnit !== 'string') return spreadUnit;
  const width = relative ? (spread.value / 100) * Math.abs(number.value) : spread.value;
  const unit = data.units[spreadUnit] as UnitData;
  const own = data.units[unitId] as UnitData;
  const si = changeToSI(width, unit, number.value);
  return {
    ok: true,
    parsed: { ...finished.parsed, uncertainty: si, uncertaintyInUnit: spreadUnit === unitId ? width : si / own.factor },
  };
}

/** Check and convert a number whose unit is known. */
export function finish(data: KindData, text: string, value: number, unitId: string, significantDigits: number): Result {
  const unit = data.units[unitId] as UnitData;
  const quantity = toSI(value, unit);
  if (!Number.isFinite(value) || !Number.isFinite(quantity)) return notANumber(text, 'not_finite');
  if (data.floor && quantity < 0) {
    const limit = unit.offset === undefined ? 0 : -unit.offset;
    return { ok: false, issue: { code: 'below_absolute_zero', text: text.slice(0, longestText), unit: unitId, limit } };
  }
  return { ok: true, parsed: { quantity: quantity as Quantity<KindName>, value, unit: unitId as UnitOf<KindName>, significantDigits } };
}

/** Read the record form: a number and a unit's spelling. */
export function parseRecord(data: KindData, value: number, typed: string): Result {
  const text = `${value} ${typed.slice(0, longestText)}`;
  if (!Number.isFinite(value)) return notANumber(text, 'not_finite');
  if (typed.length > longestText) return notANumber(text, 'too_long');
  if (hasControlCharacter(typed)) return notANumber(text, 'control_character');
  const unitId = resolveUnit(data, plainText(typed), text);
  if (typeof unitId !== 'string') return unitId;
  const digits = String(Math.abs(value)).replace(/e.*$/, '').replace('.', '').replace(/^0+/, '').length;
  return finish(data, text, value, unitId, Math.max(1, Math.min(12, digits)));
}
