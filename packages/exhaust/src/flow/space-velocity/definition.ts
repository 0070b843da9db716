import { choiceWithDefault, commonPractice, constant, defineCalculation, quantity, quantityOutput } from '@wallflow/calculation';
import {
  absolutePressure,
  molarFlow,
  molarHeatCapacity,
  spaceVelocity as spaceVelocityKind,
  temperature,
  volume,
  volumeFlow,
} from '@wallflow/units';
import * as z from 'zod';
import { molarGasConstant } from '../../gas/constants.js';
import { molarMassField } from '../../gas/fields.js';
import { siBrochure } from '../../sources.js';
import { exhaustMassFlowField } from '../fields.js';
import { iso13443 } from '../sources.js';
import { molarFlowOfMass, referencePressure, standardVolumeFlowOfMoles } from '../standard-volume-flow/kernel.js';
import { spaceVelocity } from './kernel.js';

const referenceTemperature = (kelvin: number, symbol: string, label: string) =>
  constant(temperature, kelvin, { symbol, label: `Reference temperature ${label}`, source: 'iso13443' });

export const spaceVelocityCalculation = defineCalculation({
  id: 'space-velocity',
  version: '1.0.0',
  subject: 'flow',
  title: 'Space velocity of a catalyst',
  purpose: 'How many catalyst volumes of exhaust pass in an hour, at a named reference state?',
  usedBy: ['developer', 'trainer'],
  keywords: ['space velocity', 'catalyst', 'reference state'],
  method: 'volume flow at the reference state over catalyst volume',
  inputs: z.strictObject({
    exhaustMassFlow: exhaustMassFlowField,
    catalystVolume: quantity(volume, {
      symbol: 'V_c',
      label: 'Catalyst volume',
      description: 'Outer volume of the coated brick, channels and walls together.',
      above: '1 cm3',
      max: '500 L',
      usual: ['0.3 L', '60 L'],
      usualReason: 'catalysts of road and machine diesels',
      example: '4.0 L',
      units: ['L', 'cm3'],
    }),
    referenceState: choiceWithDefault({
      label: 'Reference state, at 101.325 kPa',
      options: { '0C': '0 °C', '15C': '15 °C', '20C': '20 °C', '25C': '25 °C' },
      example: '0C',
      default: '0C',
      defaultReason: 'the usual one for catalysts; at 20 °C the same flow gives a 7.3 % higher number',
    }),
    molarMass: molarMassField,
  }),
  intermediates: {
    molarFlow: quantityOutput(molarFlow, { symbol: '\\dot n', label: 'Molar flow', digits: 5, units: ['mol/s'] }),
    referenceTemperature: quantityOutput(temperature, {
      symbol: 'T_{ref}',
      label: 'Reference temperature',
      digits: 5,
      units: ['degC', 'K'],
    }),
    referenceVolumeFlow: quantityOutput(volumeFlow, {
      symbol: '\\dot V_{ref}',
      label: 'Volume flow at the reference state',
      digits: 5,
      units: ['m3/h'],
    }),
  },
  outputs: {
    spaceVelocity: quantityOutput(spaceVelocityKind, { symbol: 'SV', label: 'Space velocity', digits: 5, units: ['1/h', '1/s'] }),
  },
  constants: {
    gasConstant: constant(molarHeatCapacity, molarGasConstant, { symbol: 'R', label: 'Molar gas constant', source: 'siBrochure' }),
    referencePressure: constant(absolutePressure, referencePressure, { symbol: 'p_0', label: 'Reference pressure', source: 'iso13443' }),
    at0C: referenceTemperature(273.15, 'T_{0}', '0 °C'),
    at15C: referenceTemperature(288.15, 'T_{15}', '15 °C'),
    at20C: referenceTemperature(293.15, 'T_{20}', '20 °C'),
    at25C: referenceTemperature(298.15, 'T_{25}', '25 °C'),
  },
  steps: [
    { gives: 'molarFlow', tex: '[[molarFlow]] = \\frac{[[exhaustMassFlow]]}{[[molarMass]]}' },
    { gives: 'referenceTemperature', text: 'Reference state chosen: [[referenceState]].', source: 'iso13443' },
    {
      gives: 'referenceVolumeFlow',
      tex: '[[referenceVolumeFlow]] = \\frac{[[molarFlow]]\\,[[gasConstant]]\\,[[referenceTemperature]]}{[[referencePressure]]}',
      source: 'siBrochure',
    },
    { gives: 'spaceVelocity', tex: '[[spaceVelocity]] = \\frac{[[referenceVolumeFlow]]}{[[catalystVolume]]}', source: 'definition' },
  ],
  assumptions: [{ code: 'ideal_gas', text: 'The gas is ideal, also in the reference state: water is counted as vapour.' }],
  limits: [
    { code: 'name_the_state', text: 'A space velocity without its reference state is worth no more than 10 %.' },
    { code: 'usual', text: 'Catalysts are usually laid out for 10 000 to 100 000 per hour (common practice, no source).' },
  ],
  cautions: [],
  sources: {
    definition: commonPractice('Space velocity: volume flow at a stated reference state over the outer volume of the catalyst'),
    siBrochure,
    iso13443,
  },
  compute(input, { constants }) {
    const temperatureOfState = { '0C': constants.at0C, '15C': constants.at15C, '20C': constants.at20C, '25C': constants.at25C }[
      input.referenceState
    ];
    const moles = molarFlowOfMass(input.exhaustMassFlow, input.molarMass);
    const flow = standardVolumeFlowOfMoles(moles, temperatureOfState, constants.referencePressure, constants.gasConstant);
    return {
      molarFlow: moles,
      referenceTemperature: temperatureOfState,
      referenceVolumeFlow: flow,
      spaceVelocity: spaceVelocity(flow, input.catalystVolume),
    };
  },
});
