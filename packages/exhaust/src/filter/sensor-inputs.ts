import { quantity } from '@wallflow/calculation';
import { differentialPressure } from '@wallflow/units';

/** A raw reading of the sensor, which may be negative. */
export const sensorReading = (
  symbol: string,
  label: string,
  description: string,
  example: string,
  usual: readonly [string, string] = ['-100 mbar', '400 mbar'],
) =>
  quantity(differentialPressure, {
    symbol,
    label,
    description,
    range: '-1000 <= x <= 1000 mbar',
    usual: [...usual, 'readings beyond it point to a misread unit or a broken wire'],
    example,
    units: ['mbar', 'kPa', 'hPa', 'psi'],
  });

export const allowedZeroInput = quantity(differentialPressure, {
  symbol: 'z_{max}',
  label: 'Zero error that is still accepted',
  range: '0 < x <= 50 mbar',
  usual: ['0.5 mbar', '5 mbar', 'common practice'],
  default: ['2 mbar', 'common practice, no source; the vehicle maker may state another'],
  units: ['mbar', 'kPa', 'hPa', 'psi'],
});
