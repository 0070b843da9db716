import { constant, defineCalculation, quantity, quantityOutput, quantityWithDefault } from '@wallflow/calculation';
import { dynamicViscosity, length, molarHeatCapacity, molarMass, temperature } from '@wallflow/units';
import * as z from 'zod';
import { konstandopoulos2000, siBrochure } from '../../sources.js';
import { molarGasConstant } from '../constants.js';
import { pressureField } from '../fields.js';
import { meanFreePath } from './kernel.js';

export const meanFreePathCalculation = defineCalculation({
  id: 'mean-free-path',
  version: '1.0.0',
  subject: 'gas',
  title: 'Mean free path of the gas',
  purpose: 'How far do molecules fly between collisions, next to a pore or a soot particle?',
  usedBy: ['developer', 'trainer'],
  keywords: ['mean free path', 'slip', 'Knudsen'],
  method: 'kinetic theory from viscosity',
  inputs: z.strictObject({
    gasViscosity: quantity(dynamicViscosity, {
      symbol: '\\mu',
      label: 'Dynamic viscosity of the gas',
      description: 'At the gas temperature; the calculations of viscosity give it.',
      above: '1 uPa.s',
      max: '200 uPa.s',
      usual: ['15 uPa.s', '60 uPa.s'],
      usualReason: 'air and exhaust from −40 °C to 1500 °C',
      example: '27.9 uPa.s',
      units: ['uPa.s', 'Pa.s'],
    }),
    gasPressure: pressureField,
    gasTemperature: quantity(temperature, { symbol: 'T', label: 'Gas temperature', min: '-60 °C', max: '1500 °C', example: '250 °C' }),
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
  outputs: { meanFreePath: quantityOutput(length, { symbol: '\\ell', label: 'Mean free path', digits: 4, units: ['nm', 'um'] }) },
  constants: {
    gasConstant: constant(molarHeatCapacity, molarGasConstant, { symbol: 'R', label: 'Molar gas constant', source: 'siBrochure' }),
  },
  steps: [
    {
      gives: 'meanFreePath',
      tex: '[[meanFreePath]] = \\frac{[[gasViscosity]]}{[[gasPressure]]}\\sqrt{\\frac{\\pi\\,[[gasConstant]]\\,[[gasTemperature]]}{2\\,[[molarMass]]}}',
      source: 'konstandopoulos2000',
      locator: 'Appendix II',
    },
  ],
  assumptions: [{ code: 'hard_spheres', text: 'Molecules as hard spheres; other conventions differ by up to 1 %.' }],
  limits: [{ code: 'temperature', text: 'It nearly quadruples from 20 °C to 600 °C: a fixed 65 nm is wrong in a hot filter.' }],
  cautions: [],
  sources: { konstandopoulos2000, siBrochure },
  compute: (input, { constants }) => ({
    meanFreePath: meanFreePath(
      { viscosity: input.gasViscosity, pressure: input.gasPressure, temperature: input.gasTemperature },
      input.molarMass,
      constants.gasConstant,
    ),
  }),
});
