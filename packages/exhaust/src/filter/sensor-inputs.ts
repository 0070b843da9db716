import { quantity, quantityWithDefault } from '@wallflow/calculation';
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
    min: '-1000 mbar',
    max: '1000 mbar',
    usual,
    usualReason: 'readings beyond it point to a misread unit or a broken wire',
    example,
    units: ['mbar', 'kPa', 'hPa', 'psi'],
  });

export const allowedZeroInput = quantityWithDefault(differentialPressure, {
  symbol: 'z_{max}',
  label: 'Zero error that is still accepted',
  above: '0 mbar',
  max: '50 mbar',
  usual: ['0.5 mbar', '5 mbar'],
  usualReason: 'common practice',
  example: '2 mbar',
  default: '2 mbar',
  defaultReason: 'common practice, no source; the vehicle maker may state another',
  units: ['mbar', 'kPa', 'hPa', 'psi'],
});
