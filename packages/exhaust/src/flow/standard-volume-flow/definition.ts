import { cases, choice, constant, defineCalculation, formula, known, quantity, quantityOutput, relevantWhen } from '@wallflow/calculation';
import { absolutePressure, massFlow, molarFlow, standardVolumeFlow, temperature, volumeFlow } from '@wallflow/units';
import { gasPressureField, molarMassField } from '../../gas/fields.js';
import { cfr1065, siBrochure } from '../../sources.js';
import { gasConstant } from '../../vocabulary/constants.js';
import { exhaustMassFlowField, gasTemperatureField } from '../fields.js';
import { iso13443, massBalance } from '../sources.js';
import { molarFlowOfMass, molarFlowOfVolume, normalTemperature, referencePressure, standardVolumeFlowOfMoles } from './kernel.js';

const usualFlow = 'road and machine diesels give this much';

const at = (unit: 'm3/h_0C' | 'm3/h_15C' | 'm3/h_20C' | 'm3/h_25C', symbol: string, label: string) =>
  quantityOutput(standardVolumeFlow, { symbol, label, digits: 6, units: [unit] });

export const standardVolumeFlowCalculation = defineCalculation({
  id: 'standard-volume-flow',
  version: '1.0.0',
  subject: 'flow',
  title: 'Standard volume flow and molar flow',
  purpose: 'What is this gas flow in moles, and in cubic metres of each reference state?',
  keywords: ['normal cubic metre', 'standard cubic metre', 'molar flow', 'reference state'],
  method: 'ideal gas law',
  inputs: {
    from: choice({
      label: 'Flow entered as',
      options: {
        'mass-flow': 'mass flow',
        'molar-flow': 'molar flow',
        'actual-volume-flow': 'actual volume flow with its temperature and pressure',
        'standard-volume-flow': 'standard volume flow of a named reference state',
      },
      example: 'mass-flow',
    }),
    ...relevantWhen('from', 'mass-flow', { massFlow: exhaustMassFlowField }),
    ...relevantWhen('from', 'molar-flow', {
      molarFlow: quantity(molarFlow, {
        symbol: '\\dot n_g',
        label: 'Molar flow',
        range: '0 <= x <= 300 mol/s',
        usual: ['0 mol/s', '50 mol/s', usualFlow],
        example: '2.9 mol/s',
      }),
    }),
    ...relevantWhen('from', 'actual-volume-flow', {
      volumeFlow: quantity(volumeFlow, {
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
    ...relevantWhen('from', 'standard-volume-flow', {
      standardVolumeFlow: quantity(standardVolumeFlow, {
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
    resultingMolarFlow: quantityOutput(molarFlow, { symbol: '\\dot n', label: 'Molar flow', digits: 6, units: ['mol/s', 'mol/h'] }),
    volumeFlowAt0C: at('m3/h_0C', '\\dot V_{0}', 'Volume flow at 0 °C, 101.325 kPa (normal)'),
    volumeFlowAt15C: at('m3/h_15C', '\\dot V_{15}', 'Volume flow at 15 °C, 101.325 kPa (ISO 13443)'),
    volumeFlowAt20C: at('m3/h_20C', '\\dot V_{20}', 'Volume flow at 20 °C, 101.325 kPa (40 CFR 1065)'),
    volumeFlowAt25C: at('m3/h_25C', '\\dot V_{25}', 'Volume flow at 25 °C, 101.325 kPa'),
    resultingMassFlow: quantityOutput(massFlow, { symbol: '\\dot m_r', label: 'Mass flow', digits: 6, units: ['kg/h', 'g/s'] }),
  },
  constants: {
    gasConstant,
    normalTemperature: constant(temperature, normalTemperature, {
      symbol: 'T_0',
      label: 'Temperature of the normal state',
      source: iso13443,
    }),
    referencePressure: constant(absolutePressure, referencePressure, { symbol: 'p_0', label: 'Reference pressure', source: iso13443 }),
  },
  answer: 'volumeFlowAt0C',
  steps: [
    cases(
      'resultingMolarFlow',
      {
        "from == 'mass-flow'": 'massFlow / molarMass',
        "from == 'molar-flow'": 'molarFlow',
        "from == 'standard-volume-flow'": 'standardVolumeFlow * referencePressure / (gasConstant * normalTemperature)',
        otherwise: 'gasPressure * volumeFlow / (gasConstant * gasTemperature)',
      },
      cfr1065,
      '1065.640(a)',
    ),
    formula('resultingMassFlow', 'resultingMolarFlow * molarMass', massBalance),
    formula('volumeFlowAt0C', 'resultingMolarFlow * gasConstant * normalTemperature / referencePressure', siBrochure),
    formula('volumeFlowAt15C', "as(in(volumeFlowAt0C, 'm3/h_0C') * 288.15 / 273.15, 'm3/h_15C')", iso13443),
    formula('volumeFlowAt20C', "as(in(volumeFlowAt0C, 'm3/h_0C') * 293.15 / 273.15, 'm3/h_20C')", cfr1065, '1065.640(a)'),
    formula('volumeFlowAt25C', "as(in(volumeFlowAt0C, 'm3/h_0C') * 298.15 / 273.15, 'm3/h_25C')"),
  ],
  assumptions: { ideal_gas: 'The gas is ideal, also in the reference state: water is counted as vapour.' },
  limits: { one_flow: 'The four volumes are one and the same flow; never compare numbers of different reference states.' },
  compute(input, { constants }) {
    const normal = (moles: number) =>
      standardVolumeFlowOfMoles(moles, constants.normalTemperature, constants.referencePressure, constants.gasConstant);
    const moles = () => {
      switch (input.from) {
        case 'mass-flow':
          return molarFlowOfMass(known(input.massFlow), input.molarMass);
        case 'molar-flow':
          return known(input.molarFlow);
        case 'standard-volume-flow':
          return known(input.standardVolumeFlow) / normal(1);
        default: {
          const state = {
            volumeFlow: known(input.volumeFlow),
            temperature: known(input.gasTemperature),
            pressure: known(input.gasPressure),
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
