import { quantity } from '@wallflow/calculation';
import { massFlow, temperature } from '@wallflow/units';

export const exhaustMassFlowField = quantity(massFlow, {
  symbol: '\\dot m_{exh}',
  label: 'Exhaust mass flow',
  range: '0 <= x <= 30000 kg/h',
  usual: ['0 kg/h', '3000 kg/h', 'road and machine diesels give this much'],
  example: '305 kg/h',
  units: ['kg/h', 'g/s'],
});

export const gasTemperatureField = quantity(temperature, {
  symbol: 'T',
  label: 'Gas temperature',
  range: '-60 <= x <= 1500 °C',
  usual: ['0 °C', '900 °C', { below: 'exhaust is seldom so cold', above: 'exhaust is seldom hotter' }],
  example: '206 °C',
});
