import {
  choiceOutput,
  constant,
  defineCalculation,
  inconsistentInputs,
  optional,
  quantity,
  quantityOutput,
  quantityWithDefault,
  tableOutput,
} from '@wallflow/calculation';
import {
  density,
  energy,
  mass,
  massFraction,
  molarMass,
  specificEnergy,
  specificHeatCapacity,
  temperature,
  temperatureRate,
  time,
  volume,
  volumeFlow,
} from '@wallflow/units';
import * as z from 'zod';
import { cautions } from '../../cautions.js';
import { bakePractice, carbonCombustion, dryAirMassShare } from '../sources.js';
import { bakeSchedule, bakeVerdict, burnOffPeak, oxygenForSoot } from './kernel.js';

const temperatureInput = (symbol: string, label: string, value: string, max: string, reason: string) =>
  quantityWithDefault(temperature, { symbol, label, min: '0 °C', max, example: value, default: value, defaultReason: reason });
const rateInput = (symbol: string, label: string, description: string) =>
  quantityWithDefault(temperatureRate, {
    symbol,
    label,
    description,
    above: '0 K/min',
    max: '50 K/min',
    usual: ['2 K/min', '5 K/min'],
    usualReason: {
      below: 'common practice, no source: slower does no harm, but the oven is busy for longer',
      above: 'common practice, no source: faster cracks the body',
    },
    example: '3 K/min',
    units: ['K/min', 'K/h'],
    default: '3 K/min',
    defaultReason: 'common practice, no source: 2 to 5 K/min',
  });
const massOutput = (symbol: string, label: string) => quantityOutput(mass, { symbol, label, digits: 3, units: ['g', 'kg'] });
const timeOutput = (symbol: string, label: string) => quantityOutput(time, { symbol, label, digits: 3, units: ['h', 'min'] });
const temperatureOutput = (symbol: string, label: string) => quantityOutput(temperature, { symbol, label, digits: 3 });

