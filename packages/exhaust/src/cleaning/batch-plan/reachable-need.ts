import type { Decimal } from 'decimal.js';

/** Greatest volume of which both are whole multiples, by Euclid's algorithm; it ends because decimals are. */
function commonMeasure(one: Decimal, other: Decimal): Decimal {
  return other.isZero() ? one : commonMeasure(other, one.modulo(other));
}

/** The need rounded up to what whole packs of any kind can hold at all. */
export function reachableNeed(needed: Decimal, volumes: readonly Decimal[]): Decimal {
  const [first, ...others] = volumes;
  if (first === undefined) return needed;
  const measure = others.reduce(commonMeasure, first);
  return needed.dividedBy(measure).ceil().times(measure);
}
