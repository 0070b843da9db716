import * as wf from '@wallflow/calculation';
import { length, mass, massFlow, massPerDistance, moleFraction, temperature, time, velocity } from '@wallflow/units';
import { cautions } from '../../cautions.js';
import { drivingPatternInput, stretchesOf } from '../driving-pattern/inputs.js';
import { drivePattern, patternMap, settledSootMass } from '../driving-pattern/kernel.js';
import { passValues, passWorking } from '../driving-pattern/working.js';
import { kineticsConstants, kineticsInputs, oneLaw } from '../oxidation/inputs.js';
import { sootOxidationRate } from '../oxidation/kernel.js';
import { drivingPractice, wholeFilterBalance } from '../sources.js';
import { preventingStretch, reachTrigger } from './kernel.js';

const grams = (symbol: string, label: string, digits: number) => wf.quantityOutput(mass, { symbol, label, digits, units: ['g', 'kg'] });

export const nextRegenerationCalculation = wf.defineCalculation({
  id: 'next-regeneration',
  subject: 'soot',
  title: 'Distance and time to the next regeneration',
  purpose: 'When will this driving pattern call for the next regeneration, and how much hot driving would make it unnecessary?',
  keywords: 'regeneration interval, regen, trigger, short trips, motorway, DPF, burn-off',
  method: 'soot balance over the repeated pattern, first time at the trigger',
  inputs: {
    sootMass: wf.quantity(mass, {
      symbol: 'm_0',
      label: 'Soot in the filter',
      range: '0 g <= x <= 5 kg',
      example: '3 g',
      units: ['g', 'kg'],
    }),
    triggerMass: wf.quantity(mass, {
      symbol: 'm_{trig}',
      label: 'Soot at which a regeneration is triggered',
      range: '0 g < x <= 5 kg',
      usual: ['3 g', '300 g', 'a car triggers at some 10 to 40 g, a truck at up to 200 g'],
      example: '17 g',
      units: ['g', 'kg'],
    }),
    pattern: drivingPatternInput,
    ...wf.together({
      hotTemperature: wf.quantity(temperature, {
        symbol: 'T_h',
        label: 'Hot driving: filter temperature',
        range: '0 <= x <= 700 °C',
        example: '350 °C',
      }),
      hotNitrogenDioxide: wf.quantity(moleFraction, {
        symbol: 'x_{NO_2,h}',
        label: 'Hot driving: nitrogen dioxide before the filter',
        range: '0 <= x <= 2000 ppm',
        example: '300 ppm',
      }),
      hotSootFlow: wf.quantity(massFlow, {
        symbol: '\\dot m_h',
        label: 'Hot driving: engine-out soot',
        range: '0 <= x <= 360 g/h',
        example: '3 g/h',
        units: ['g/h', 'mg/s'],
      }),
    }),
    ...wf.whenGiven('hotTemperature', {
      hotOxygen: wf.quantity(moleFraction, {
        symbol: 'x_{O_2,h}',
        label: 'Hot driving: oxygen',
        range: '0 <= x <= 21 %',
        example: '9 %',
        default: ['10 %', 'lean diesel exhaust at part load'],
        units: ['%'],
      }),
      hotSpeed: wf.optional(
        wf.quantity(velocity, {
          symbol: 'v_h',
          label: 'Hot driving: speed',
          range: '0 <= x <= 200 km/h',
          example: '80 km/h',
          units: ['km/h', 'mph'],
        }),
      ),
    }),
    ...kineticsInputs,
  },
  example: { hotTemperature: '350 °C', hotNitrogenDioxide: '300 ppm', hotOxygen: '9 %', hotSootFlow: '3 g/h', hotSpeed: '80 km/h' },
  intermediates: {
    ...passWorking.intermediates,
    settledSootMass: wf.optional(
      wf.quantityOutput(mass, {
        symbol: 'm_{eq}',
        label: 'Soot at which the pattern settles, before each pass',
        digits: 3,
        units: ['g', 'kg'],
      }),
    ),
    netSootPerDistance: wf.optional(
      wf.quantityOutput(massPerDistance, { symbol: 'r', label: 'Net gain of soot per distance', digits: 3, units: ['g/km', 'mg/km'] }),
    ),
    lastPass: wf.optional(
      wf.tableOutput({
        label: 'Pass in which the trigger is reached',
        columns: {
          time: wf.quantityOutput(time, { symbol: 't', label: 'Time', digits: 4, units: ['h', 'min'] }),
          distance: wf.quantityOutput(length, { symbol: 'd', label: 'Distance', digits: 4, units: ['km', 'mi'] }),
          mass: grams('m', 'Soot', 4),
        },
      }),
    ),
    hotPass: wf.optional(wf.tableOutput({ label: 'Settled pass with that hot driving', columns: { mass: grams('m', 'Soot', 4) } })),
    hotPeak: wf.optional(grams('m_h', 'Most soot during that pass', 4)),
  },
  outputs: {
    outcome: wf.choiceOutput({
      label: 'Outcome',
      options: { due: 'due now', coming: 'comes with this pattern', never: 'never comes with this pattern' },
    }),
    timeToNext: wf.optional(
      wf.quantityOutput(time, { symbol: 't_n', label: 'Driving time to the next regeneration', digits: 3, units: ['h', 'min'] }),
    ),
    distanceToNext: wf.optional(
      wf.quantityOutput(length, { symbol: 'd_n', label: 'Distance to the next regeneration', digits: 3, units: ['km', 'mi'] }),
    ),
    hotDuration: wf.optional(
      wf.quantityOutput(time, {
        symbol: 't_h',
        label: 'Hot driving at the end of every pass that makes regenerations unnecessary',
        digits: 2,
        units: ['min', 'h'],
      }),
    ),
    hotDistance: wf.optional(
      wf.quantityOutput(length, { symbol: 'd_h', label: 'Distance of that hot driving', digits: 2, units: ['km', 'mi'] }),
    ),
  },
  constants: {
    ...kineticsConstants,
    longest: wf.constant(time, 86_400, { symbol: 't_{max}', label: 'Longest hot stretch looked at', source: drivingPractice }),
  },
  answer: 'outcome',
  steps: [
    ...passWorking.steps,
    wf.solved('settledSootMass', 'settledSootMass = settledSootMass * patternKept + patternGain', {}, wholeFilterBalance),
    wf.formula(
      'netSootPerDistance',
      '(patternGain - sootMass * (1 - patternKept)) / patternDistance',
      wholeFilterBalance,
      undefined,
      'In the first pass from now on.',
    ),
    wf.statement('lastPass', 'The first pass in which the soot reaches [[triggerMass]].', wholeFilterBalance),
    wf.found(
      'timeToNext',
      ['timeToNext >= first(lastPass.time)', 'timeToNext <= last(lastPass.time)'],
      wholeFilterBalance,
      undefined,
      'The moment in that pass when the soot reaches the trigger.',
    ),
    wf.found('distanceToNext', ['distanceToNext >= first(lastPass.distance)', 'distanceToNext <= last(lastPass.distance)']),
    wf.verdict('outcome', { due: 'sootMass >= triggerMass', coming: 'known(timeToNext)', never: 'otherwise' }),
    wf.found(
      'hotDuration',
      ['hotPeak <= triggerMass * 1.000001'],
      wholeFilterBalance,
      undefined,
      'The least hot stretch per pass with which the settled soot stays below the trigger.',
    ),
    wf.statement('hotPass', 'Soot before that pass, once it repeats itself, and after each stretch, the hot one last.', wholeFilterBalance),
    wf.formula('hotPeak', 'max(hotPass.mass)'),
    wf.formula('hotDistance', 'hotSpeed * hotDuration'),
  ],
  assumptions: {
    steady_stretches: 'Every stretch has its own steady temperature, gas and soot flow.',
    complete_start: 'The soot now is known; after an interrupted regeneration it is not zero.',
  },
  limits: {
    ...oneLaw,
    mass_trigger: 'Control units also trigger by distance, time or pressure; whichever comes first counts.',
    passive_only: 'The hot driving burns soot passively; it is not a forced regeneration.',
  },
  cautions: [cautions.sensorFirst],
  compute(input, { constants }) {
    const { stretches, kinetics } = stretchesOf(input, constants);
    const { triggerMass, sootMass, hotTemperature, hotSpeed } = input;
    const reached = reachTrigger(stretches, sootMass, triggerMass);
    const map = patternMap(stretches);
    let hotDuration: number | undefined;
    let hotPass: { readonly mass: number }[] | undefined;
    if (hotTemperature !== undefined) {
      const at = { temperature: hotTemperature, nitrogenDioxide: wf.known(input.hotNitrogenDioxide), oxygen: wf.known(input.hotOxygen) };
      const rate = sootOxidationRate(kinetics, at, constants.gasConstant).total;
      const hot = { speed: hotSpeed ?? 0, sootFlow: wf.known(input.hotSootFlow), rate };
      hotDuration = preventingStretch(stretches, hot, triggerMass, constants.longest);
      if (hotDuration !== undefined) {
        const whole = [...stretches, { ...hot, duration: hotDuration }];
        const mass = settledSootMass(whole);
        hotPass = mass === undefined ? undefined : drivePattern(whole, { time: 0, distance: 0, mass });
      }
    }
    return {
      ...passValues(stretches),
      settledSootMass: settledSootMass(stretches),
      netSootPerDistance: map.distance > 0 ? (map.add - map.loss * sootMass) / map.distance : undefined,
      lastPass: reached?.pass.map((state) => ({ ...state })),
      outcome: reached === undefined ? 'never' : reached.time === 0 ? 'due' : 'coming',
      timeToNext: reached?.time,
      distanceToNext: reached?.distance,
      hotDuration,
      hotPass: hotPass?.map(({ mass }) => ({ mass })),
      hotPeak: hotPass === undefined ? undefined : Math.max(...hotPass.map(({ mass }) => mass)),
      hotDistance: hotDuration === undefined || hotSpeed === undefined ? undefined : hotDuration * hotSpeed,
    };
  },
});
