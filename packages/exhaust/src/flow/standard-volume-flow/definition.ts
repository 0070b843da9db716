import { choice, constant, defineCalculation, missingInputs, quantity, quantityOutput, type Refusal } from '@wallflow/calculation';
import { absolutePressure, massFlow, molarFlow, molarHeatCapacity, standardVolumeFlow, temperature, volumeFlow } from '@wallflow/units';
import * as z from 'zod';
import { molarGasConstant } from '../../gas/constants.js';
import { gasPressureField, molarMassField } from '../../gas/fields.js';
import { cfr1065, siBrochure } from '../../sources.js';
import { exhaustMassFlowField, gasTemperatureField } from '../fields.js';
import { iso13443, massBalance } from '../sources.js';
import { molarFlowOfMass, molarFlowOfVolume, normalTemperature, referencePressure, standardVolumeFlowOfMoles } from './kernel.js';

const inputs = z.strictObject({
  from: choice({
    label: 'Flow given as',
    options: {
      'mass-flow': 'mass flow',
      'molar-flow': 'molar flow',
      'actual-volume-flow': 'actual volume flow with its temperature and pressure',
      'standard-volume-flow': 'standard volume flow of a named reference state',
    },
    example: 'mass-flow',
  }),
  massFlow: exhaustMassFlowField.optional(),
  molarMass: molarMassField,
  molarFlow: quantity(molarFlow, {
    symbol: '\\dot n_g',
    label: 'Molar flow',
    min: '0 mol/s',
    max: '300 mol/s',
    usual: ['0 mol/s', '50 mol/s'],
    usualReason: 'road and machine diesels give this much',
    example: '1.7 mol/s',
  }).optional(),
  volumeFlow: quantity(volumeFlow, {
    symbol: '\\dot V',
    label: 'Actual volume flow',
    min: '0 m3/h',
    max: '50000 m3/h',
    usual: ['0 m3/h', '10000 m3/h'],
    usualReason: 'road and machine diesels give this much',
    example: '237 m3/h',
    units: ['m3/h', 'L/s', 'ft3/min'],
  }).optional(),
  gasTemperature: gasTemperatureField.optional(),
  gasPressure: gasPressureField.optional(),
  standardVolumeFlow: quantity(standardVolumeFlow, {
    symbol: '\\dot V_{ref,g}',
    label: 'Standard volume flow',
    description: 'The unit names its reference state.',
    min: '0 m3/h_0C',
    max: '30000 m3/h_0C',
    usual: ['0 m3/h_0C', '5000 m3/h_0C'],
    usualReason: 'road and machine diesels give this much',
    example: '138 m3/h_0C',
  }).optional(),
});

type Input = z.output<typeof inputs>;

function molesPerSecond(input: Input, gasConstant: number, normalVolume: number): number | Refusal {
  const { from, massFlow: mass, molarFlow: moles, volumeFlow: volume, standardVolumeFlow: standard } = input;
  if (from === 'mass-flow') return mass === undefined ? missingInputs('massFlow') : molarFlowOfMass(mass, input.molarMass);
  if (from === 'molar-flow') return moles ?? missingInputs('molarFlow');
  if (from === 'standard-volume-flow') return standard === undefined ? missingInputs('standardVolumeFlow') : standard / normalVolume;
  if (volume === undefined || input.gasTemperature === undefined || input.gasPressure === undefined) {
    return missingInputs(...(['volumeFlow', 'gasTemperature', 'gasPressure'] as const).filter((key) => input[key] === undefined));
  }
  return molarFlowOfVolume({ volumeFlow: volume, temperature: input.gasTemperature, pressure: input.gasPressure }, gasConstant);
}

const at = (unit: 'm3/h_0C' | 'm3/h_15C' | 'm3/h_20C' | 'm3/h_25C', symbol: string, label: string) =>
  quantityOutput(standardVolumeFlow, { symbol, label, digits: 6, units: [unit] });

export const standardVolumeFlowCalculation = defineCalculation({
  id: 'standard-volume-flow',
  version: '1.0.0',
  subject: 'flow',
  title: 'Standard volume flow and molar flow',
  purpose: 'What is this gas flow in moles, and in cubic metres of each reference state?',
  usedBy: ['developer', 'trainer'],
  keywords: ['normal cubic metre', 'standard cubic metre', 'molar flow', 'reference state'],
  method: 'ideal gas law',
  inputs,
  example: { massFlow: '179 kg/h' },
  intermediates: {},
  outputs: {
    molarFlow: quantityOutput(molarFlow, { symbol: '\\dot n', label: 'Molar flow', digits: 6, units: ['mol/s', 'mol/h'] }),
    at0C: at('m3/h_0C', '\\dot V_{0}', 'Volume flow at 0 °C, 101.325 kPa (normal)'),
    at15C: at('m3/h_15C', '\\dot V_{15}', 'Volume flow at 15 °C, 101.325 kPa (ISO 13443)'),
    at20C: at('m3/h_20C', '\\dot V_{20}', 'Volume flow at 20 °C, 101.325 kPa (40 CFR 1065)'),
    at25C: at('m3/h_25C', '\\dot V_{25}', 'Volume flow at 25 °C, 101.325 kPa'),
    massFlow: quantityOutput(massFlow, { symbol: '\\dot m_r', label: 'Mass flow', digits: 6, units: ['kg/h', 'g/s'] }),
  },
  constants: {
    gasConstant: constant(molarHeatCapacity, molarGasConstant, { symbol: 'R', label: 'Molar gas constant', source: 'siBrochure' }),
    normalTemperature: constant(temperature, normalTemperature, {
      symbol: 'T_0',
      label: 'Temperature of the normal state',
      source: 'iso13443',
    }),
    referencePressure: constant(absolutePressure, referencePressure, { symbol: 'p_0', label: 'Reference pressure', source: 'iso13443' }),
  },
  steps: [
    { gives: 'molarFlow', text: 'Moles per second, from: [[from]].', source: 'cfr1065', locator: '1065.640(a)' },
    { gives: 'massFlow', tex: '[[massFlow]] = [[molarFlow]]\\,[[molarMass]]', source: 'massBalance' },
    { gives: 'at15C', text: 'The same moles at 15 °C: 288.15/273.15 times the volume at 0 °C.', source: 'iso13443' },
    { gives: 'at20C', text: 'At 20 °C: 293.15/273.15 times, 7.3 % more than at 0 °C.', source: 'cfr1065', locator: '1065.640(a)' },
    { gives: 'at25C', text: 'At 25 °C: 298.15/273.15 times.' },
    {
      gives: 'at0C',
      tex: '[[at0C]] = \\frac{[[molarFlow]]\\,[[gasConstant]]\\,[[normalTemperature]]}{[[referencePressure]]}',
      source: 'siBrochure',
    },
  ],
  assumptions: [{ code: 'ideal_gas', text: 'The gas is ideal, also in the reference state: water is counted as vapour.' }],
  limits: [{ code: 'one_flow', text: 'The four volumes are one and the same flow; never compare numbers of different reference states.' }],
  cautions: [],
  sources: { cfr1065, iso13443, siBrochure, massBalance },
  compute(input, { constants }) {
    const normal = (moles: number) =>
      standardVolumeFlowOfMoles(moles, constants.normalTemperature, constants.referencePressure, constants.gasConstant);
    const moles = molesPerSecond(input, constants.gasConstant, normal(1));
    if (typeof moles !== 'number') return moles;
    const flow = normal(moles);
    return { molarFlow: moles, at0C: flow, at15C: flow, at20C: flow, at25C: flow, massFlow: moles * input.molarMass };
  },
});
