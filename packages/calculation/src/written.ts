import { power } from './readable.js';

/** As many digits as tell a double from every other. */
export const mostDigits = 17;

/** A number as people write it, zeros at the end left out: `0.0289656`, `1.49 × 10⁻³`. */
export function numberText(value: number, digits: number): string {
  if (value === 0) return '0';
  const size = Math.abs(value);
  const sign = value < 0 ? '−' : '';
  if (size >= 1e-3 && size < 1e6) return `${sign}${Number(size.toPrecision(digits))}`;
  const [mantissa = '', exponent = ''] = Number(size.toPrecision(digits)).toExponential().split('e');
  return `${sign}${mantissa} × ${power(Number(exponent))}`;
}
