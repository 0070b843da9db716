import { Decimal } from 'decimal.js';

/** More digits than a quotient of `longestEnding` digits times its divisor can have, so that the product is exact. */
export const Exact = Decimal.clone({ defaults: true, precision: 2000 });
/**
 * A quotient that ends does so before this many digits: a numerator of some 400 (a number of 200 signs, an exponent of
 * 308, two factors) and three for each of the divisor's 280.
 */
export const longestEnding = 1400;

/** A rational number as a quotient of two decimals, so that nothing is rounded on the way. */
export interface Rational {
  readonly over: Decimal;
  readonly under: Decimal;
}

/** Evaluate `4184*0.45359237*5/9` from left to right; a leading `~`, the mark of a factor that is not exact, is passed over. */
export function evaluateFactor(text: string): Rational {
  let over = new Exact(1);
  let under = new Exact(1);
  for (const part of text.replace(/^~/, '').split(/(?=[*/])/)) {
    const operand = new Exact(part.replace(/^[*/]/, ''));
    if (part.startsWith('/')) under = under.times(operand);
    else over = over.times(operand);
  }
  return { over, under };
}
