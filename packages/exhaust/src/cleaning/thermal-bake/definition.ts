import * as wf from '@wallflow/calculation';
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
import { cautions } from '../../cautions.js';
import { bakePractice, carbonCombustion, dryAirMassShare } from '../sources.js';
import { bakeSchedule, bakeVerdict, burnOffPeak, oxygenForSoot } from './kernel.js';

const temperatureInput = (symbol: string, label: string, value: string, max: string, reason: string) =>
  wf.quantity(temperature, { symbol, label, range: `0 <= x <= ${max}`, default: [value, reason] });
const rateInput = (symbol: string, label: string, description: string) =>
  wf.quantity(temperatureRate, {
    symbol,
    label,
    description,
    range: '0 < x <= 50 K/min',
    usual: [
      '2 K/min',
      '5 K/min',
      {
        below: 'common practice, no source: slower does no harm, but the oven is busy for longer',
        above: 'common practice, no source: faster cracks the body',
      },
    ],
    units: ['K/min', 'K/h'],
    default: ['3 K/min', 'common practice, no source: 2 to 5 K/min'],
  });
const massOutput = (symbol: string, label: string) => wf.quantityOutput(mass, { symbol, label, digits: 3, units: ['g', 'kg'] });
const timeOutput = (symbol: string, label: string) => wf.quantityOutput(time, { symbol, label, digits: 3, units: ['h', 'min'] });
const temperatureOutput = (symbol: string, label: string) => wf.quantityOutput(temperature, { symbol, label, digits: 3 });

