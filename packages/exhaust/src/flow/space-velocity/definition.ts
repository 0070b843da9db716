import * as wf from '@wallflow/calculation';
import { absolutePressure, molarFlow, spaceVelocity as spaceVelocityKind, temperature, volume, volumeFlow } from '@wallflow/units';
import { molarMassField } from '../../gas/fields.js';
import { siBrochure } from '../../sources.js';
import { gasConstant } from '../../vocabulary/constants.js';
import { exhaustMassFlowField } from '../fields.js';
import { iso13443 } from '../sources.js';
import { molarFlowOfMass, referencePressure, standardVolumeFlowOfMoles } from '../standard-volume-flow/kernel.js';
import { spaceVelocity } from './kernel.js';

const referenceTemperature = (kelvin: number, symbol: string, label: string) =>
  wf.constant(temperature, kelvin, { symbol, label: `Reference temperature ${label}`, source: iso13443 });

const definition = wf.commonPractice('Space velocity: volume flow at a stated reference state over the outer volume of the catalyst');

export const spaceVelocityCalculation = wf.defineCalculation({
  id: 'space-velocity',
  subject: 'flow',
  title: 'Space velocity of a catalyst',
  purpose: 'How many catalyst volumes of exhaust pass in an hour, at a named reference state?',
  keywords: 'space velocity, catalyst, reference state',
  method: 'volume flow at the reference state over catalyst volume',
  inputs: {
    exhaustMassFlow: exhaustMassFlowField,
    catalystVolume: wf.quantity(volume, {
      symbol: 'V_c',
      label: 'Catalyst volume',
      description: 'Outer volume of the coated brick, channels and walls together.',
      range: '1 cm3 < x <= 500 L',
      usual: ['0.3 L', '60 L', 'catalysts of road and machine diesels'],
      example: '4.0 L',
      units: ['L', 'cm3'],
    }),
    referenceState: wf.choice({
      label: 'Reference state, at 101.325 kPa',
      options: { '0C': '0 °C', '15C': '15 °C', '20C': '20 °C', '25C': '25 °C' },
      default: ['0C', 'the usual one for catalysts; at 20 °C the same flow gives a 7.3 % higher number'],
    }),
    molarMass: molarMassField,
  },
  intermediates: {
    molarFlow: wf.quantityOutput(molarFlow, { symbol: '\\dot n', label: 'Molar flow', digits: 5, units: ['mol/s'] }),
    referenceTemperature: wf.quantityOutput(temperature, {
      symbol: 'T_{ref}',
      label: 'Reference temperature',
      digits: 5,
      units: ['degC', 'K'],
    }),
    referenceVolumeFlow: wf.quantityOutput(volumeFlow, {
      symbol: '\\dot V_{ref}',
      label: 'Volume flow at the reference state',
      digits: 5,
      units: ['m3/h'],
    }),
  },
  outputs: {
    spaceVelocity: wf.quantityOutput(spaceVelocityKind, { symbol: 'SV', label: 'Space velocity', digits: 5, units: ['1/h', '1/s'] }),
  },
  constants: {
    gasConstant,
    referencePressure: wf.constant(absolutePressure, referencePressure, { symbol: 'p_0', label: 'Reference pressure', source: iso13443 }),
    referenceAt0C: referenceTemperature(273.15, 'T_{0}', '0 °C'),
    referenceAt15C: referenceTemperature(288.15, 'T_{15}', '15 °C'),
    referenceAt20C: referenceTemperature(293.15, 'T_{20}', '20 °C'),
    referenceAt25C: referenceTemperature(298.15, 'T_{25}', '25 °C'),
  },
  answer: 'spaceVelocity',
  steps: [
    wf.formula('molarFlow', 'exhaustMassFlow / molarMass'),
    wf.cases(
      'referenceTemperature',
      {
        "referenceState == '0C'": 'referenceAt0C',
        "referenceState == '15C'": 'referenceAt15C',
        "referenceState == '20C'": 'referenceAt20C',
        otherwise: 'referenceAt25C',
      },
      iso13443,
    ),
    wf.formula('referenceVolumeFlow', 'molarFlow * gasConstant * referenceTemperature / referencePressure', siBrochure),
    wf.formula('spaceVelocity', 'referenceVolumeFlow / catalystVolume', definition),
  ],
  assumptions: { ideal_gas: 'The gas is ideal, also in the reference state: water is counted as vapour.' },
  limits: {
    name_the_state: 'A space velocity without its reference state is good to 10 % at best.',
    usual: 'Catalysts are usually laid out for 10 000 to 100 000 per hour (common practice, no source).',
  },
  compute(input, { constants }) {
    const temperatureOfState = {
      '0C': constants.referenceAt0C,
      '15C': constants.referenceAt15C,
      '20C': constants.referenceAt20C,
      '25C': constants.referenceAt25C,
    }[input.referenceState];
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
