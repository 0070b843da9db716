/**
 * Decimal text in, decimal text out: conversion and reading without binary rounding.
 *
 * @module
 */
import { type ExactNumber, exactChangeToSI, exactFromSI, exactText, exactToSI, hasExactFactor, rational } from './exact-convert.js';
import type { Rational } from './factor-text.js';
import { kinds } from './generated/kinds.js';
import { notANumber, type Refused, refuse, type UnitIssue } from './issue.js';
import { type Kind, kindData } from './kind.js';
import { readNumber } from './number-text.js';
import { unitOf } from './parse.js';
import { readQuantityText, resolveUnit } from './quantity-text.js';
import { hasControlCharacter, longestText, plainText } from './spelling.js';
import type { KindData, KindName, UnitOf } from './types.js';

export type { ExactNumber } from './exact-convert.js';

/** How a result without end is written. */
export interface ExactOptions {
  /** Significant digits of a result whose decimals have no end, 1 to 1000; 30 unless stated. A result that ends is never cut. */
  readonly digits?: number;
}

/** What an exact conversion gives: the number as text, or a coded issue. */
export type ExactResult = ({ readonly ok: true } & ExactNumber) | { readonly ok: false; readonly issue: UnitIssue };

/** What exact reading gives: the number as it was typed and in SI, or a coded issue. */
export type ExactParseResult<K extends KindName> =
  | {
      readonly ok: true;
      /** The number as typed, in plain decimal form. */
      readonly value: ExactNumber;
      readonly unit: UnitOf<K>;
      readonly significantDigits: number;
      readonly si: ExactNumber;
      /** SI, as a difference. */
      readonly uncertainty?: ExactNumber;
    }
  | { readonly ok: false; readonly issue: UnitIssue };

function dataOf(kind: KindName): KindData {
  if (!Object.hasOwn(kinds, kind)) throw new RangeError(`no kind of quantity is called ${kind}`);
  return kindData(kinds[kind] as unknown as Kind<KindName>);
}

/** SI value of a number in a unit, or why there is none. */
function checkedSI(data: KindData, text: string, value: Rational, unitId: string): { readonly si: Rational } | Refused {
  const unit = unitOf(data, unitId);
  if (unit.reciprocal && value.over.isZero()) return notANumber(text, 'not_finite');
  const si = exactToSI(value, unit);
  if (data.floor && si.over.isNegative() && !si.over.isZero()) {
    return refuse({ code: 'below_absolute_zero', text, unit: unitId, limit: unit.offset === 0 ? 0 : -unit.offset });
  }
  return { si };
}

/**
 * Convert a number given as decimal text, `'36.0'` or `'36,0'`, from one unit of a kind to another without binary
 * rounding. All decimals are given where they end; where they do not, the result is rounded once, at the end, and says so.
 * Bad text or an unknown unit comes back as an issue.
 *
 * @example
 * convertExact('volume', '1', 'gal_US', 'L') // { ok: true, text: '3.785411784', exact: true, rounded: false }
 */
export function convertExact<K extends KindName>(
  kind: K,
  decimalText: string,
  from: UnitOf<K>,
  to: UnitOf<K>,
  options: ExactOptions = {},
): ExactResult {
  const data = dataOf(kind);
  if (decimalText.length > longestText) return notANumber(decimalText, 'too_long');
  if (hasControlCharacter(decimalText)) return notANumber(decimalText, 'control_character');
  const number = readNumber(plainText(decimalText));
  if (typeof number === 'string') return notANumber(decimalText, decimalText.trim() === '' ? 'empty' : number);
  if (number.rest !== '') return notANumber(decimalText, 'not_numeric');
  const [source, target] = [resolveUnit(data, from, from), resolveUnit(data, to, to)];
  if (typeof source !== 'string') return source;
  if (typeof target !== 'string') return target;
  const value = rational(number.decimal);
  const checked = checkedSI(data, `${decimalText} ${from}`, value, source);
  if ('ok' in checked) return checked;
  if (source === target) return { ok: true, ...exactText(value, true, options.digits) };
  const unit = unitOf(data, target);
  if (unit.reciprocal && checked.si.over.isZero()) return notANumber(`${decimalText} ${from}`, 'not_finite');
  const exactFactors = hasExactFactor(unitOf(data, source)) && hasExactFactor(unit);
  return { ok: true, ...exactText(exactFromSI(checked.si, unit), exactFactors, options.digits) };
}

/**
 * Read `'95 mbar'`, `'9,5 kPa'`, `'95 ± 2 mbar'` or `'1:4'` as `parse` does, but keep the decimals: the number as typed
 * and its SI value come back as text. Never throws on text.
 */
export function parseExact<K extends KindName>(kind: K, text: string, options: ExactOptions = {}): ExactParseResult<K> {
  const data = dataOf(kind);
  const read = readQuantityText(data, text);
  if (!read.ok) return read;
  const value = rational(read.number.decimal, read.divisor?.decimal);
  const checked = checkedSI(data, text, value, read.unit);
  if ('ok' in checked) return checked;
  const own = unitOf(data, read.unit);
  const exactFactor = hasExactFactor(own);
  const result = {
    ok: true as const,
    value: exactText(value, true, options.digits),
    unit: read.unit as UnitOf<K>,
    significantDigits: read.number.significantDigits,
    si: exactText(checked.si, exactFactor, options.digits),
  };
  if (read.spread === undefined) return result;
  if ('percent' in read.spread) {
    const width = { over: value.over.abs().times(read.spread.percent.decimal), under: value.under.times(100) };
    return { ...result, uncertainty: exactText(exactChangeToSI(width, own, value), exactFactor, options.digits) };
  }
  const unit = unitOf(data, read.spread.unit);
  if (unit.reciprocal && checked.si.over.isZero()) return notANumber(text, 'not_finite');
  const width = exactChangeToSI(rational(read.spread.number.decimal), unit, exactFromSI(checked.si, unit));
  return { ...result, uncertainty: exactText(width, hasExactFactor(unit), options.digits) };
}
