import type { Kind, KindName } from '@wallflow/units';

const superscripts = new Map([...'⁰¹²³⁴⁵⁶⁷⁸⁹⁻'].map((sign, index) => [sign, '0123456789-'[index] ?? '']));

/** A number in TeX with at most `digits` significant digits, powers of ten written out. */
export function numberTex(value: number, digits = 5): string {
  if (value === 0) return '0';
  const size = Math.abs(value);
  if (size >= 1e-3 && size < 1e6) return String(Number(value.toPrecision(digits)));
  const [mantissa = '', exponent = ''] = value.toExponential(digits - 1).split('e');
  const short = String(Number(mantissa));
  const power = `10^{${Number(exponent)}}`;
  return short === '1' ? power : short === '-1' ? `-${power}` : `${short}\\times ${power}`;
}

/** A unit's symbol in upright TeX: `m³/h` becomes `\mathrm{m^{3}/h}`. */
export function unitTex(symbol: string): string {
  if (symbol === '' || symbol === '1') return '';
  const powers = symbol.replace(/[⁰¹²³⁴⁵⁶⁷⁸⁹⁻]+/g, (run) => `^{${[...run].map((sign) => superscripts.get(sign) ?? '').join('')}}`);
  const escaped = powers
    .replaceAll('%', '\\%')
    .replaceAll('·', '{\\cdot}')
    .replaceAll('°', '{}^{\\circ}')
    .replaceAll('µ', '\\mu ')
    .replaceAll('μ', '\\mu ')
    .replace(/[₀₁₂₃₄₅₆₇₈₉]/g, (sign) => `_{${sign.charCodeAt(0) - 0x2080}}`)
    .replaceAll(' ', '~');
  return `\\mathrm{${escaped}}`;
}

/** Words inside a formula. */
export function textTex(words: string): string {
  return `\\text{${words.replace(/[\\{}$&#^_~%]/g, (sign) => (sign === '\\' ? '/' : `\\${sign}`))}}`;
}

/** A quantity with its unit in TeX. */
export function quantityTex(kind: Kind<KindName>, si: number, unit: string = kind.baseUnit, digits = 5): string {
  const number = numberTex(kind.in(kind.si(si), unit as never), digits);
  const suffix = unitTex(kind.symbol(unit as never));
  return suffix === '' ? number : `${number}\\,${suffix}`;
}
