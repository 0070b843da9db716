const superscripts = '⁰¹²³⁴⁵⁶⁷⁸⁹';

/** A power of ten: `10⁻⁵`. */
export function power(exponent: number): string {
  const digits = [...String(Math.abs(exponent))].map((digit) => superscripts[Number(digit)] ?? '').join('');
  return `10${exponent < 0 ? '⁻' : ''}${digits}`;
}

function shortMantissa(mantissa: string): string {
  return mantissa.includes('.') ? mantissa.replace(/\.?0+$/, '') : mantissa;
}

function scientific(digits: string): string {
  const whole = digits.split('.')[0] ?? '';
  const mantissa = shortMantissa(`${whole[0] ?? '0'}.${whole.slice(1)}${digits.split('.')[1] ?? ''}`);
  return `${mantissa} × ${power(whole.length - 1)}`;
}

/**
 * Formatted numbers as people read them, and as the parser of quantities reads them too: `4350000000 1/m³` becomes `4.35 × 10⁹ 1/m³`, and `2e-9 m²` `2 × 10⁻⁹ m²`. Links and
 * data keep the plain number.
 */
export function readable(text: string): string {
  return withPowers(text).replace(/(?<![\w.])\d{8,}(?:\.\d+)?(?!\w)/g, scientific);
}

/** Powers of ten alone: long numbers stay, for a language that marks their thousands. */
export function withPowers(text: string): string {
  return text.replace(/(?<![\w.])(\d+(?:\.\d+)?)e([+-]?\d+)(?!\w)/g, (_, mantissa: string, exponent: string) => {
    return `${shortMantissa(mantissa)} × ${power(Number(exponent))}`;
  });
}
