import { defineCalculation, formula, quantity, quantityOutput } from '@wallflow/calculation';
import { absolutePressure, density, molarMass, temperature } from '@wallflow/units';
import { siBrochure } from '../../sources.js';
import { gasConstant } from '../../vocabulary/constants.js';
import { gasDensity } from './kernel.js';

export const gasDensityCalculation = defineCalculation({
  id: 'gas-density',
  version: '1.0.0',
  subject: 'gas',
  title: 'Density of exhaust gas',
  purpose: 'How heavy is the exhaust at the temperature and pressure it has in the filter?',
  keywords: ['density', 'ideal gas'],
  method: 'ideal gas law',
  inputs: {
    gasPressure: quantity(absolutePressure, {
      symbol: 'p',
      label: 'Absolute pressure of the gas',
      description: 'Ambient pressure plus what the gauge shows; a gauge reading alone is not enough.',
      range: '1 < p <= 1000 kPa',
      usual: ['60 kPa', '300 kPa', 'outside this range an exhaust pressure is probably a gauge pressure or in another unit'],
      example: '101.3 kPa',
      units: ['kPa', 'mbar', 'bar', 'Pa', 'psi'],
    }),
    gasTemperature: quantity(temperature, { symbol: 'T', label: 'Gas temperature', range: '-60 <= T <= 1500 degC', example: '250 °C' }),
    molarMass: quantity(molarMass, {
      symbol: 'M',
      label: 'Molar mass of the gas',
      range: '2 <= M <= 100 g/mol',
      usual: ['28 g/mol', '29.5 g/mol', 'lean diesel exhaust stays close to air'],
      example: '28.97 g/mol',
      default: [
        '28.96559 g/mol',
        'dry air; diesel exhaust is within 0.4 % of it in dry air, and about 1 % lighter in air that holds 20 g/kg of water',
      ],
    }),
  },
  outputs: {
    density: quantityOutput(density, { symbol: '\\rho', label: 'Density', digits: 5, units: ['kg/m3', 'g/L'] }),
  },
  constants: { gasConstant },
  steps: [formula('density', 'gasPressure * molarMass / (gasConstant * gasTemperature)', siBrochure)],
  assumptions: { ideal_gas: 'The gas is ideal; at exhaust conditions real air differs by less than 0.1 %.' },
  limits: { no_condensate: 'Not for gas that carries liquid water, as right after a cold start or a wet clean.' },
  compute: (input, { constants }) => ({
    density: gasDensity(
      { pressure: input.gasPressure, temperature: input.gasTemperature, molarMass: input.molarMass },
      constants.gasConstant,
    ),
  }),
});
