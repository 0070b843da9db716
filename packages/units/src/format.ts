import { changeFromSI, fromSI } from './convert.js';
import { formatNumber, formatSpread, roundAt } from './number-format.js';
import { typeableNumber } from './thousands.js';
import type { KindName, UnitData } from './types.js';

/** How a quantity is written. */
export interface FormatOptions {
  /** Significant digits, 1 to 12; with it trailing zeros are kept, without it 12 digits are shown at most. */
  readonly digits?: number;
  /** SI, as a difference; shown after ± with two digits, the value cut to the same place. */
  readonly uncertainty?: number;
  /** Leave the unit away. */
  readonly unitless?: boolean;
}

/** A temperature is measured from absolute zero: digits that get lost there are not shown after the offset either. */
function withoutOffsetNoise(value: number, unit: UnitData): number {
  return unit.offset === 0 ? value : roundAt(value, 9);
}

/** A quantity as text that the parser reads back. */
export function formatQuantity(kind: KindName, si: number, unit: UnitData, options: FormatOptions): string {
  const value = withoutOffsetNoise(fromSI(si, unit), unit);
  const spread = options.uncertainty === undefined ? 0 : Math.abs(changeFromSI(options.uncertainty, unit, si));
  const certain = !(spread > 0 && Number.isFinite(spread) && Number.isFinite(value));
  const number = certain ? formatNumber(value, options.digits) : formatSpread(value, spread);
  if (options.unitless === true) return number;
  if (kind === 'dilutionRatio' && certain && value >= 0) return `1:${number}`;
  return unit.symbol === '' ? number : `${certain ? typeableNumber(number, unit.id) : number} ${unit.symbol}`;
}
