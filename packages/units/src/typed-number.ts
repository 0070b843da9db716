import type { NumberProblem } from './issue.js';
import { type NumberText, readNumber } from './number-text.js';
import { hasControlCharacter, longestText, plainText } from './spelling.js';
import { couldBeThousands } from './thousands.js';

/** A number that was typed beside its unit, or why it is none. `unit` is the id of that unit, where it is known. */
export function readTypedNumber(typed: string, unit = ''): NumberText | NumberProblem {
  if (typed.length > longestText) return 'too_long';
  if (hasControlCharacter(typed)) return 'control_character';
  const text = plainText(typed);
  if (text === '') return 'empty';
  const number = readNumber(text);
  if (typeof number === 'string') return number;
  if (number.rest !== '') return 'not_numeric';
  return couldBeThousands(text, '', unit) ? 'ambiguous_separator' : number;
}

/**
 * Read a number alone, as a form has it that keeps number and unit apart: `1,5`, `-12.50`, `1.2e3`. What could part thousands as well
 * as decimals is not guessed. Never throws.
 *
 * @param unit - id of the unit beside it, as a point is read otherwise in kilometres
 */
export function parseNumber(
  text: string,
  unit?: string,
):
  | { readonly ok: true; readonly value: number; readonly significantDigits: number }
  | { readonly ok: false; readonly reason: NumberProblem } {
  const read = readTypedNumber(text, unit);
  return typeof read === 'string'
    ? { ok: false, reason: read }
    : { ok: true, value: read.value, significantDigits: read.significantDigits };
}
