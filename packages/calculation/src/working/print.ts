import type { Kind, KindName } from '@wallflow/units';
import type { Expression } from '../formula/expression.js';
import { numberTex, quantityTex } from '../tex.js';
import { numberText } from '../written.js';

type NumberNode = Extract<Expression, { type: 'number' }>;

/** Fewest digits of a number within a line. */
export const fewestDigits = 5;

/** A number with so many digits as it is printed, without unit. */
export function printNumber(value: number, digits: number): NumberNode {
  const kept = Number(value.toPrecision(digits));
  return { type: 'number', value: kept, text: numberText(kept, digits), tex: numberTex(kept, digits) };
}

/** A number in SI with its unit. */
export function printQuantity(kind: Kind<KindName>, si: number, digits: number): NumberNode {
  return { ...printNumber(si, digits), tex: quantityTex(kind, si, kind.baseUnit, digits) };
}
