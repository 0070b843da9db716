import type { NumberProblem } from './issue.js';

export interface NumberText {
  readonly value: number;
  readonly significantDigits: number;
  /** How many signs of the text belong to the number. */
  readonly length: number;
  /** The number in plain decimal form, for exact arithmetic. */
  readonly decimal: string;
}

// Digits may be grouped by spaces (already made plain), apostrophes or underscores, never by both signs at once.
const numberAtStart = /^([+-]?)(\d(?:[\d'_]| (?!1\/))*(?:[.,]\d+)*|[.,]\d+)(?:\s*(?:e|[x*]\s*10\^?)\s*([+-]?\d{1,4})(?![\d.]))?/i;
const grouped = /^\d{1,3}(?:[ '_]\d{3})+$/;

/** `1.234,5`, `1,234.5`, `36,0`, `1 234.5`: the digits with a point, or why it cannot be told. */
function plainDigits(text: string): string | NumberProblem {
  const points = text.split('.').length - 1;
  const commas = text.split(',').length - 1;
  if (points + commas === 0) return wholeDigits(text);
  if (points > 0 && commas > 0) {
    const decimal = text.lastIndexOf('.') > text.lastIndexOf(',') ? '.' : ',';
    return bySeparator(text, decimal === '.' ? ',' : '.', decimal);
  }
  const sign = points > 0 ? '.' : ',';
  const pieces = text.split(sign);
  if (pieces.length > 2) return bySeparator(text, sign, sign === '.' ? ',' : '.');
  // "1,234" is a thousand to one reader and one and a bit to another.
  if (sign === ',' && /^[1-9]\d{0,2}$/.test(pieces[0] ?? '') && pieces[1]?.length === 3) return 'ambiguous_separator';
  const whole = wholeDigits(pieces[0] === '' ? '0' : (pieces[0] ?? ''));
  return /^\d+$/.test(whole) ? `${whole}.${pieces[1] ?? ''}` : whole;
}

function wholeDigits(text: string): string | NumberProblem {
  const trimmed = text.trimEnd();
  if (/^\d+$/.test(trimmed)) return trimmed;
  return grouped.test(trimmed) ? trimmed.replace(/[ '_]/g, '') : 'not_numeric';
}

function bySeparator(text: string, group: string, decimal: string): string | NumberProblem {
  const [whole = '', fraction = '', ...rest] = text.split(decimal);
  const groups = whole.split(group);
  const wellFormed = rest.length === 0 && /^\d{1,3}$/.test(groups[0] ?? '') && groups.slice(1).every((part) => /^\d{3}$/.test(part));
  return wellFormed && !fraction.includes(group) ? `${groups.join('')}${fraction === '' ? '' : `.${fraction}`}` : 'not_numeric';
}

/** Read the number at the start of a text whose spaces and signs are already plain. */
export function readNumber(text: string): NumberText | NumberProblem {
  const match = numberAtStart.exec(text);
  if (match === null) return /^[+-]?(nan|inf)/i.test(text) ? 'not_finite' : 'not_numeric';
  const [all, sign = '', body = '', exponent] = match;
  // Digits that touch letters on the way to something like 0x10 are not a number with a unit.
  if (/^0x/i.test(text.slice(sign.length))) return 'not_numeric';
  const digits = plainDigits(body.trimEnd());
  if (!/^\d/.test(digits)) return digits as NumberProblem;
  const decimal = `${sign === '-' ? '-' : ''}${digits}${exponent === undefined ? '' : `e${Number(exponent)}`}`;
  const value = Number(decimal);
  if (!Number.isFinite(value)) return 'not_finite';
  const significant = digits.replace('.', '').replace(/^0+/, '').length;
  return { value: value === 0 ? 0 : value, significantDigits: Math.max(1, significant), length: all.trimEnd().length, decimal };
}
