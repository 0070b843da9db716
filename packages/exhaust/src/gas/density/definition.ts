import { constant, defineCalculation, quantity, quantityOutput, quantityWithDefault } from '@wallflow/calculation';
import { absolutePressure, density, molarHeatCapacity, molarMass, temperature } from '@wallflow/units';
import * as z from 'zod';
import { siBrochure } from '../../sources.js';
import { molarGasConstant } from '../constants.js';
import { gasDensity } from './kernel.js';

export const gasDensityCalculation = defineCalculation({
  id: 'gas-density',
  version: '1.0.0',
  subject: 'gas',
  title: 'Density of exhaust gas',
  purpose: 'How heavy is the exhaust at the temperature and pressure it has in the filter?',
  usedBy: ['technician', 'developer', 'trainer'],
  keywords: ['density', 'ideal gas'],
  method: 'ideal gas law',
  inputs: z.strictObject({
    pressure: quantity(absolutePressure, {
      symbol: 'p',
      label: 'Absolute pressure',
      description: 'Ambient pressure plus what the gauge shows; a gauge reading alone is not enough.',
      above: '1 kPa',
      max: '1000 kPa',
      usual: ['60 kPa', '300 kPa'],
      usualReason: 'outside this range an exhaust pressure is probably a gauge pressure or in another unit',
      example: '101.3 kPa',
      units: ['kPa', 'mbar', 'bar', 'Pa', 'psi'],
    }),
    temperature: quantity(temperature, {
      symbol: 'T',
      label: 'Gas temperature',
      min: '-60 °C',
      max: '1500 °C',
      example: '250 °C',
    }),
    molarMass: quantityWithDefault(molarMass, {
      symbol: 'M',
      label: 'Molar mass of the gas',
      min: '2 g/mol',
      max: '100 g/mol',
      usual: ['28 g/mol', '29.5 g/mol'],
      usualReason: 'lean diesel exhaust stays close to air',
      example: '28.97 g/mol',
      default: '28.96559 g/mol',
      defaultReason: 'dry air; diesel exhaust is within 0.4 % of it in dry air, and about 1 % lighter in air that holds 20 g/kg of water',
    }),
  }),
  intermediates: {},
  outputs: {
    density: quantityOutput(density, { symbol: '\\rho', label: 'Density', digits: 5, units: ['kg/m3', 'g/L'] }),
  },
  constants: {
    gasConstant: constant(molarHeatCapacity, molarGasConstant, { symbol: 'R', label: 'Molar gas constant', source: 'siBrochure' }),
  },
  steps: [
    {
      gives: 'density',
      tex: '[[density]] = \\frac{[[pressure]]\\,[[molarMass]]}{[[gasConstant]]\\,[[temperature]]}',
      source: 'siBrochure',
    },
  ],
  assumptions: [{ code: 'ideal_gas', text: 'The gas is ideal; at exhaust conditions real air differs by less than 0.1 %.' }],
  limits: [{ code: 'no_condensate', text: 'Not for gas that carries liquid water, as right after a cold start or a wet clean.' }],
  cautions: [],
  sources: { siBrochure },
  compute: (input, { constants }) => ({ density: gasDensity(input, constants.gasConstant) }),
});
