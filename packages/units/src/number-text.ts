import type { NumberProblem } from './issue.js';

export interface NumberText {
  readonly value: number;
  /** The number in plain decimal form, for exact arithmetic. */
  readonly decimal: string;
  readonly significantDigits: number;
  /** What follows the number. */
  readonly rest: string;
}

// A whole number whose digits are grouped by one sign, or digits with points and commas. A space groups only before
// three digits and no more, so that "5 1/h" is five per hour.
const numberAtStart = /^([+-]?) ?(?:(\d{1,3}([ '_])\d{3}(?:\3\d{3})*)(?!\d)([.,]\d+)?|(\d+(?:[.,]\d+)*|[.,]\d+))/;
const powerOfTen = /^(?: ?e([+-]?\d+)| ?[x*·⋅] ?10\^([+-]?\d+))(?![.,]?\d)/i;
/** Digits that a number leaves over: `0x10`, `12 5`, `1e5.5`. They belong to no unit, unless it begins with `1/`. */
const leftOverDigits = /^(?!1 ?\/)(?:[ex] ?[+-]?\d|[-+.,:^]*\d)/i;

/** `1.234,5`, `1,234.5`, `36,0`: the digits with a point, or why it cannot be told. */
function plainDigits(text: string): string | NumberProblem {
  const points = text.split('.').length - 1;
  const commas = text.split(',').length - 1;
  if (points + commas === 0) return text;
  if (points > 0 && commas > 0) {
    return text.lastIndexOf('.') > text.lastIndexOf(',') ? withGroups(text, ',', '.') : withGroups(text, '.', ',');
  }
  const sign = points > 0 ? '.' : ',';
  const [whole = '', fraction = '', ...more] = text.split(sign);
  if (more.length > 0) return withGroups(text, sign, sign === '.' ? ',' : '.');
  // "1,234" is a thousand to one reader and one and a bit to another.
  if (sign === ',' && /^[1-9]\d{0,2}$/.test(whole) && fraction.length === 3) return 'ambiguous_separator';
  return `${whole === '' ? '0' : whole}.${fraction}`;
}

function withGroups(text: string, group: string, decimal: string): string | NumberProblem {
  const [whole = '', fraction, ...more] = text.split(decimal);
  const [first = '', ...others] = whole.split(group);
  const wellFormed = /^\d{1,3}$/.test(first) && others.every((part) => /^\d{3}$/.test(part));
  if (!wellFormed || more.length > 0 || fraction?.includes(group)) return 'not_numeric';
  return `${first}${others.join('')}${fraction === undefined ? '' : `.${fraction}`}`;
}

/** Read the number at the start of a text whose spaces and signs are already plain. */
export function readNumber(text: string): NumberText | NumberProblem {
  const match = numberAtStart.exec(text);
  if (match === null) return /^[+-]? ?(?:nan|inf|∞)/i.test(text) ? 'not_finite' : 'not_numeric';
  const [all, sign, grouped, , fraction = '', ungrouped = ''] = match;
  const digits = grouped === undefined ? plainDigits(ungrouped) : `${grouped.replace(/\D/g, '')}${fraction.replace(',', '.')}`;
  if (!/^\d/.test(digits)) return digits as NumberProblem;
  const behind = text.slice(all.length);
  const power = powerOfTen.exec(behind);
  const rest = behind.slice(power?.[0].length ?? 0).trim();
  if (leftOverDigits.test(rest)) return 'not_numeric';
  const exponent = power?.[1] ?? power?.[2];
  const decimal = `${sign === '-' ? '-' : ''}${digits}${exponent === undefined ? '' : `e${exponent}`}`;
  const value = Number(decimal);
  if (!Number.isFinite(value)) return 'not_finite';
  const significant = digits.replace('.', '').replace(/^0+/, '').length;
  if (value === 0 && significant > 0 && /[1-9]/.test(digits)) return 'too_small';
  return { value: value === 0 ? 0 : value, decimal, significantDigits: Math.max(1, significant), rest };
}
