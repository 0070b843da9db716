import * as wf from '@wallflow/calculation';
import { density, temperature } from '@wallflow/units';
import { siBrochure } from '../../sources.js';
import { gasConstant } from '../../vocabulary/constants.js';
import { gasPressureField, molarMassField } from '../fields.js';
import { gasDensity } from './kernel.js';

export const gasDensityCalculation = wf.defineCalculation({
  id: 'gas-density',
  subject: 'gas',
  title: 'Density of exhaust gas',
  purpose: 'How heavy is the exhaust at the temperature and pressure it has in the filter?',
  keywords: 'density, ideal gas',
  method: 'ideal gas law',
  inputs: {
    gasPressure: gasPressureField,
    gasTemperature: wf.quantity(temperature, { symbol: 'T', label: 'Gas temperature', range: '-60 <= T <= 1500 degC', example: '206 °C' }),
    molarMass: molarMassField,
  },
  outputs: {
    density: wf.quantityOutput(density, { symbol: '\\rho', label: 'Density', digits: 5, units: ['kg/m3', 'g/L'] }),
  },
  constants: { gasConstant },
  steps: [wf.formula('density', 'gasPressure * molarMass / (gasConstant * gasTemperature)', siBrochure)],
  assumptions: { ideal_gas: 'The gas is ideal; at exhaust conditions real air differs by less than 0.1 %.' },
  limits: { no_condensate: 'Not for gas that carries liquid water, as right after a cold start or a wet clean.' },
  compute: (input, { constants }) => ({
    density: gasDensity(
      { pressure: input.gasPressure, temperature: input.gasTemperature, molarMass: input.molarMass },
      constants.gasConstant,
    ),
  }),
});
