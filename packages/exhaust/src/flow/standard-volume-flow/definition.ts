import * as wf from '@wallflow/calculation';
import { absolutePressure, massFlow, molarFlow, standardVolumeFlow, temperature, volumeFlow } from '@wallflow/units';
import { gasPressureField, molarMassField } from '../../gas/fields.js';
import { cfr1065, siBrochure } from '../../sources.js';
import { gasConstant } from '../../vocabulary/constants.js';
import { exhaustMassFlowField, gasTemperatureField } from '../fields.js';
import { iso13443, massBalance } from '../sources.js';
import { molarFlowOfMass, molarFlowOfVolume, normalTemperature, referencePressure, standardVolumeFlowOfMoles } from './kernel.js';

const usualFlow = 'road and machine diesels give this much';

const at = (unit: 'm3/h_0C' | 'm3/h_15C' | 'm3/h_20C' | 'm3/h_25C', symbol: string, label: string) =>
  wf.quantityOutput(standardVolumeFlow, { symbol, label, digits: 6, units: [unit] });

export const standardVolumeFlowCalculation = wf.defineCalculation({
  id: 'standard-volume-flow',
  subject: 'flow',
  title: 'Standard volume flow and molar flow',
  purpose: 'What is this gas flow in moles, and in cubic metres of each reference state?',
  keywords: 'normal cubic metre, standard cubic metre, molar flow, reference state',
  method: 'ideal gas law',
  inputs: {
    from: wf.choice({
      label: 'Flow entered as',
      options: {
        'mass-flow': 'mass flow',
        'molar-flow': 'molar flow',
        'actual-volume-flow': 'actual volume flow with its temperature and pressure',
        'standard-volume-flow': 'standard volume flow of a named reference state',
      },
      example: 'mass-flow',
    }),
    ...wf.relevantWhen('from', 'mass-flow', { exhaustMassFlow: exhaustMassFlowField }),
    ...wf.relevantWhen('from', 'molar-flow', {
      molarFlow: wf.quantity(molarFlow, {
        symbol: '\\dot n_g',
        label: 'Molar flow',
        range: '0 <= x <= 300 mol/s',
        usual: ['0 mol/s', '50 mol/s', usualFlow],
        example: '2.9 mol/s',
      }),
    }),
    ...wf.relevantWhen('from', 'actual-volume-flow', {
      volumeFlow: wf.quantity(volumeFlow, {
        symbol: '\\dot V',
        label: 'Actual volume flow',
        range: '0 <= x <= 50000 m3/h',
        usual: ['0 m3/h', '10000 m3/h', usualFlow],
        example: '388 m3/h',
        units: ['m3/h', 'L/s', 'ft3/min'],
      }),
      gasTemperature: gasTemperatureField,
      gasPressure: gasPressureField,
    }),
    ...wf.relevantWhen('from', 'standard-volume-flow', {
      standardVolumeFlow: wf.quantity(standardVolumeFlow, {
        symbol: '\\dot V_{ref,g}',
        label: 'Standard volume flow',
        description: 'The unit names its reference state.',
        range: '0 <= x <= 30000 m3/h_0C',
        usual: ['0 m3/h_0C', '5000 m3/h_0C', usualFlow],
        example: '236 m3/h_0C',
      }),
    }),
    molarMass: molarMassField,
  },
  outputs: {
    resultingMolarFlow: wf.quantityOutput(molarFlow, { symbol: '\\dot n', label: 'Molar flow', digits: 6, units: ['mol/s', 'mol/h'] }),
    volumeFlowAt0C: at('m3/h_0C', '\\dot V_{0}', 'Volume flow at 0 °C, 101.325 kPa (normal)'),
    volumeFlowAt15C: at('m3/h_15C', '\\dot V_{15}', 'Volume flow at 15 °C, 101.325 kPa (ISO 13443)'),
    volumeFlowAt20C: at('m3/h_20C', '\\dot V_{20}', 'Volume flow at 20 °C, 101.325 kPa (40 CFR 1065)'),
    volumeFlowAt25C: at('m3/h_25C', '\\dot V_{25}', 'Volume flow at 25 °C, 101.325 kPa'),
    resultingMassFlow: wf.quantityOutput(massFlow, { symbol: '\\dot m_r', label: 'Mass flow', digits: 6, units: ['kg/h', 'g/s'] }),
  },
  constants: {
    gasConstant,
    normalTemperature: wf.constant(temperature, normalTemperature, {
      symbol: 'T_0',
      label: 'Temperature of the normal state',
      source: iso13443,
    }),
    referencePressure: wf.constant(absolutePressure, referencePressure, { symbol: 'p_0', label: 'Reference pressure', source: iso13443 }),
  },
  answer: 'volumeFlowAt0C',
  steps: [
    wf.cases(
      'resultingMolarFlow',
      {
        "from == 'mass-flow'": 'exhaustMassFlow / molarMass',
        "from == 'molar-flow'": 'molarFlow',
        "from == 'standard-volume-flow'": 'standardVolumeFlow * referencePressure / (gasConstant * normalTemperature)',
        otherwise: 'gasPressure * volumeFlow / (gasConstant * gasTemperature)',
      },
      cfr1065,
      '1065.640(a)',
    ),
    wf.formula('resultingMassFlow', 'resultingMolarFlow * molarMass', massBalance),
    wf.formula('volumeFlowAt0C', 'resultingMolarFlow * gasConstant * normalTemperature / referencePressure', siBrochure),
    wf.formula('volumeFlowAt15C', "as(in(volumeFlowAt0C, 'm3/h_0C') * 288.15 / 273.15, 'm3/h_15C')", iso13443),
    wf.formula('volumeFlowAt20C', "as(in(volumeFlowAt0C, 'm3/h_0C') * 293.15 / 273.15, 'm3/h_20C')", cfr1065, '1065.640(a)'),
    wf.formula('volumeFlowAt25C', "as(in(volumeFlowAt0C, 'm3/h_0C') * 298.15 / 273.15, 'm3/h_25C')"),
  ],
  assumptions: { ideal_gas: 'The gas is ideal, also in the reference state: water is counted as vapour.' },
  limits: { one_flow: 'The four volumes are one and the same flow; never compare numbers of different reference states.' },
  compute(input, { constants }) {
    const normal = (moles: number) =>
      standardVolumeFlowOfMoles(moles, constants.normalTemperature, constants.referencePressure, constants.gasConstant);
    const moles = () => {
      switch (input.from) {
        case 'mass-flow':
          return molarFlowOfMass(wf.known(input.exhaustMassFlow), input.molarMass);
        case 'molar-flow':
          return wf.known(input.molarFlow);
        case 'standard-volume-flow':
          return wf.known(input.standardVolumeFlow) / normal(1);
        default: {
          const state = {
            volumeFlow: wf.known(input.volumeFlow),
            temperature: wf.known(input.gasTemperature),
            pressure: wf.known(input.gasPressure),
          };
          return molarFlowOfVolume(state, constants.gasConstant);
        }
      }
    };
    const resultingMolarFlow = moles();
    const flow = normal(resultingMolarFlow);
    return {
      resultingMolarFlow,
      resultingMassFlow: resultingMolarFlow * input.molarMass,
      volumeFlowAt0C: flow,
      volumeFlowAt15C: flow,
      volumeFlowAt20C: flow,
      volumeFlowAt25C: flow,
    };
  },
});
