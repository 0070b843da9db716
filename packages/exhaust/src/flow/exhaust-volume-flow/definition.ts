import * as wf from '@wallflow/calculation';
import { absolutePressure, density, differentialPressure, gaugePressure, volumeFlow } from '@wallflow/units';
import { cautions } from '../../cautions.js';
import { gasDensity } from '../../gas/density/kernel.js';
import { molarMassField } from '../../gas/fields.js';
import { siBrochure } from '../../sources.js';
import { gasConstant } from '../../vocabulary/constants.js';
import { exhaustMassFlowField, gasTemperatureField } from '../fields.js';
import { massBalance } from '../sources.js';
import { actualVolumeFlow } from './kernel.js';

const flowOutput = (symbol: string, label: string, description?: string) =>
  wf.quantityOutput(volumeFlow, {
    symbol,
    label,
    ...(description === undefined ? {} : { description }),
    digits: 4,
    units: ['m3/h', 'L/s'],
  });

export const exhaustVolumeFlowCalculation = wf.defineCalculation({
  id: 'exhaust-volume-flow',
  subject: 'flow',
  title: 'Exhaust volume flow at the filter',
  purpose: 'How many cubic metres an hour go through the filter, hot and under back-pressure?',
  keywords: 'volume flow, actual flow, back-pressure, backpressure, temperature, DPF, back pressure, delta p, restriction',
  method: 'ideal gas law',
  inputs: {
    exhaustMassFlow: exhaustMassFlowField,
    gasTemperature: gasTemperatureField,
    backPressure: wf.optional(
      wf.quantity(gaugePressure, {
        symbol: 'p_g',
        label: 'Back-pressure before the filter, gauge',
        description:
          'Against the air outside. It is at least the pressure drop over the filter; left blank, it is taken as that drop, or as zero without one.',
        range: '-500 mbar <= x <= 5 bar',
        usual: [
          '-5 mbar',
          '1 bar',
          { below: 'before a filter the pressure is above that outside', above: 'a filter seldom stands under more' },
        ],
        example: '95 mbar',
        units: ['mbar', 'kPa', 'psi'],
      }),
    ),
    pressureDrop: wf.optional(
      wf.quantity(differentialPressure, {
        symbol: '\\Delta p',
        label: 'Pressure drop over the filter',
        description: 'Gives the flow in the middle of the filter, which the pressure drop calculations ask for, and the one after it.',
        range: '0 mbar <= x <= 5 bar',
        usual: ['0 mbar', '400 mbar', 'a larger drop points to a misread unit or a closed exhaust'],
        example: '95 mbar',
        units: ['mbar', 'kPa', 'psi'],
      }),
    ),
    ambientPressure: wf.quantity(absolutePressure, {
      symbol: 'p_a',
      label: 'Ambient pressure',
      description: 'Of the place, not reduced to sea level as a weather report gives it.',
      range: '30 <= x <= 120 kPa',
      usual: ['60 kPa', '108 kPa', 'air pressure at places that a road reaches'],
      example: '986 hPa',
      default: ['101.325 kPa', 'sea level; each 1000 m of altitude lowers it by about 11 %'],
      units: ['kPa', 'mbar'],
    }),
    molarMass: molarMassField,
  },
  example: { exhaustMassFlow: '305 kg/h', gasTemperature: '206 °C', pressureDrop: '95 mbar', ambientPressure: '986 hPa' },
  intermediates: {
    usedBackPressure: wf.quantityOutput(gaugePressure, {
      symbol: 'p_{g,u}',
      label: 'Back-pressure as used',
      digits: 4,
      units: ['mbar', 'kPa', 'psi'],
    }),
    gasPressure: wf.quantityOutput(absolutePressure, {
      symbol: 'p',
      label: 'Absolute pressure of the gas',
      digits: 5,
      units: ['kPa', 'mbar'],
    }),
    density: wf.quantityOutput(density, { symbol: '\\rho', label: 'Density of the gas', digits: 4, units: ['kg/m3'] }),
  },
  outputs: {
    outletVolumeFlow: wf.optional(flowOutput('\\dot V_1', 'Volume flow after the filter')),
    middleVolumeFlow: wf.optional(
      flowOutput('\\dot V_m', 'Volume flow in the middle of the filter', 'Take this one to the pressure drop calculations.'),
    ),
    exhaustVolumeFlow: flowOutput('\\dot V', 'Exhaust volume flow before the filter'),
  },
  constants: {
    gasConstant,
  },
  answer: 'exhaustVolumeFlow',
  steps: [
    wf.cases(
      'usedBackPressure',
      {
        'known(backPressure) and known(pressureDrop)': 'max(backPressure, pressureDrop)',
        'known(backPressure)': 'backPressure',
        'known(pressureDrop)': 'pressureDrop',
        otherwise: '0',
      },
      massBalance,
      undefined,
      'Nothing before the filter can be lower than the drop over it.',
    ),
    wf.formula('gasPressure', 'ambientPressure + usedBackPressure'),
    wf.formula('density', 'gasPressure * molarMass / (gasConstant * gasTemperature)', siBrochure),
    wf.formula('exhaustVolumeFlow', 'exhaustMassFlow / density', massBalance),
    wf.formula('outletVolumeFlow', 'exhaustVolumeFlow * gasPressure / (gasPressure - pressureDrop)', massBalance),
    wf.formula('middleVolumeFlow', 'exhaustVolumeFlow * gasPressure / (gasPressure - pressureDrop / 2)', massBalance),
  ],
  assumptions: {
    ideal_gas: 'The gas is ideal; at exhaust conditions real air differs by less than 0.1 %.',
    upstream_state:
      'The volume flow belongs to the temperature and pressure given; after the filter the gas is thinner and the volume larger, by 1 % for each 10 mbar of drop.',
  },
  limits: {
    actual_not_standard: 'An actual volume flow: not comparable with a flow in standard or normal cubic metres.',
    which_pressure:
      'The pressure drop calculations take the flow in the middle of the filter, as given here with the drop. Where they ask which pressure a flow belongs to, any of the three will do.',
  },
  cautions: [cautions.hotExhaust],
  compute(input, { constants, warn, assume }) {
    const { exhaustMassFlow, gasTemperature, molarMass: mass } = input;
    const { pressureDrop, backPressure } = input;
    if (pressureDrop !== undefined && backPressure !== undefined && !(pressureDrop < input.ambientPressure + backPressure)) {
      return wf.inconsistentInputs(
        'The drop is as large as the pressure before the filter: nothing is left after it.',
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
          : 'Back-pressure not given: taken as the drop over the filter, with no restriction after it.';
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
