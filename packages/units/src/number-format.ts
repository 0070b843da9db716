/** More digits than this a double does not carry through a few conversions. */
export const mostDigits = 12;

/** Exponent of ten of a number, after rounding to a count of digits: 9.996 is 10.0 with three. */
export function exponentOf(value: number, digits: number): number {
  return value === 0 ? 0 : Number(roundDigits(value, digits).toExponential().split('e')[1]);
}

/**
 * Round at a decimal place (10^-place), halves away from zero. The number is taken as the decimal of fifteen digits that it
 * stands for, not as the double below or above it: 1.005 at two places is 1.01.
 */
export function roundAt(value: number, place: number): number {
  const [mantissa = '0', exponent = '0'] = Math.abs(value).toExponential(14).split('e');
  // A double has no digits to round there.
  if (Number(exponent) + place > 14) return value;
  const whole = Math.round(Number(`${mantissa}e${Number(exponent) + place}`));
  const rounded = Number(`${whole}e${-place}`);
  // The largest doubles cannot be rounded up.
  if (!Number.isFinite(rounded)) return value;
  return value < 0 && rounded !== 0 ? -rounded : rounded;
}

/** Round to a count of significant digits, halves away from zero. */
export function roundDigits(value: number, digits: number): number {
  if (value === 0) return 0;
  const exponent = Number(value.toExponential(14).split('e')[1]);
  return roundAt(value, digits - 1 - exponent);
}

function hasPlainForm(value: number): boolean {
  const size = Math.abs(value);
  return size === 0 || (size >= 1e-5 && size < 1e15);
}

/** A number at a decimal place, trailing zeros kept. */
export function textAt(value: number, place: number): string {
  return roundAt(value, place).toFixed(Math.min(100, Math.max(0, place)));
}

/**
 * A number without floating noise: at most 12 digits, halves rounded away from zero, never `-0`. With `digits` trailing
 * zeros are kept, so that 10.0 shows three; without it they are left away. Below 1e-5 and from 1e15 on it is written with
 * a power of ten. What is not finite comes back as `NaN`, `Infinity` or `-Infinity`.
 */
export function formatNumber(value: number, digits?: number): string {
  if (!Number.isFinite(value)) return String(value);
  const kept = Math.min(mostDigits, Math.max(1, Math.round(digits ?? mostDigits) || 1));
  const rounded = roundDigits(value, kept);
  if (hasPlainForm(rounded)) {
    return digits === undefined ? String(rounded) : textAt(rounded, Math.max(0, kept - 1 - exponentOf(rounded, kept)));
  }
  const [mantissa = '', exponent = ''] = rounded.toExponential(digits === undefined ? undefined : kept - 1).split('e');
  return `${mantissa}e${Number(exponent)}`;
}

/** A number and its uncertainty: two digits of the uncertainty, the number cut at the same place. */
export function formatSpread(value: number, spread: number): string {
  const place = 1 - exponentOf(spread, 2);
  const digits = exponentOf(value, mostDigits) + place + 1;
  if (digits > mostDigits || (value !== 0 && !hasPlainForm(value)) || !hasPlainForm(spread)) {
    return `${formatNumber(value, Math.max(1, digits))} ± ${formatNumber(spread, 2)}`;
  }
  return `${textAt(value, place)} ± ${textAt(spread, place)}`;
}
