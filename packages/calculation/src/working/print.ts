import type { Kind, KindName } from '@wallflow/units';
import type { Expression } from '../formula/expression.js';
import { readable } from '../readable.js';
import { numberTex, quantityTex } from '../tex.js';

type NumberNode = Extract<Expression, { type: 'number' }>;

/** Fewest and most digits of a number within a line. */
export const fewestDigits = 5;
export const mostDigits = 17;

/** A number with so many digits as it is printed, without unit. */
export function printNumber(value: number, digits: number): NumberNode {
  const kept = Number(value.toPrecision(digits));
  return { type: 'number', value: kept, text: numberText(kept, digits), tex: numberTex(kept, digits) };
}

/** A number in SI with its unit. */
export function printQuantity(kind: Kind<KindName>, si: number, digits: number): NumberNode {
  return { ...printNumber(si, digits), tex: quantityTex(kind, si, kind.baseUnit, digits) };
}

/** A number as people write it, zeros at the end left out: `0.0289656`, `1.49 × 10⁻³`. */
export function numberText(value: number, digits: number): string {
  if (value === 0) return '0';
  const size = Math.abs(value);
  const sign = value < 0 ? '−' : '';
  if (size >= 1e-3 && size < 1e6) return `${sign}${Number(size.toPrecision(digits))}`;
  return `${sign}${readable(Number(size.toPrecision(digits)).toExponential())}`;
}
