import { Decimal } from 'decimal.js';

/** More digits than any product here can have: four numbers of at most 200 signs and exponents of at most 324. */
export const Exact = Decimal.clone({ defaults: true, precision: 4000 });

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
