import { alikeUnits } from './alike-units.js';
import { notANumber, type Refused, refuse } from './issue.js';
import { lookUpUnit } from './lookup.js';
import { type NumberText, readNumber } from './number-text.js';
import { hasControlCharacter, longestText, plainText } from './spelling.js';
import { couldBeThousands } from './thousands.js';
import type { KindData } from './types.js';

/** A quantity's text taken apart: numbers still as decimal text, units found. */
export interface QuantityText {
  readonly ok: true;
  readonly number: NumberText;
  /** For parts such as `2:3` the number is 3 and is to be divided by 2. */
  readonly divisor?: NumberText;
  readonly unit: string;
  /** What else the spelling can mean, where the digits typed cannot tell it apart. */
  readonly alternatives?: readonly string[];
  readonly spread?: { readonly number: NumberText; readonly unit: string } | { readonly percent: NumberText };
}

const plusMinus = / ?(?:±|\+\/-|\+-) ?/;

/** A unit that was found, with those that its spelling could mean as well and that differ by less than the digits typed. */
interface Resolved {
  readonly unit: string;
  readonly alternatives?: readonly string[];
}

/** As `resolveUnit`, but where an ambiguity is smaller than the digits of the number, it is the conventional unit. */
export function resolveUnitOf(data: KindData, typed: string, text: string, number: NumberText): Resolved | Refused {
  const looked = typed === '' ? undefined : lookUpUnit(data, typed);
  if (looked === undefined || !('ambiguous' in looked)) {
    const unit = resolveUnit(data, typed, text);
    return typeof unit === 'string' ? { unit } : unit;
  }
  const unit = alikeUnits(data, looked.ambiguous, number.decimal);
  if (unit === undefined) return refuse({ code: 'ambiguous_unit', text, unit: typed, candidates: looked.ambiguous });
  return { unit, alternatives: looked.ambiguous.filter((other) => other !== unit) };
}

/** The unit that a spelling means in a kind; no spelling at all is the unit one, where the kind has it. */
export function resolveUnit(data: KindData, typed: string, text: string): string | Refused {
  const expected = data.kind;
  if (typed === '') {
    if (data.base === '1') return '1';
    return refuse({ code: 'missing_unit', text, expected, candidates: data.order.slice(0, 6) });
  }
  const looked = lookUpUnit(data, typed);
  if ('found' in looked) return looked.found;
  if ('ambiguous' in looked) return refuse({ code: 'ambiguous_unit', text, unit: typed, candidates: looked.ambiguous });
  if ('otherKinds' in looked) return refuse({ code: 'wrong_kind', text, unit: typed, expected, found: looked.otherKinds });
  return refuse({ code: 'unknown_unit', text, unit: typed, candidates: looked.candidates });
}

/**
 * Parts of a mix, concentrate first: `1:4` is four parts of diluent to one of concentrate, `2:3` one and a half. `4:1` is
 * said for `1:4` as well as for what it says, and the one is sixteen times as strong as the other.
 */
function readParts(text: string, raw: string): QuantityText | Refused | undefined {
  const [left = '', right, ...more] = text.split(':');
  if (right === undefined || more.length > 0) return undefined;
  const [first, second] = [readNumber(left.trim()), readNumber(right.trim())];
  if (typeof first === 'string') return notANumber(raw, first);
  if (typeof second === 'string') return notANumber(raw, second);
  const usable = first.rest === '' && second.rest === '' && first.value > 0 && second.value >= 0;
  if (!usable) return notANumber(raw, 'not_numeric');
  if (first.value !== 1 && first.value > second.value) {
    const candidates = [first.value / second.value, second.value / first.value].filter(Number.isFinite);
    return refuse({ code: 'ambiguous_unit', text: raw, unit: text, candidates: candidates.map((n) => `1:${Number(n.toPrecision(6))}`) });
  }
  return { ok: true, number: second, divisor: first, unit: '1' };
}

/** Cut `95 ± 2 mbar` in two; brackets around the pair of numbers are dropped. */
function cutAtPlusMinus(text: string): { readonly head: string; readonly tail?: string } {
  const bracketed = /^\(([^()]*)\)(.*)$/.exec(text);
  const flat = bracketed !== null && plusMinus.test(bracketed[1] ?? '') ? `${bracketed[1]} ${bracketed[2]?.trim()}` : text;
  const found = plusMinus.exec(flat);
  if (found === null || found.index === 0) return { head: flat };
  return { head: flat.slice(0, found.index).trim(), tail: flat.slice(found.index + found[0].length).trim() };
}

/** Take `number unit` apart, with an optional `±` part. Looks at no more than 200 signs, so that its time has a limit. */
export function readQuantityText(data: KindData, raw: string): QuantityText | Refused {
  if (raw.length > longestText) return notANumber(raw, 'too_long');
  if (hasControlCharacter(raw)) return notANumber(raw, 'control_character');
  const text = plainText(raw);
  if (text === '') return notANumber(raw, 'empty');
  const parts = data.kind === 'dilutionRatio' ? readParts(text, raw) : undefined;
  if (parts !== undefined) return parts;
  const { head, tail } = cutAtPlusMinus(text);
  const number = readNumber(head);
  if (typeof number === 'string') return notANumber(raw, number);
  const spread = tail === undefined ? undefined : readNumber(tail);
  if (typeof spread === 'string') return notANumber(raw, spread);
  if (spread?.decimal.startsWith('-')) return notANumber(raw, 'negative_uncertainty');
  // "95 mbar ± 2 %" is two per cent of 95 mbar, but "80 % ± 2 %" reaches from 78 % to 82 %.
  const relative = spread?.rest === '%' && number.rest !== '' && !data.units.has('%');
  const resolved = resolveUnitOf(data, number.rest === '' ? (spread?.rest ?? '') : number.rest, raw, number);
  if ('ok' in resolved) return resolved;
  const { unit } = resolved;
  // "184.123 ± 0.010 km" shows by its second number what the point is.
  if (couldBeThousands(head, number.rest, unit) && spread?.decimal.startsWith('0.') !== true) return notANumber(raw, 'ambiguous_separator');
  if (spread === undefined) return { ok: true, number, ...resolved };
  if (relative) return { ok: true, number, ...resolved, spread: { percent: spread } };
  const ofSpread = number.rest === '' || spread.rest === '' ? resolved : resolveUnitOf(data, spread.rest, raw, number);
  if ('ok' in ofSpread) return ofSpread;
  return { ok: true, number, ...resolved, spread: { number: spread, unit: ofSpread.unit } };
}
