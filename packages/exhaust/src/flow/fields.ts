import { quantity, quantityWithDefault } from '@wallflow/calculation';
import { absolutePressure, massFlow, molarMass, temperature } from '@wallflow/units';

export const exhaustMassFlowField = quantity(massFlow, {
  symbol: '\\dot m_{exh}',
  label: 'Exhaust mass flow',
  min: '0 kg/h',
  max: '30000 kg/h',
  usual: ['0 kg/h', '3000 kg/h'],
  usualReason: 'road and machine diesels give this much',
  example: '179 kg/h',
  units: ['kg/h', 'g/s'],
});

export const gasTemperatureField = quantity(temperature, {
  symbol: 'T',
  label: 'Gas temperature',
  min: '-60 °C',
  max: '1500 °C',
  usual: ['0 °C', '900 °C'],
  usualReason: { below: 'exhaust is seldom so cold', above: 'exhaust is seldom hotter' },
  example: '250 °C',
});

export const absolutePressureField = quantity(absolutePressure, {
  symbol: 'p',
  label: 'Absolute pressure of the gas',
  description: 'Ambient pressure plus what the gauge shows.',
  above: '1 kPa',
  max: '1000 kPa',
  usual: ['60 kPa', '300 kPa'],
  usualReason: 'outside this range an exhaust pressure is probably a gauge pressure or in another unit',
  example: '105 kPa',
  units: ['kPa', 'mbar', 'bar', 'psi'],
});

export const molarMassField = quantityWithDefault(molarMass, {
  symbol: 'M',
  label: 'Molar mass of the gas',
  min: '2 g/mol',
  max: '100 g/mol',
  usual: ['28 g/mol', '29.5 g/mol'],
  usualReason: 'lean diesel exhaust stays close to air',
  example: '28.97 g/mol',
  default: '28.96559 g/mol',
  defaultReason: 'dry air; diesel exhaust is within 0.4 % of it in dry air, and about 1 % lighter in air that holds 20 g/kg of water',
});