export const thermalBakeCalculation = wf.defineCalculation({
  id: 'thermal-bake',
  subject: 'cleaning',
  title: 'Baking a filter in an oven',
  purpose: 'How long does the bake take, how much air does the soot need, and can the soot overheat the filter?',
  keywords: 'oven, bake, ramp, hold, oxygen, thermal, DPF',
  method: 'ramp, hold and cool at set rates; soot burns as carbon to carbon dioxide',
  inputs: {
    sootMass: wf.quantity(mass, {
      symbol: 'm_s',
      label: 'Soot and oil still in the filter',
      range: '0 g <= x <= 2 kg',
      example: '3 g',
      units: ['g', 'kg', 'oz'],
    }),
    partMass: wf.quantity(mass, {
      symbol: 'm_f',
      label: 'Mass of the filter body',
      description: 'Of the ceramic, without the housing if that is known: the housing warms up later.',
      range: '0 < x <= 100 kg',
      example: '2.6 kg',
      units: ['kg', 'g', 'lb'],
    }),
    startTemperature: temperatureInput('T_0', 'Filter temperature at the start', '20 °C', '200 °C', 'room'),
    holdTemperature: wf.quantity(temperature, {
      symbol: 'T_h',
      label: 'Hold at',
      range: '200 <= x <= 900 °C',
      usual: [
        '550 °C',
        '650 °C',
        {
          below: 'common practice, no source: soot needs about 550 °C to burn away in a few hours',
          above: 'common practice, no source: coatings suffer near 700 °C',
        },
      ],
      default: ['600 °C', 'common practice, no source: 550 to 650 °C'],
    }),
    unloadTemperature: temperatureInput('T_u', 'Open the oven below', '60 °C', '200 °C', 'common practice, no source: hand-warm'),
    rampRate: rateInput('r', 'Heat by', 'Slower with much soot or oil: it starts to burn at 350 to 450 °C, while the oven still heats.'),
    coolRate: rateInput('r_c', 'Cool by', 'In the closed oven.'),
    holdTime: wf.quantity(time, {
      symbol: 't_h',
      label: 'Time at this temperature',
      range: '0 <= x <= 48 h',
      usual: ['3 h', '8 h', 'common practice, no source'],
      units: ['h', 'min'],
      default: ['5 h', 'common practice, no source: 3 to 8 h'],
    }),
    highestTemperature: wf.quantity(temperature, {
      symbol: 'T_m',
      label: 'Highest temperature the part may reach',
      range: '300 <= x <= 1100 °C',
      default: ['700 °C', 'common practice, no source: coatings age fast above'],
    }),
    partHeatCapacity: wf.quantity(specificHeatCapacity, {
      symbol: 'c_f',
      label: 'Specific heat of the body when hot',
      range: '0.4 <= x <= 1.5 kJ/(kg.K)',
      units: ['kJ/(kg.K)', 'J/(kg.K)'],
      default: ['1.05 kJ/(kg.K)', 'ceramic at 600 °C'],
    }),
    airFlow: wf.optional(
      wf.quantity(volumeFlow, {
        symbol: 'Q',
        label: 'Fresh air that the oven draws',
        description: 'At 20 °C. Without it nobody knows whether the soot burns away while the oven holds its temperature.',
        range: '0 < x <= 10000 m3/h',
        example: '5 m3/h',
        units: ['m3/h', 'L/min', 'ft3/min'],
      }),
    ),
  },
  example: { airFlow: '5 m3/h' },
  intermediates: {
    rampTime: timeOutput('t_r', 'Time to heat'),
    coolTime: timeOutput('t_c', 'Time to cool'),
    sootHeat: wf.quantityOutput(energy, { symbol: 'Q_s', label: 'Heat of the soot', digits: 3, units: ['kJ', 'MJ', 'kWh'] }),
  },
  outputs: {
    schedule: wf.tableOutput({
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
    oxygenMass: massOutput('m_{O_2}', 'Oxygen that the soot needs'),
    airMass: massOutput('m_a', 'Air that contains this oxygen'),
    airVolume: wf.quantityOutput(volume, { symbol: 'V_a', label: 'Volume of this air at 20 °C', digits: 3, units: ['m3', 'L', 'ft3'] }),
    shortestBurn: wf.optional(
      wf.quantityOutput(time, {
        symbol: 't_b',
        label: 'Shortest time to burn the soot with that fresh air',
        digits: 2,
        units: ['min', 'h'],
      }),
    ),
    peakTemperature: temperatureOutput('T_p', 'Temperature of the body if all soot burnt at once'),
    verdict: wf.choiceOutput({
      label: 'Is the bake safe and long enough?',
      options: {
        within: 'yes: the body stays below its limit even if all soot burnt at once, and there is enough fresh air for the hold',
        'too-little-air': 'no: the fresh air cannot burn the soot during the hold. Give more air, hold longer, or remove loose soot first',
        'air-unknown':
          'not known: the body stays below its limit, but whether the soot gets enough air is open until the fresh air is entered',
        'remove-first': 'no: the soot can overheat the body. Blow or vacuum loose soot out first, and heat slowly',
      },
    }),
    totalTime: timeOutput('t', 'Whole bake'),
  },
  constants: {
    sootHeatingValue: wf.constant(specificEnergy, 32.76e6, {
      symbol: 'H_s',
      label: 'Heat of carbon burning to carbon dioxide',
      source: carbonCombustion,
    }),
    carbonMolarMass: wf.constant(molarMass, 0.012011, { symbol: 'M_C', label: 'Molar mass of carbon', source: carbonCombustion }),
    oxygenMolarMass: wf.constant(molarMass, 0.031998, { symbol: 'M_{O_2}', label: 'Molar mass of oxygen', source: carbonCombustion }),
    oxygenInAir: wf.constant(massFraction, 0.2314, { symbol: 'w_{O_2}', label: 'Oxygen in dry air by mass', source: dryAirMassShare }),
    roomAirDensity: wf.constant(density, 1.204, {
      symbol: '\\rho_a',
      label: 'Density of air at 20 °C and sea level',
      source: dryAirMassShare,
    }),
  },
  answer: 'verdict',
  steps: [
    wf.formula('rampTime', '(holdTemperature - startTemperature) / rampRate', bakePractice),
    wf.formula('coolTime', '(holdTemperature - unloadTemperature) / coolRate', bakePractice),
    wf.formula('totalTime', 'rampTime + holdTime + coolTime', bakePractice),
    wf.rows(
      'schedule',
      {
        time: {
          "stage == 'start'": '0',
          "stage == 'ramp'": 'rampTime',
          "stage == 'hold'": 'rampTime + holdTime',
          otherwise: 'totalTime',
        },
        temperature: {
          "stage == 'start'": 'startTemperature',
          "stage == 'cool'": 'unloadTemperature',
          otherwise: 'holdTemperature',
        },
      },
      bakePractice,
    ),
    wf.formula('oxygenMass', 'sootMass * oxygenMolarMass / carbonMolarMass', carbonCombustion),
    wf.formula('airMass', 'oxygenMass / oxygenInAir', dryAirMassShare),
    wf.formula('airVolume', 'airMass / roomAirDensity', dryAirMassShare),
    wf.cases('shortestBurn', { 'airVolume == 0': '0', otherwise: 'airVolume / airFlow' }, carbonCombustion),
    wf.formula('sootHeat', 'sootMass * sootHeatingValue', carbonCombustion),
    wf.formula('peakTemperature', 'holdTemperature + sootHeat / (partMass * partHeatCapacity)', carbonCombustion),
    wf.verdict(
      'verdict',
      {
        'remove-first': 'peakTemperature > highestTemperature',
        'air-unknown': 'not known(shortestBurn)',
        'too-little-air': 'shortestBurn > holdTime',
        within: 'otherwise',
      },
      bakePractice,
    ),
  ],
  assumptions: {
    carbon: 'Soot and oil are taken as carbon burning to carbon dioxide; oil gives a quarter more heat per gram and takes more air.',
    worst_case: 'The peak takes all the heat into the body at once; a slow ramp and air through the oven keep it far below.',
  },
  limits: {
    least_time: 'The shortest time counts on every bit of oxygen in the fresh air reaching the soot: the real time is longer.',
    ash_stays: 'Baking burns soot and oil and loosens ash; the ash has to be blown or washed out afterwards.',
    local_hot_spots: 'Soot lies unevenly: where it is thick the body gets hotter than the mean shown here.',
  },
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
  compute(input, { constants, warn }) {
    const { sootMass, startTemperature, holdTemperature, unloadTemperature, highestTemperature, airFlow } = input;
    if (holdTemperature > highestTemperature) {
      return wf.inconsistentInputs(
        'the oven is to hold a temperature above the highest that the part may reach',
        ['holdTemperature'],
        ['highestTemperature'],
      );
    }
    const schedule = bakeSchedule(input);
    const oxygenMass = oxygenForSoot(sootMass, constants.oxygenMolarMass, constants.carbonMolarMass);
    const airMass = oxygenMass / constants.oxygenInAir;
    const airVolume = airMass / constants.roomAirDensity;
    const sootHeat = sootMass * constants.sootHeatingValue;
    const peakTemperature = burnOffPeak(holdTemperature, sootHeat, input.partMass, input.partHeatCapacity);
    // Nothing to burn needs no air, known or not.
    const shortestBurn = airVolume === 0 ? 0 : airFlow === undefined ? undefined : airVolume / airFlow;
    const tooLong = shortestBurn !== undefined && shortestBurn > input.holdTime;
    if (tooLong)
      warn(
        'too_little_air',
        'The fresh air cannot burn the soot during the hold: soot remains, and may go on burning when the oven is opened.',
        ['airFlow'],
      );
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
          {
            tone: 'do',
            text: 'Hold for longer than the shortest time to burn the soot, or give more fresh air; then weigh, bake again and weigh again.',
          },
        ] as const)
      : []),
    { tone: 'do-not', text: 'Do not open the oven while the part glows or smokes: fresh air makes it burn faster than you can control.' },
    { tone: 'do', text: 'Weigh it hot before and after, then blow the loosened ash out backwards.' },
  ],
});
