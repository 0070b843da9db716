import { constant, defineCalculation, quantityOutput, quantityWithDefault } from '@wallflow/calculation';
import { absolutePressure, density, gaugePressure, molarHeatCapacity, volumeFlow } from '@wallflow/units';
import * as z from 'zod';
import { cautions } from '../../cautions.js';
import { molarGasConstant } from '../../gas/constants.js';
import { gasDensity } from '../../gas/density/kernel.js';
import { siBrochure } from '../../sources.js';
import { exhaustMassFlowField, gasTemperatureField, molarMassField } from '../fields.js';
import { massBalance } from '../sources.js';
import { actualVolumeFlow } from './kernel.js';

export const exhaustVolumeFlowCalculation = defineCalculation({
  id: 'exhaust-volume-flow',
  version: '1.0.0',
  subject: 'flow',
  title: 'Exhaust volume flow at the filter',
  purpose: 'How many cubic metres an hour go through the filter, hot and under back-pressure?',
  usedBy: ['technician', 'developer', 'trainer'],
  keywords: ['volume flow', 'actual flow', 'back-pressure', 'temperature'],
  method: 'ideal gas law',
  inputs: z.strictObject({
    exhaustMassFlow: exhaustMassFlowField,
    gasTemperature: gasTemperatureField,
    backPressure: quantityWithDefault(gaugePressure, {
      symbol: 'p_g',
      label: 'Back-pressure upstream of the filter, gauge',
      min: '-500 mbar',
      max: '5 bar',
      usual: ['-5 mbar', '1 bar'],
      usualReason: 'a filter seldom stands under more',
      example: '120 mbar',
      default: '0 mbar',
      defaultReason: 'taken as open to the air; each 10 mbar of back-pressure makes the volume about 1 % smaller',
      units: ['mbar', 'kPa', 'psi'],
    }),
    ambientPressure: quantityWithDefault(absolutePressure, {
      symbol: 'p_a',
      label: 'Ambient pressure',
      description: 'Of the place, not reduced to sea level as a weather report gives it.',
      min: '30 kPa',
      max: '120 kPa',
      usual: ['60 kPa', '108 kPa'],
      usualReason: 'air pressure at places that a road reaches',
      example: '101.3 kPa',
      default: '101.325 kPa',
      defaultReason: 'sea level; each 1000 m of altitude lowers it by about 11 %',
      units: ['kPa', 'mbar'],
    }),
    molarMass: molarMassField,
  }),
  intermediates: {
    pressure: quantityOutput(absolutePressure, { symbol: 'p', label: 'Absolute pressure', digits: 5, units: ['kPa', 'mbar'] }),
    density: quantityOutput(density, { symbol: '\\rho', label: 'Density', digits: 4, units: ['kg/m3'] }),
  },
  outputs: {
    exhaustVolumeFlow: quantityOutput(volumeFlow, { symbol: '\\dot V', label: 'Exhaust volume flow', digits: 4, units: ['m3/h', 'L/s'] }),
  },
  constants: {
    gasConstant: constant(molarHeatCapacity, molarGasConstant, { symbol: 'R', label: 'Molar gas constant', source: 'siBrochure' }),
  },
  steps: [
    { gives: 'pressure', tex: '[[pressure]] = [[ambientPressure]] + [[backPressure]]' },
    {
      gives: 'density',
      tex: '[[density]] = \\frac{[[pressure]]\\,[[molarMass]]}{[[gasConstant]]\\,[[gasTemperature]]}',
      source: 'siBrochure',
    },
    { gives: 'exhaustVolumeFlow', tex: '[[exhaustVolumeFlow]] = \\frac{[[exhaustMassFlow]]}{[[density]]}', source: 'massBalance' },
  ],
  assumptions: [
    { code: 'ideal_gas', text: 'The gas is ideal; at exhaust conditions real air differs by less than 0.1 %.' },
    {
      code: 'upstream_state',
      text: 'Volume flow at the temperature and pressure given; after the filter the gas is thinner and the volume larger.',
    },
  ],
  limits: [{ code: 'actual_not_standard', text: 'An actual volume flow: not comparable with a flow in standard or normal cubic metres.' }],
  cautions: [cautions.hotExhaust],
  sources: { siBrochure, massBalance },
  compute(input, { constants }) {
    const { exhaustMassFlow, gasTemperature, molarMass: mass } = input;
    const pressure = input.ambientPressure + input.backPressure;
    const gas = { pressure, temperature: gasTemperature, molarMass: mass };
    return {
      pressure,
      density: gasDensity(gas, constants.gasConstant),
      exhaustVolumeFlow: actualVolumeFlow({ ...gas, massFlow: exhaustMassFlow }, constants.gasConstant),
    };
  },
});
