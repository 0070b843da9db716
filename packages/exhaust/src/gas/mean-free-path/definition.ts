import * as wf from '@wallflow/calculation';
import { dynamicViscosity, length, temperature } from '@wallflow/units';
import { konstandopoulos2000 } from '../../sources.js';
import { gasConstant } from '../../vocabulary/constants.js';
import { gasPressureField, molarMassField } from '../fields.js';
import { meanFreePath } from './kernel.js';

export const meanFreePathCalculation = wf.defineCalculation({
  id: 'mean-free-path',
  subject: 'gas',
  title: 'Mean free path of the gas',
  purpose: 'How far do molecules fly between collisions, next to a pore or a soot particle?',
  keywords: 'mean free path, slip, Knudsen',
  method: 'kinetic theory from viscosity',
  inputs: {
    gasViscosity: wf.quantity(dynamicViscosity, {
      symbol: '\\mu',
      label: 'Viscosity of the gas',
      description: 'At the gas temperature; the calculations of viscosity give it.',
      range: '1 < x <= 200 uPa.s',
      usual: ['15 uPa.s', '60 uPa.s', 'air and exhaust from −40 °C to 1500 °C'],
      example: '26.0 uPa.s',
      units: ['uPa.s', 'Pa.s'],
    }),
    gasPressure: gasPressureField,
    gasTemperature: wf.quantity(temperature, { symbol: 'T', label: 'Gas temperature', range: '-60 <= x <= 1500 °C', example: '206 °C' }),
    molarMass: molarMassField,
  },
  outputs: { meanFreePath: wf.quantityOutput(length, { symbol: '\\ell', label: 'Mean free path', digits: 4, units: ['nm', 'um'] }) },
  constants: { gasConstant },
  steps: [
    wf.formula(
      'meanFreePath',
      'gasViscosity / gasPressure * sqrt(pi * gasConstant * gasTemperature / (2 * molarMass))',
      konstandopoulos2000,
      'Appendix II',
    ),
  ],
  assumptions: { hard_spheres: 'Molecules as hard spheres; other conventions differ by up to 1 %.' },
  limits: { temperature: 'It nearly quadruples from 20 °C to 600 °C: a fixed 65 nm is wrong in a hot filter.' },
  compute: (input, { constants }) => ({
    meanFreePath: meanFreePath(
      { viscosity: input.gasViscosity, pressure: input.gasPressure, temperature: input.gasTemperature },
      input.molarMass,
      constants.gasConstant,
    ),
  }),
});
