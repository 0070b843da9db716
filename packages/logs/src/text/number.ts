/** Why a cell is no number that can be used. */
export type CellProblem = 'not-a-number' | 'thousand-or-decimal' | 'too-large' | 'too-small' | 'unit-in-cell';

/** What a file's cells have shown of its decimal sign; `'.'` and `','` where an answer settled it. */
export type DecimalSign = '.' | ',' | undefined;

/** Cells that hold no value. */
export const noValue =
  /^(?:|[-–—_.*?]+|#?n\/?a\.?|#na|#n\/v|#wert!|#value!|nan|null|none|nil|no ?data|not available|n\.v\.|k\.a\.|nicht verf(?:ü|ue)gbar|inv(?:alid)?|ung(?:ü|ue)ltig|err(?:or)?|fehler|-nan|1\.#qnan|off ?line|\(null\))$/i;

/** A cell as a number, with how its digits were grouped and parted, for the question which sign is the decimal one. */
export interface CellNumber {
  readonly value: number;
  /** A point or comma parts whole and fraction, without doubt: not three digits behind one to three, not beside the other sign. */
  readonly decimal?: '.' | ',';
  /** `1.206` or `1,206`: a thousand to one reader and one and a bit to another. */
  readonly doubtful?: '.' | ',';
  /** What stood behind the number. */
  readonly rest: string;
}

const shape = /^([+-]?)(\d[\d.,' \u00a0\u202f\u2009’]*|[.,]\d+)(?:[eE]([+-]?\d{1,5}))?(.*)$/s;

function grouped(text: string, sign: string): string | undefined {
  const [first = '', ...others] = text.split(sign);
  return /^\d{1,3}$/.test(first) && others.every((part) => /^\d{3}$/.test(part)) ? `${first}${others.join('')}` : undefined;
}

/** Digits with a point, or undefined where the text is none. */
function plainDigits(digits: string, known: DecimalSign): { text: string; decimal?: '.' | ','; doubtful?: '.' | ',' } | undefined {
  const points = digits.split('.').length - 1;
  const commas = digits.split(',').length - 1;
  if (points + commas === 0) return { text: digits };
  if (points > 0 && commas > 0) {
    const decimal = digits.lastIndexOf('.') > digits.lastIndexOf(',') ? '.' : ',';
    if (known !== undefined && known !== decimal) return undefined;
    const [whole = '', fraction = '', ...more] = digits.split(decimal);
    const joined = more.length > 0 ? undefined : grouped(whole, decimal === '.' ? ',' : '.');
    return joined === undefined || !/^\d+$/.test(fraction) ? undefined : { text: `${joined}.${fraction}`, decimal };
  }
  const sign = points > 0 ? '.' : ',';
  if (points + commas > 1) {
    const joined = known === sign ? undefined : grouped(digits, sign);
    return joined === undefined ? undefined : { text: joined, decimal: sign === '.' ? ',' : '.' };
  }
  if (known !== undefined && known !== sign) {
    const joined = grouped(digits, sign);
    return joined === undefined ? undefined : { text: joined };
  }
  const [whole = '', fraction = ''] = digits.split(sign);
  const text = `${whole === '' ? '0' : whole}.${fraction === '' ? '0' : fraction}`;
  if (known === undefined && /^[1-9]\d{0,2}$/.test(whole) && fraction.length === 3) return { text, doubtful: sign };
  return { text, decimal: sign };
}

/** Read a cell that is not the plain digits that the fast path takes. */
export function readCellNumber(cell: string, known: DecimalSign): CellNumber | CellProblem | undefined {
  const text = cell
    .trim()
    .replace(/[−–‐‑]/g, '-')
    .replace(/^'(?=[-+\d])/, '');
  if (noValue.test(text)) return undefined;
  const match = shape.exec(text);
  if (match === null) return 'not-a-number';
  const [, sign = '', body = '', exponent, behind = ''] = match;
  let digits = body.trimEnd();
  const space = body.slice(digits.length);
  if (/[' \u00a0\u202f\u2009’]/.test(digits)) {
    const [whole = '', fraction] = /^([^.,]*)([.,]\d+)?$/.exec(digits)?.slice(1) ?? [];
    const joined = grouped(whole.replace(/[ \u00a0\u202f\u2009’]/g, "'"), "'");
    // Digits apart that are no groups of three are two numbers, or a number and the start of a unit such as 1/min.
    if (joined === undefined) return 'not-a-number';
    digits = `${joined}${fraction ?? ''}`;
    if (fraction !== undefined) {
      const decimal = fraction[0] as '.' | ',';
      if (known !== undefined && known !== decimal) return 'not-a-number';
      return finished(sign, `${joined}.${fraction.slice(1)}`, exponent, behind, { decimal });
    }
    return finished(sign, joined, exponent, behind, {});
  }
  const plain = plainDigits(digits, known);
  if (plain === undefined) return 'not-a-number';
  const { text: number, ...seen } = plain;
  return finished(sign, number, exponent, space + behind, seen);
}

function finished(
  sign: string,
  digits: string,
  exponent: string | undefined,
  rest: string,
  seen: { decimal?: '.' | ','; doubtful?: '.' | ',' },
): CellNumber | CellProblem {
  const value = Number(`${sign}${digits}${exponent === undefined ? '' : `e${exponent}`}`);
  if (!Number.isFinite(value)) return Number.isNaN(value) ? 'not-a-number' : 'too-large';
  // A number that a double would lose is not the number that stood there.
  if (Math.abs(value) < 2.3e-308 && /[1-9]/.test(digits)) return 'too-small';
  return { value: value === 0 ? 0 : value, rest: rest.trim(), ...seen };
}
