import { changeFromSI, fromSI } from './convert.js';
import type { KindData, UnitData } from './types.js';

export interface FormatOptions {
  /** Significant digits, 1 to 12; with it trailing zeros are kept, without it 12 digits are shown at most. */
  readonly digits?: number;
  /** SI, as a difference; shown after ± with two digits, the value cut to the same place. */
  readonly uncertainty?: number;
  /** Leave the unit away. */
  readonly unitless?: boolean;
}

const mostDigits = 12;

/** Place of the last digit to show: 10^-place. */
function placeFor(value: number, digits: number): number {
  if (value === 0) return digits - 1;
  // toExponential rounds as the result will, so that 9.996 with three digits counts as 10.0.
  return digits - 1 - Number(value.toExponential(digits - 1).split('e')[1]);
}

function atPlace(value: number, place: number): string {
  const text = place >= 0 ? value.toFixed(Math.min(place, 100)) : String(Math.round(value * 10 ** place) / 10 ** place);
  return Number(text) === 0 ? text.replace('-', '') : text;
}

/** A number without floating noise. Very small and very large ones are written with a power of ten. */
export function formatNumber(value: number, digits?: number): string {
  if (value === 0) return '0';
  const kept = Math.min(mostDigits, Math.max(1, digits ?? mostDigits));
  const size = Math.abs(value);
  if (size < 1e-5 || size >= 1e15) {
    const [mantissa = '', exponent = ''] = value.toExponential(kept - 1).split('e');
    return `${digits === undefined ? String(Number(mantissa)) : mantissa}e${Number(exponent)}`;
  }
  if (digits === undefined) return String(Number(value.toPrecision(kept)));
  const rounded = Number(value.toPrecision(kept));
  return atPlace(rounded, Math.max(0, placeFor(rounded, kept)));
}

function withUncertainty(value: number, spread: number): string {
  const place = placeFor(spread, 2);
  if (Math.abs(place) > 12) return `${formatNumber(value, 6)} ± ${formatNumber(spread, 2)}`;
  return `${atPlace(value, place)} ± ${atPlace(spread, place)}`;
}

/** A quantity as text that the parser reads back. */
export function formatQuantity(data: KindData, si: number, unitId: string, options: FormatOptions): string {
  const unit = data.units[unitId] as UnitData;
  const value = fromSI(si, unit);
  const spread = options.uncertainty === undefined ? 0 : changeFromSI(options.uncertainty, unit, si);
  const number = spread > 0 && Number.isFinite(spread) ? withUncertainty(value, spread) : formatNumber(value, options.digits);
  if (data.kind === 'dilutionRatio' && spread === 0) return `1:${number}`;
  return options.unitless === true || unit.symbol === '' ? number : `${number} ${unit.symbol}`;
}
