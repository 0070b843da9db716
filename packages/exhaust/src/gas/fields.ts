import { quantity, type UsualReason } from '@wallflow/calculation';
import { absolutePressure, molarMass, temperature } from '@wallflow/units';

export const gasTemperatureField = (limits: { range: string; usual: readonly [string, string, UsualReason] }) =>
  quantity(temperature, { symbol: 'T', label: 'Gas temperature', example: '206 °C', ...limits });

export const gasPressureField = quantity(absolutePressure, {
  symbol: 'p',
  label: 'Absolute pressure of the gas',
  description: 'Ambient pressure plus what the gauge shows; a gauge reading alone is not enough.',
  range: '1 < x <= 1000 kPa',
  usual: ['60 kPa', '300 kPa', 'outside this range an exhaust pressure is probably a gauge pressure or in another unit'],
  example: '108.1 kPa',
  units: ['kPa', 'mbar', 'bar', 'Pa', 'psi'],
});

export const molarMassField = quantity(molarMass, {
  symbol: 'M',
  label: 'Molar mass of the gas',
  range: '2 <= x <= 100 g/mol',
  usual: ['28 g/mol', '29.5 g/mol', 'lean diesel exhaust stays close to air'],
  example: '28.97 g/mol',
  default: [
    '28.96559 g/mol',
    'dry air; diesel exhaust is within 0.4 % of it in dry air, and about 1 % lighter in air that holds 20 g/kg of water',
  ],
});
