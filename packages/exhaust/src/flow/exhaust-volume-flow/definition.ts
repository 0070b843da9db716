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
import { molarMassField } from '../../gas/fields.js';
import { siBrochure } from '../../sources.js';
import { exhaustMassFlowField, gasTemperatureField } from '../fields.js';
import { massBalance } from '../sources.js';
import { actualVolumeFlow } from './kernel.js';

const flowOutput = (symbol: string, label: string, description?: string) =>
  quantityOutput(volumeFlow, { symbol, label, ...(description === undefined ? {} : { description }), digits: 4, units: ['m3/h', 'L/s'] });

export const exhaustVolumeFlowCalculation = defineCalculation({
  id: 'exhaust-volume-flow',
  version: '2.0.0',
  subject: 'flow',
  title: 'Exhaust volume flow at the filter',
  purpose: 'How many cubic metres an hour go through the filter, hot and under back-pressure?',
  usedBy: ['technician', 'developer', 'trainer'],
  keywords: ['volume flow', 'actual flow', 'back-pressure', 'temperature'],
  method: 'ideal gas law',
  inputs: z.strictObject({
    exhaustMassFlow: exhaustMassFlowField,
    gasTemperature: gasTemperatureField,
    backPressure: quantity(gaugePressure, {
      symbol: 'p_g',
      label: 'Back-pressure before the filter, gauge',
      description:
        'Against the air outside. It is at least the pressure drop over the filter; left out, it is taken as that drop, or as nothing without one.',
      min: '-500 mbar',
      max: '5 bar',
      usual: ['-5 mbar', '1 bar'],
      usualReason: { below: 'before a filter the pressure is above that outside', above: 'a filter seldom stands under more' },
      example: '120 mbar',
      units: ['mbar', 'kPa', 'psi'],
    }).optional(),
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
    usedBackPressure: quantityOutput(gaugePressure, {
      symbol: 'p_{g,u}',
      label: 'Back-pressure as used',
      digits: 4,
      units: ['mbar', 'kPa', 'psi'],
    }),
    gasPressure: quantityOutput(absolutePressure, {
      symbol: 'p',
      label: 'Absolute pressure of the gas',
      digits: 5,
      units: ['kPa', 'mbar'],
    }),
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
    {
      gives: 'usedBackPressure',
      text: 'Back-pressure as given, but at least the drop over the filter; nothing without either: [[usedBackPressure]].',
      source: 'massBalance',
    },
    { gives: 'gasPressure', tex: '[[gasPressure]] = [[ambientPressure]] + [[usedBackPressure]]' },
    {
      gives: 'density',
      tex: '[[density]] = \\frac{[[gasPressure]]\\,[[molarMass]]}{[[gasConstant]]\\,[[gasTemperature]]}',
      source: 'siBrochure',
    },
    {
      gives: 'outletVolumeFlow',
      tex: '[[outletVolumeFlow]] = [[exhaustVolumeFlow]]\\,\\frac{[[gasPressure]]}{[[gasPressure]]-[[pressureDrop]]}',
      source: 'massBalance',
    },
    {
      gives: 'middleVolumeFlow',
      tex: '[[middleVolumeFlow]] = [[exhaustVolumeFlow]]\\,\\frac{[[gasPressure]]}{[[gasPressure]]-[[pressureDrop]]/2}',
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
  compute(input, { constants, warn, assume }) {
    const { exhaustMassFlow, gasTemperature, molarMass: mass } = input;
    const { pressureDrop, backPressure } = input;
    if (pressureDrop !== undefined && backPressure !== undefined && !(pressureDrop < input.ambientPressure + backPressure)) {
      return inconsistentInputs(
        'The drop is as large as the pressure before the filter: nothing is left behind it.',
        ['pressureDrop'],
        ['backPressure'],
      );
    }
    // The air outside is behind the filter, or what follows it: nothing in front of it can be lower than the drop.
    const usedBackPressure = Math.max(backPressure ?? pressureDrop ?? 0, pressureDrop ?? Number.NEGATIVE_INFINITY);
    const pressure = input.ambientPressure + usedBackPressure;
    if (backPressure === undefined) {
      const text =
        pressureDrop === undefined
          ? 'Neither back-pressure nor drop given: taken as open to the air. Each 10 mbar of back-pressure makes the volume about 1 % smaller.'
          : 'Back-pressure not given: taken as the drop over the filter, with nothing behind it that holds the gas back.';
      assume('back_pressure', text);
    } else if (pressureDrop !== undefined && pressureDrop > backPressure) {
      warn(
        'suction_behind',
        'The drop is larger than the back-pressure before the filter, as if the pressure behind it were below that of the air. The drop is taken as the back-pressure; check both readings.',
        ['backPressure'],
      );
    }
    const gas = { pressure, temperature: gasTemperature, molarMass: mass };
    const flowAt = (local: number) => actualVolumeFlow({ ...gas, pressure: local, massFlow: exhaustMassFlow }, constants.gasConstant);
    return {
      usedBackPressure,
      gasPressure: pressure,
      density: gasDensity(gas, constants.gasConstant),
      outletVolumeFlow: pressureDrop === undefined ? undefined : flowAt(pressure - pressureDrop),
      middleVolumeFlow: pressureDrop === undefined ? undefined : flowAt(pressure - pressureDrop / 2),
      exhaustVolumeFlow: flowAt(pressure),
    };
  },
});
