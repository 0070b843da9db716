import { choiceOutput, constant, defineCalculation, isRefusal, optional, quantity, quantityOutput } from '@wallflow/calculation';
import { length, mass, massFlow, massPerDistance, moleFraction, temperature, time, velocity } from '@wallflow/units';
import * as z from 'zod';
import { cautions } from '../../cautions.js';
import { siBrochure } from '../../sources.js';
import { drivingPatternInput, stretchesOf } from '../driving-pattern/inputs.js';
import { patternMap, settledMass } from '../driving-pattern/kernel.js';
import { kineticsConstants, kineticsInputs } from '../oxidation/inputs.js';
import { sootOxidationRate } from '../oxidation/kernel.js';
import { bai2016, bissettShadman1985, drivingPractice, uncoatedDisk2008, wholeFilterBalance } from '../sources.js';
import { preventingStretch, reachTrigger } from './kernel.js';

export const nextRegenerationCalculation = defineCalculation({
  id: 'next-regeneration',
  version: '1.1.0',
  subject: 'soot',
  title: 'Distance and time to the next regeneration',
  purpose: 'When will this driving pattern call for the next regeneration, and how much hot driving would make it needless?',
  usedBy: ['technician', 'trainer', 'developer'],
  keywords: ['regeneration interval', 'trigger', 'short trips', 'motorway'],
  method: 'soot balance over the repeated pattern, first time at the trigger',
  inputs: z.strictObject({
    sootMass: quantity(mass, { symbol: 'm_0', label: 'Soot now', min: '0 g', max: '5 kg', example: '3 g', units: ['g', 'kg'] }),
    triggerMass: quantity(mass, {
      symbol: 'm_{trig}',
      label: 'Soot at which a regeneration is triggered',
      above: '0 g',
      max: '5 kg',
      usual: ['3 g', '300 g'],
      usualReason: 'a car triggers at some 10 to 40 g, a truck at up to 200 g',
      example: '17 g',
      units: ['g', 'kg'],
    }),
    pattern: drivingPatternInput,
    hotTemperature: quantity(temperature, {
      symbol: 'T_h',
      label: 'Hot driving: filter temperature',
      min: '0 °C',
      max: '700 °C',
      example: '350 °C',
    }).optional(),
    hotNitrogenDioxide: quantity(moleFraction, {
      symbol: 'x_{NO_2,h}',
      label: 'Hot driving: nitrogen dioxide before the filter',
      min: '0 ppm',
      max: '2000 ppm',
      example: '300 ppm',
    }).optional(),
    hotOxygen: quantity(moleFraction, {
      symbol: 'x_{O_2,h}',
      label: 'Hot driving: oxygen',
      min: '0 %',
      max: '21 %',
      example: '9 %',
      units: ['%'],
    }).optional(),
    hotSootFlow: quantity(massFlow, {
      symbol: '\\dot m_h',
      label: 'Hot driving: soot that comes in',
      min: '0 g/h',
      max: '360 g/h',
      example: '3 g/h',
      units: ['g/h', 'mg/s'],
    }).optional(),
    hotSpeed: quantity(velocity, {
      symbol: 'v_h',
      label: 'Hot driving: speed',
      min: '0 km/h',
      max: '200 km/h',
      example: '80 km/h',
      units: ['km/h', 'mph'],
    }).optional(),
    ...kineticsInputs,
  }),
  example: { hotTemperature: '350 °C', hotNitrogenDioxide: '300 ppm', hotOxygen: '9 %', hotSootFlow: '3 g/h', hotSpeed: '80 km/h' },
  intermediates: {
    settledMass: optional(
      quantityOutput(mass, { symbol: 'm_{eq}', label: 'Soot at which the pattern would settle', digits: 3, units: ['g', 'kg'] }),
    ),
    netPerDistance: optional(
      quantityOutput(massPerDistance, {
        symbol: 'r',
        label: 'Net gain of soot per distance, from now on',
        digits: 3,
        units: ['g/km', 'mg/km'],
      }),
    ),
  },
  outputs: {
    outcome: choiceOutput({
      label: 'Outcome',
      options: { due: 'due now', coming: 'comes with this pattern', never: 'never comes with this pattern' },
    }),
    time: optional(quantityOutput(time, { symbol: 't', label: 'Driving time to the next regeneration', digits: 3, units: ['h', 'min'] })),
    distance: optional(quantityOutput(length, { symbol: 'd', label: 'Distance to the next regeneration', digits: 3, units: ['km', 'mi'] })),
    hotDuration: optional(
      quantityOutput(time, {
        symbol: 't_h',
        label: 'Hot driving at the end of every pass that makes regenerations needless',
        digits: 2,
        units: ['min', 'h'],
      }),
    ),
    hotDistance: optional(quantityOutput(length, { symbol: 'd_h', label: 'Distance of that hot driving', digits: 2, units: ['km', 'mi'] })),
  },
  constants: {
    ...kineticsConstants,
    longest: constant(time, 86_400, { symbol: 't_{max}', label: 'Longest hot stretch looked at', source: 'drivingPractice' }),
  },
  steps: [
    { gives: 'settledMass', text: 'Mass that one pass of the pattern leaves as it was.', source: 'wholeFilterBalance' },
    { gives: 'netPerDistance', text: 'Gain of the first pass over its distance.', source: 'wholeFilterBalance' },
    { gives: 'time', text: 'First time at which the soot reaches [[triggerMass]].', source: 'wholeFilterBalance' },
    { gives: 'distance', text: 'Distance driven until then.' },
    {
      gives: 'hotDuration',
      text: 'Least hot stretch per pass with which the settled soot stays below the trigger.',
      source: 'wholeFilterBalance',
    },
    { gives: 'hotDistance', tex: '[[hotDistance]] = [[hotSpeed]]\\,[[hotDuration]]' },
    { gives: 'outcome', text: 'Due when the soot is at the trigger; never when the pattern settles below it.' },
  ],
  assumptions: [
    { code: 'steady_stretches', text: 'Every stretch has its own steady temperature, gas and soot flow.' },
    { code: 'complete_start', text: 'The soot now is known; after an interrupted regeneration it is not zero.' },
  ],
  limits: [
    { code: 'mass_trigger', text: 'Control units also trigger by distance, time or pressure; the earliest of them counts.' },
    { code: 'passive_only', text: 'The hot stretch burns soot by itself; it is no forced regeneration.' },
  ],
  cautions: [cautions.sensorFirst],
  sources: { wholeFilterBalance, bai2016, bissettShadman1985, uncoatedDisk2008, drivingPractice, siBrochure },
  compute(input, { constants }) {
    const chosen = stretchesOf(input, constants);
    if (isRefusal(chosen)) return chosen;
    const { stretches, kinetics } = chosen;
    const reached = reachTrigger(stretches, input.sootMass, input.triggerMass);
    const map = patternMap(stretches);
    const gain = map.add - map.loss * input.sootMass;
    const { hotTemperature, hotNitrogenDioxide, hotOxygen, hotSootFlow, hotSpeed } = input;
    let hotDuration: number | undefined;
    if (hotTemperature !== undefined && hotNitrogenDioxide !== undefined && hotSootFlow !== undefined) {
      const at = { temperature: hotTemperature, nitrogenDioxide: hotNitrogenDioxide, oxygen: hotOxygen ?? 0.1 };
      const rate = sootOxidationRate(kinetics, at, constants.gasConstant).total;
      const hot = { speed: hotSpeed ?? 0, sootFlow: hotSootFlow, rate };
      hotDuration = preventingStretch(stretches, hot, input.triggerMass, constants.longest);
    }
    return {
      settledMass: settledMass(stretches),
      netPerDistance: map.distance > 0 ? gain / map.distance : undefined,
      outcome: reached === undefined ? 'never' : reached.time === 0 ? 'due' : 'coming',
      time: reached?.time,
      distance: reached?.distance,
      hotDuration,
      hotDistance: hotDuration === undefined || hotSpeed === undefined ? undefined : hotDuration * hotSpeed,
    };
  },
});