export const thermalBakeCalculation = defineCalculation({
  id: 'thermal-bake',
  version: '2.0.0',
  subject: 'cleaning',
  title: 'Baking a filter in an oven',
  purpose: 'How long does the bake take, how much air does the soot need, and can the soot overheat the filter?',
  usedBy: ['technician', 'trainer'],
  keywords: ['oven', 'bake', 'ramp', 'hold', 'oxygen', 'thermal'],
  method: 'ramp, hold and cool at set rates; soot burns as carbon to carbon dioxide',
  inputs: z.strictObject({
    sootMass: quantity(mass, {
      symbol: 'm_s',
      label: 'Soot and oil still in the filter',
      min: '0 g',
      max: '2 kg',
      example: '40 g',
      units: ['g', 'kg', 'oz'],
    }),
    partMass: quantity(mass, {
      symbol: 'm_f',
      label: 'Mass of the filter body',
      description: 'Of the ceramic, without the can if that is known: the can warms up later.',
      above: '0 kg',
      max: '100 kg',
      example: '6 kg',
      units: ['kg', 'g', 'lb'],
    }),
    startTemperature: temperatureInput('T_0', 'Temperature at the start', '20 °C', '200 °C', 'room'),
    holdTemperature: quantityWithDefault(temperature, {
      symbol: 'T_h',
      label: 'Hold at',
      min: '200 °C',
      max: '900 °C',
      usual: ['550 °C', '650 °C'],
      usualReason: {
        below: 'common practice, no source: soot needs about 550 °C to burn away in a few hours',
        above: 'common practice, no source: coatings suffer near 700 °C',
      },
      example: '600 °C',
      default: '600 °C',
      defaultReason: 'common practice, no source: 550 to 650 °C',
    }),
    unloadTemperature: temperatureInput('T_u', 'Open the oven below', '60 °C', '200 °C', 'common practice, no source: hand-warm'),
    rampRate: rateInput('r', 'Heat by', 'Slower with much soot or oil: it starts to burn at 350 to 450 °C, while the oven still heats.'),
    coolRate: rateInput('r_c', 'Cool by', 'In the closed oven.'),
    holdTime: quantityWithDefault(time, {
      symbol: 't_h',
      label: 'Hold for',
      min: '0 h',
      max: '48 h',
      usual: ['3 h', '8 h'],
      usualReason: 'common practice, no source',
      example: '5 h',
      units: ['h', 'min'],
      default: '5 h',
      defaultReason: 'common practice, no source: 3 to 8 h',
    }),
    highestTemperature: quantityWithDefault(temperature, {
      symbol: 'T_m',
      label: 'Highest temperature the part may see',
      min: '300 °C',
      max: '1100 °C',
      example: '700 °C',
      default: '700 °C',
      defaultReason: 'common practice, no source: coatings age fast above',
    }),
    partHeatCapacity: quantityWithDefault(specificHeatCapacity, {
      symbol: 'c_f',
      label: 'Specific heat of the body when hot',
      min: '0.4 kJ/(kg.K)',
      max: '1.5 kJ/(kg.K)',
      example: '1.05 kJ/(kg.K)',
      units: ['kJ/(kg.K)', 'J/(kg.K)'],
      default: '1.05 kJ/(kg.K)',
      defaultReason: 'ceramic at 600 °C',
    }),
    airFlow: quantity(volumeFlow, {
      symbol: 'Q',
      label: 'Fresh air that the oven draws',
      description: 'At 20 °C. Without it nobody can tell whether the soot burns within the hold.',
      above: '0 m3/h',
      max: '10000 m3/h',
      example: '5 m3/h',
      units: ['m3/h', 'L/min', 'ft3/min'],
    }).optional(),
  }),
  example: { airFlow: '5 m3/h' },
  intermediates: {
    rampTime: timeOutput('t_r', 'Time to heat'),
    coolTime: timeOutput('t_c', 'Time to cool'),
    sootHeat: quantityOutput(energy, { symbol: 'Q_s', label: 'Heat of the soot', digits: 3, units: ['kJ', 'MJ', 'kWh'] }),
  },
  outputs: {
    schedule: tableOutput({
      label: 'Schedule',
      columns: {
        time: timeOutput('t', 'Until'),
        temperature: temperatureOutput('T', 'Temperature'),
        stage: {
          type: 'choice',
          label: 'Stage',
          options: { start: 'start', ramp: 'heat', hold: 'hold', cool: 'cool with the oven closed' },
          optional: false,
        },
      },
      plot: { x: 'time', y: ['temperature'] },
    }),
    oxygenMass: massOutput('m_{O_2}', 'Oxygen that the soot takes'),
    airMass: massOutput('m_a', 'Air that holds it'),
    airVolume: quantityOutput(volume, { symbol: 'V_a', label: 'That air at 20 °C', digits: 3, units: ['m3', 'L', 'ft3'] }),
    shortestBurn: optional(
      quantityOutput(time, { symbol: 't_b', label: 'Shortest time to burn it with that fresh air', digits: 2, units: ['min', 'h'] }),
    ),
    peakTemperature: temperatureOutput('T_p', 'Temperature of the body if all soot burnt at once'),
    verdict: choiceOutput({
      label: 'Soot',
      options: {
        within: 'the body stays below its limit even if all soot burnt at once, and the hold is long enough for the fresh air',
        'too-little-air': 'the fresh air cannot burn the soot within the hold: more air, a longer hold, or loose soot out first',
        'air-unknown': 'the body stays below its limit; whether the soot gets air enough is not known: give the fresh air',
        'remove-first': 'the soot can overheat the body: blow or vacuum loose soot out first, and heat slowly',
      },
    }),
    totalTime: timeOutput('t', 'Whole bake'),
  },
  constants: {
    sootHeatingValue: constant(specificEnergy, 32.76e6, {
      symbol: 'H_s',
      label: 'Heat of carbon burning to carbon dioxide',
      source: 'carbonCombustion',
    }),
    carbonMolarMass: constant(molarMass, 0.012011, { symbol: 'M_C', label: 'Molar mass of carbon', source: 'carbonCombustion' }),
    oxygenMolarMass: constant(molarMass, 0.031998, { symbol: 'M_{O_2}', label: 'Molar mass of oxygen', source: 'carbonCombustion' }),
    oxygenInAir: constant(massFraction, 0.2314, { symbol: 'w_{O_2}', label: 'Oxygen in dry air by mass', source: 'dryAirMassShare' }),
    airDensity: constant(density, 1.204, { symbol: '\\rho_a', label: 'Density of air at 20 °C and sea level', source: 'dryAirMassShare' }),
  },
  steps: [
    { gives: 'rampTime', tex: '[[rampTime]] = \\frac{[[holdTemperature]]-[[startTemperature]]}{[[rampRate]]}', source: 'bakePractice' },
    { gives: 'coolTime', tex: '[[coolTime]] = \\frac{[[holdTemperature]]-[[unloadTemperature]]}{[[coolRate]]}', source: 'bakePractice' },
    { gives: 'schedule', text: 'Heat, hold, cool with the oven closed ([[holdTime]]).', source: 'bakePractice' },
    {
      gives: 'oxygenMass',
      tex: '[[oxygenMass]] = [[sootMass]]\\,\\frac{[[oxygenMolarMass]]}{[[carbonMolarMass]]}',
      source: 'carbonCombustion',
    },
    { gives: 'airMass', tex: '[[airMass]] = \\frac{[[oxygenMass]]}{[[oxygenInAir]]}', source: 'dryAirMassShare' },
    { gives: 'airVolume', tex: '[[airVolume]] = \\frac{[[airMass]]}{[[airDensity]]}', source: 'dryAirMassShare' },
    { gives: 'shortestBurn', tex: '[[shortestBurn]] = \\frac{[[airVolume]]}{[[airFlow]]}', source: 'carbonCombustion' },
    { gives: 'sootHeat', tex: '[[sootHeat]] = [[sootMass]]\\,[[sootHeatingValue]]', source: 'carbonCombustion' },
    {
      gives: 'peakTemperature',
      tex: '[[peakTemperature]] = [[holdTemperature]]+\\frac{[[sootHeat]]}{[[partMass]]\\,[[partHeatCapacity]]}',
      source: 'carbonCombustion',
    },
    { gives: 'totalTime', tex: '[[totalTime]] = [[rampTime]]+[[holdTime]]+[[coolTime]]', source: 'bakePractice' },
    {
      gives: 'verdict',
      text: 'That against the limit ([[highestTemperature]]) first; then the shortest time to burn it against the hold ([[holdTime]]).',
      source: 'bakePractice',
    },
  ],
  assumptions: [
    {
      code: 'carbon',
      text: 'Soot and oil are taken as carbon burning to carbon dioxide; oil gives a quarter more heat per gram and takes more air.',
    },
    {
      code: 'worst_case',
      text: 'The peak takes all the heat into the body at once; a slow ramp and air through the oven keep it far below.',
    },
  ],
  limits: [
    {
      code: 'least_time',
      text: 'The shortest time takes all the oxygen out of the fresh air and none past the soot: the real time is longer.',
    },
    { code: 'ash_stays', text: 'Baking burns soot and oil and loosens ash; the ash has to be blown or washed out afterwards.' },
    { code: 'local_hot_spots', text: 'Soot lies unevenly: where it is thick the body gets hotter than the mean given here.' },
  ],
  cautions: [
    cautions.hotExhaust,
    cautions.ovenFire,
    {
      code: 'oven_fumes',
      text: 'Oil and fuel in a filter burn with smoke and carbon monoxide: only in an oven made for it, vented outdoors, never a wet or oily part without a pre-dry.',
    },
    cautions.ashDust,
    cautions.makerFirst,
  ],
  sources: { bakePractice, carbonCombustion, dryAirMassShare },
  compute(input, { constants, warn }) {
    const { sootMass, startTemperature, holdTemperature, unloadTemperature, highestTemperature, airFlow } = input;
    if (holdTemperature > highestTemperature) {
      return inconsistentInputs('the hold is hotter than the part may get', ['holdTemperature'], ['highestTemperature']);
    }
    const schedule = bakeSchedule(input);
    const oxygenMass = oxygenForSoot(sootMass, constants.oxygenMolarMass, constants.carbonMolarMass);
    const airMass = oxygenMass / constants.oxygenInAir;
    const airVolume = airMass / constants.airDensity;
    const sootHeat = sootMass * constants.sootHeatingValue;
    const peakTemperature = burnOffPeak(holdTemperature, sootHeat, input.partMass, input.partHeatCapacity);
    // Nothing to burn needs no air, known or not.
    const shortestBurn = airVolume === 0 ? 0 : airFlow === undefined ? undefined : airVolume / airFlow;
    const tooLong = shortestBurn !== undefined && shortestBurn > input.holdTime;
    if (tooLong)
      warn('too_little_air', 'The fresh air cannot burn the soot within the hold: soot stays, and may burn on when the oven is opened.', [
        'airFlow',
      ]);
    return {
      rampTime: (holdTemperature - startTemperature) / input.rampRate,
      coolTime: (holdTemperature - unloadTemperature) / input.coolRate,
      schedule,
      sootHeat,
      oxygenMass,
      airMass,
      airVolume,
      shortestBurn,
      peakTemperature,
      verdict: bakeVerdict({ peakTemperature, highestTemperature, shortestBurn, holdTime: input.holdTime }),
      totalTime: schedule.at(-1)?.time ?? 0,
    };
  },
  advise: ({ verdict }) => [
    ...(verdict === 'remove-first'
      ? ([
          { tone: 'do', text: 'Blow or vacuum loose soot out first, heat by 2 K/min at most from 300 °C on, and watch the oven there.' },
        ] as const)
      : []),
    ...(verdict === 'too-little-air'
      ? ([
          { tone: 'do', text: 'Hold for longer than the shortest time to burn it, or give more fresh air; weigh and bake again to see.' },
        ] as const)
      : []),
    { tone: 'do-not', text: 'Do not open the oven while the part glows or smokes: fresh air makes it burn away.' },
    { tone: 'do', text: 'Weigh it hot before and after, then get the loosened ash out backwards.' },
  ],
});
