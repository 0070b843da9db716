import {
  choice,
  defineCalculation,
  missingInputs,
  optional,
  quantity,
  quantityOutput,
  quantityWithDefault,
  type Refusal,
} from '@wallflow/calculation';
import {
  fraction,
  massConcentration,
  massFlow,
  massPerDistance,
  massPerEnergy,
  power,
  standardVolumeFlow,
  velocity,
} from '@wallflow/units';
import * as z from 'zod';
import { cautions } from '../../cautions.js';
import { drivingPractice, emissionRates } from '../sources.js';
import { capturedSoot, sootFlowFrom } from './kernel.js';

const inputs = z.strictObject({
  given: choice({
    label: 'What you have',
    options: {
      'per-time': 'soot per hour',
      'per-distance': 'soot per distance, and the speed',
      'per-energy': 'soot per work of the engine, and the power',
      concentration: 'soot per volume of exhaust, as from a smoke reading, and the exhaust flow',
    },
    example: 'per-distance',
  }),
  perTime: quantity(massFlow, {
    symbol: '\\dot m',
    label: 'Soot per time',
    min: '0 g/h',
    max: '500 g/h',
    example: '1.2 g/h',
    units: ['g/h', 'mg/s'],
  }).optional(),
  perDistance: quantity(massPerDistance, {
    symbol: 'e_d',
    label: 'Soot per distance',
    min: '0 g/km',
    max: '5 g/km',
    example: '0.02 g/km',
    units: ['g/km', 'mg/km'],
  }).optional(),
  speed: quantity(velocity, {
    symbol: 'v',
    label: 'Mean speed',
    min: '0 km/h',
    max: '200 km/h',
    example: '60 km/h',
    units: ['km/h', 'mph', 'm/s'],
  }).optional(),
  perEnergy: quantity(massPerEnergy, {
    symbol: 'e_P',
    label: 'Soot per work',
    min: '0 g/kWh',
    max: '5 g/kWh',
    example: '0.05 g/kWh',
    units: ['g/kWh', 'mg/kWh'],
  }).optional(),
  power: quantity(power, {
    symbol: 'P',
    label: 'Mean engine power',
    min: '0 kW',
    max: '1000 kW',
    example: '25 kW',
    units: ['kW', 'hp_metric'],
  }).optional(),
  concentration: quantity(massConcentration, {
    symbol: 'c',
    label: 'Soot per volume of exhaust at the standard state',
    description: 'From a smoke number or an opacity by the smoke calculations; mind the state of the gas that it refers to.',
    min: '0 mg/m3',
    max: '2000 mg/m3',
    example: '10 mg/m3',
    units: ['mg/m3', 'g/m3'],
  }).optional(),
  exhaustFlow: quantity(standardVolumeFlow, {
    symbol: '\\dot V_0',
    label: 'Exhaust flow at the standard state (0 °C, 1 atm)',
    min: '0 m3/h_0C',
    max: '5000 m3/h_0C',
    example: '120 m3/h_0C',
  }).optional(),
  capture: quantityWithDefault(fraction, {
    symbol: '\\eta_f',
    label: 'Share that the filter holds back',
    min: '0 %',
    max: '100 %',
    example: '98 %',
    default: '100 %',
    defaultReason: 'an intact wall-flow filter holds back nearly all soot by mass; the safe side for the load',
  }),
});

type Inputs = z.output<typeof inputs>;

function pair(input: Inputs): readonly [number, number] | Refusal {
  switch (input.given) {
    case 'per-time':
      return input.perTime === undefined ? missingInputs('perTime') : [input.perTime, 1];
    case 'per-distance':
      if (input.perDistance === undefined) return missingInputs('perDistance');
      return input.speed === undefined ? missingInputs('speed') : [input.perDistance, input.speed];
    case 'per-energy':
      if (input.perEnergy === undefined) return missingInputs('perEnergy');
      return input.power === undefined ? missingInputs('power') : [input.perEnergy, input.power];
    default:
      if (input.concentration === undefined) return missingInputs('concentration');
      return input.exhaustFlow === undefined ? missingInputs('exhaustFlow') : [input.concentration, input.exhaustFlow];
  }
}

export const sootEngineOutCalculation = defineCalculation({
  id: 'soot-engine-out',
  version: '1.0.0',
  subject: 'soot',
  title: 'Soot that comes into the filter',
  purpose: 'How many grams of soot per hour and per distance does this engine put into its filter?',
  usedBy: ['technician', 'developer', 'trainer'],
  keywords: ['engine-out', 'soot rate', 'g/h', 'g/km', 'g/kWh', 'smoke'],
  method: 'specific emission times what it is specific to',
  inputs,
  example: { perDistance: '0.02 g/km', speed: '60 km/h' },
  intermediates: {
    engineOut: quantityOutput(massFlow, { symbol: '\\dot m_e', label: 'Soot from the engine', digits: 4, units: ['g/h', 'mg/s'] }),
  },
  outputs: {
    sootFlow: quantityOutput(massFlow, {
      symbol: '\\dot m_{in}',
      label: 'Soot that stays in the filter',
      digits: 4,
      units: ['g/h', 'mg/s'],
    }),
    passed: quantityOutput(massFlow, { symbol: '\\dot m_p', label: 'Soot that passes', digits: 3, units: ['g/h', 'mg/s'] }),
    perDistanceOut: optional(
      quantityOutput(massPerDistance, { symbol: 'e_f', label: 'Soot into the filter per distance', digits: 4, units: ['g/km', 'mg/km'] }),
    ),
  },
  constants: {},
  steps: [
    {
      gives: 'engineOut',
      text: 'From what was given: [[given]]; a specific emission times speed, power or flow.',
      source: 'emissionRates',
    },
    { gives: 'passed', tex: '[[passed]] = [[engineOut]]\\left(1-[[capture]]\\right)', source: 'emissionRates' },
    { gives: 'perDistanceOut', tex: '[[perDistanceOut]] = \\frac{[[sootFlow]]}{[[speed]]}', source: 'emissionRates' },
    { gives: 'sootFlow', tex: '[[sootFlow]] = [[engineOut]]\\,[[capture]]', source: 'emissionRates' },
  ],
  assumptions: [{ code: 'mean_values', text: 'Speed, power and flow are means over the same time as the emission.' }],
  limits: [
    {
      code: 'engine_condition',
      text: 'A worn injector, a stuck EGR valve or a boost leak multiplies the soot: measure rather than assume.',
    },
  ],
  cautions: [cautions.sensorFirst],
  sources: { emissionRates, drivingPractice },
  compute(input) {
    const given = pair(input);
    if (!Array.isArray(given)) return given as Refusal;
    const engineOut = sootFlowFrom(given[0], given[1]);
    const { captured, passed } = capturedSoot(engineOut, input.capture);
    const { speed } = input;
    return { engineOut, sootFlow: captured, passed, perDistanceOut: speed === undefined || speed === 0 ? undefined : captured / speed };
  },
});
