import {
  constant,
  defineCalculation,
  inconsistentInputs,
  optional,
  quantity,
  quantityOutput,
  quantityWithDefault,
} from '@wallflow/calculation';
import { absolutePressure, density, differentialPressure, gaugePressure, molarHeatCapacity, volumeFlow } from '@wallflow/units';
import * as z from 'zod';
import { cautions } from '../../cautions.js';
import { molarGasConstant } from '../../gas/constants.js';
import { gasDensity } from '../../gas/density/kernel.js';
import { siBrochure } from '../../sources.js';
import { exhaustMassFlowField, gasTemperatureField, molarMassField } from '../fields.js';
import { massBalance } from '../sources.js';
import { actualVolumeFlow } from './kernel.js';

const flowOutput = (symbol: string, label: string, description?: string) =>
  quantityOutput(volumeFlow, { symbol, label, ...(description === undefined ? {} : { description }), digits: 4, units: ['m3/h', 'L/s'] });

export const exhaustVolumeFlowCalculation = defineCalculation({
  id: 'exhaust-volume-flow',
  version: '1.1.0',
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
      label: 'Back-pressure before the filter, gauge',
      description: 'Against the air outside. The first flow below belongs to this pressure.',
      min: '-500 mbar',
      max: '5 bar',
      usual: ['-5 mbar', '1 bar'],
      usualReason: 'a filter seldom stands under more',
      example: '120 mbar',
      default: '0 mbar',
      defaultReason: 'taken as open to the air; each 10 mbar of back-pressure makes the volume about 1 % smaller',
      units: ['mbar', 'kPa', 'psi'],
    }),
    pressureDrop: quantity(differentialPressure, {
      symbol: '\\Delta p',
      label: 'Pressure drop over the filter, if known',
      description: 'Gives the flow in the middle of the filter, which the pressure drop calculations ask for, and the one behind it.',
      min: '0 mbar',
      max: '5 bar',
      usual: ['0 mbar', '400 mbar'],
      usualReason: 'a larger drop points to a misread unit or a closed exhaust',
      example: '60 mbar',
      units: ['mbar', 'kPa', 'psi'],
    }).optional(),
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
    outletVolumeFlow: optional(flowOutput('\\dot V_1', 'Volume flow behind the filter')),
    middleVolumeFlow: optional(
      flowOutput('\\dot V_m', 'Volume flow in the middle of the filter', 'Take this one to the pressure drop calculations.'),
    ),
    exhaustVolumeFlow: flowOutput('\\dot V', 'Exhaust volume flow before the filter'),
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
    {
      gives: 'outletVolumeFlow',
      tex: '[[outletVolumeFlow]] = [[exhaustVolumeFlow]]\\,\\frac{[[pressure]]}{[[pressure]]-[[pressureDrop]]}',
      source: 'massBalance',
    },
    {
      gives: 'middleVolumeFlow',
      tex: '[[middleVolumeFlow]] = [[exhaustVolumeFlow]]\\,\\frac{[[pressure]]}{[[pressure]]-[[pressureDrop]]/2}',
      source: 'massBalance',
    },
    { gives: 'exhaustVolumeFlow', tex: '[[exhaustVolumeFlow]] = \\frac{[[exhaustMassFlow]]}{[[density]]}', source: 'massBalance' },
  ],
  assumptions: [
    { code: 'ideal_gas', text: 'The gas is ideal; at exhaust conditions real air differs by less than 0.1 %.' },
    {
      code: 'upstream_state',
      text: 'The volume flow belongs to the temperature and pressure given; behind the filter the gas is thinner and the volume larger, by 1 % for each 10 mbar of drop.',
    },
  ],
  limits: [
    { code: 'actual_not_standard', text: 'An actual volume flow: not comparable with a flow in standard or normal cubic metres.' },
    {
      code: 'which_pressure',
      text: 'The pressure drop calculations take the flow in the middle of the filter, as given here with the drop. Where they ask which pressure a flow belongs to, any of the three will do.',
    },
  ],
  cautions: [cautions.hotExhaust],
  sources: { siBrochure, massBalance },
  compute(input, { constants, warn }) {
    const { exhaustMassFlow, gasTemperature, molarMass: mass } = input;
    const pressure = input.ambientPressure + input.backPressure;
    const { pressureDrop } = input;
    if (pressureDrop !== undefined && !(pressureDrop < pressure)) {
      return inconsistentInputs(
        'The drop is as large as the pressure before the filter: nothing is left behind it.',
        ['pressureDrop'],
        ['backPressure'],
      );
    }
    if (pressureDrop !== undefined && pressureDrop > input.backPressure)
      warn(
        'suction_behind',
        'The drop is larger than the back-pressure before the filter: the pressure behind it would be below that of the air. Check both readings.',
        ['pressureDrop'],
      );
    const gas = { pressure, temperature: gasTemperature, molarMass: mass };
    const flowAt = (local: number) => actualVolumeFlow({ ...gas, pressure: local, massFlow: exhaustMassFlow }, constants.gasConstant);
    return {
      pressure,
      density: gasDensity(gas, constants.gasConstant),
      outletVolumeFlow: pressureDrop === undefined ? undefined : flowAt(pressure - pressureDrop),
      middleVolumeFlow: pressureDrop === undefined ? undefined : flowAt(pressure - pressureDrop / 2),
      exhaustVolumeFlow: flowAt(pressure),
    };
  },
});
