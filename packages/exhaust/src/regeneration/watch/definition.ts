import {
  choiceOutput,
  constant,
  defineCalculation,
  flag,
  isRefusal,
  list,
  optional,
  quantity,
  quantityOutput,
  tableOutput,
  textOutput,
} from '@wallflow/calculation';
import {
  differentialPressure,
  fraction,
  massFlow,
  rotationalSpeed,
  temperature,
  temperatureDifference,
  temperatureRate,
  time,
  unitSymbol,
} from '@wallflow/units';
import * as z from 'zod';
import { cautions } from '../../cautions.js';
import { checkedLog } from '../checked-log.js';
import { watchPractice } from '../sources.js';
import type { WatchEvent, WatchLimits, WatchSample } from './kernel.js';
import { watchRegeneration } from './kernel-rules.js';
import { watchAnswers } from './rules.js';

const celsius = 273.15;
const hot = (symbol: string, label: string, example: string) =>
  quantity(temperature, {
    symbol,
    label,
    min: '-60 °C',
    max: '1500 °C',
    example,
    units: ['degC', 'K', 'degF'],
  }).optional();

const sample = z.strictObject({
  time: quantity(time, {
    symbol: 't',
    label: 'Time',
    min: '0 s',
    max: '24 h',
    example: '0 s',
    units: ['s', 'min'],
  }),
  inlet: hot('T_{in}', 'Temperature before the filter', '600 °C'),
  bed: hot('T_b', 'Temperature in the filter', '620 °C'),
  outlet: hot('T_{out}', 'Temperature after the filter', '590 °C'),
  pressureDrop: quantity(differentialPressure, {
    symbol: '\\Delta p',
    label: 'Pressure drop of the filter',
    min: '-1000 mbar',
    max: '2000 mbar',
    example: '60 mbar',
    units: ['mbar', 'kPa', 'hPa'],
  }).optional(),
  engineSpeed: quantity(rotationalSpeed, {
    symbol: 'n',
    label: 'Engine speed',
    min: '0 rpm',
    max: '10000 rpm',
    example: '2000 rpm',
  }).optional(),
  massFlow: quantity(massFlow, {
    symbol: '\\dot m',
    label: 'Exhaust or air mass flow',
    min: '0 kg/h',
    max: '5000 kg/h',
    example: '190 kg/h',
    units: ['kg/h', 'g/s'],
  }).optional(),
  coolant: quantity(temperature, {
    symbol: 'T_c',
    label: 'Coolant temperature',
    min: '-60 °C',
    max: '200 °C',
    example: '92 °C',
    units: ['degC', 'degF', 'K'],
  }).optional(),
  oilPressureLamp: flag({ label: 'Oil pressure lamp on', example: false }).optional(),
  fire: flag({ label: 'Fire or glowing parts outside the exhaust', example: false }).optional(),
  smokeOrSmell: flag({ label: 'Lasting white smoke or smell of fuel', example: false }).optional(),
});

const own = { source: 'watchPractice' };
const constants = {
  inletLasting: constant(temperature, 700 + celsius, { symbol: 'T_{in,max}', label: 'Inlet temperature that must not last', ...own }),
  inletTime: constant(time, 10, { symbol: 't_{in}', label: 'How long it may last', ...own }),
  anywhere: constant(temperature, 750 + celsius, { symbol: 'T_{max}', label: 'Highest temperature in the filter zone', ...own }),
  outletAbove: constant(temperatureDifference, 100, { symbol: '\\Delta T_{max}', label: 'Outlet above inlet, while rising', ...own }),
  rise: constant(temperatureRate, 10, { symbol: '\\dot T_{max}', label: 'Fastest rise', ...own }),
  dropTime: constant(time, 180, { symbol: 't_{\\Delta p}', label: 'How long the pressure drop may rise', ...own }),
  steadySpeed: constant(fraction, 0.05, { symbol: '\\delta_n', label: 'Change of engine speed that counts as steady', ...own }),
  coolant: constant(temperature, 105 + celsius, { symbol: 'T_{c,max}', label: 'Coolant temperature', ...own }),
  hot: constant(temperature, 450 + celsius, { symbol: 'T_h', label: 'Temperature from which on the filter counts as burning', ...own }),
  hotTime: constant(time, 60, { symbol: 't_h', label: 'How long it counts as burning after it was last seen hot', ...own }),
  stopped: constant(rotationalSpeed, 300 / 60, { symbol: 'n_0', label: 'Engine speed below which it counts as stopped', ...own }),
  idle: constant(rotationalSpeed, 900 / 60, { symbol: 'n_i', label: 'Engine speed below which it counts as idling', ...own }),
  speedLoss: constant(fraction, 0.25, { symbol: '\\delta_l', label: 'Fall of the engine speed that is an alarm', ...own }),
  flowLoss: constant(fraction, 0.5, { symbol: '\\delta_f', label: 'Fall of mass flow or pressure drop that is an alarm', ...own }),
  lossTime: constant(time, 20, { symbol: 't_l', label: 'Time over which a fall is taken', ...own }),
  window: constant(time, 2, { symbol: 't_w', label: 'Time over which a rise is taken', ...own }),
};

const exampleLog = [
  { time: '0 s', inlet: '400 °C', outlet: '320 °C', pressureDrop: '31 mbar', engineSpeed: '1500 rpm', coolant: '88 °C' },
  { time: '120 s', inlet: '590 °C', outlet: '500 °C', pressureDrop: '40 mbar', engineSpeed: '1500 rpm', coolant: '90 °C' },
  { time: '240 s', inlet: '610 °C', outlet: '640 °C', pressureDrop: '38 mbar', engineSpeed: '1500 rpm', coolant: '92 °C' },
  { time: '250 s', inlet: '610 °C', outlet: '700 °C', pressureDrop: '38 mbar', engineSpeed: '1500 rpm', coolant: '92 °C' },
  { time: '255 s', inlet: '610 °C', outlet: '730 °C', pressureDrop: '38 mbar', engineSpeed: '1500 rpm', coolant: '93 °C' },
];

/** What was found, in words. */
function foundText({ rule, value }: WatchEvent): string {
  if (value === undefined) return 'seen';
  const rounded = (number: number, digits = 3) => String(Number(number.toPrecision(digits)));
  switch (rule) {
    case 'rise':
      return `${rounded(value)} ${unitSymbol('temperatureRate', 'K/s')}`;
    case 'outlet-over-inlet':
      return `${rounded(value)} K`;
    case 'drop-rising':
      return `+${rounded(100 * value)} %`;
    case 'flow-lost':
      return `−${rounded(100 * value)} %`;
    case 'engine-stopped':
    case 'speed-drop':
      return `${rounded(60 * value)} ${unitSymbol('rotationalSpeed', 'rpm')}`;
    default:
      return `${rounded(value - celsius, 4)} °C`;
  }
}

/** Signals that no rule can see any more: never in the log, or silent in its last line. */
function missingSignals(log: readonly WatchSample[]): string[] {
  const last = log.at(-1);
  const names: [keyof WatchSample, string][] = [
    ['inlet', 'temperature before the filter'],
    ['outlet', 'temperature after the filter'],
    ['pressureDrop', 'pressure drop'],
    ['engineSpeed', 'engine speed'],
    ['coolant', 'coolant temperature'],
  ];
  return names
    .filter(([key]) => last?.[key] === undefined)
    .map(([key, name]) => (log.some((line) => line[key] !== undefined) ? `${name} (silent now)` : name));
}

export const regenerationWatchCalculation = defineCalculation({
  id: 'regeneration-watch',
  version: '2.0.0',
  subject: 'regeneration',
  title: 'Watch over a running regeneration',
  purpose: 'Must this regeneration be broken off, and what is to be done and never to be done?',
  usedBy: ['technician', 'developer', 'trainer'],
  keywords: ['abort', 'runaway', 'log', 'over-temperature', 'safety'],
  method: 'every line of the log against the limits; a broken rule stays broken',
  inputs: z.strictObject({
    log: list(sample, {
      label: 'Log',
      description: 'Lines in order of time, one every second or two if possible; leave out what is not measured.',
      min: 1,
      max: 20_000,
      example: exampleLog,
    }),
  }),
  intermediates: {},
  outputs: {
    verdict: choiceOutput({
      label: 'Verdict',
      options: {
        'go-on': 'nothing against going on, in what is watched',
        unknown: 'not watched well enough to go on',
        end: 'end it, keep the flow',
        'flow-lost': 'cooling flow lost: bring it back at once, stop heating',
        runaway: 'runaway: stop heating, keep the flow up',
        'stop-engine': 'stop the engine',
      },
    }),
    act: textOutput({ label: 'Do this' }),
    never: textOutput({ label: 'Never do this' }),
    firstTime: optional(quantityOutput(time, { symbol: 't_1', label: 'Time of the first broken rule', digits: 5, units: ['s', 'min'] })),
    notWatched: textOutput({ label: 'Not watched' }),
    events: tableOutput({
      label: 'Broken rules',
      columns: {
        time: quantityOutput(time, { symbol: 't', label: 'First at', digits: 5, units: ['s', 'min'] }),
        rule: textOutput({ label: 'Rule' }),
        found: textOutput({ label: 'Found' }),
        act: textOutput({ label: 'Do' }),
        never: textOutput({ label: 'Never' }),
      },
    }),
  },
  constants,
  steps: [
    {
      gives: 'events',
      text: 'Every line against the limits: lasting hot inlet, any place too hot, outlet above inlet and rising, rise too fast, pressure drop rising at steady speed (brought to one temperature), coolant, engine stopped, idling or slowing while the filter is hot, flow falling then, and what was seen.',
      source: 'watchPractice',
    },
    { gives: 'firstTime', text: 'Time of the first of them.' },
    { gives: 'notWatched', text: 'Signals that the last line does not have: no rule can see them.' },
    { gives: 'act', text: 'What belongs to the most dangerous of them.', source: 'watchPractice' },
    { gives: 'never', text: 'What must not be done then.', source: 'watchPractice' },
    {
      gives: 'verdict',
      text: 'Of the most dangerous broken rule; without both gas temperatures, and a sign of the flow, in the last line, not known.',
      source: 'watchPractice',
    },
  ],
  assumptions: [
    {
      code: 'sensors_true',
      text: 'The sensors show the truth and were compared when cold; a filter is some 50 K to 100 K hotter inside than its outlet gas shows.',
    },
  ],
  limits: [
    { code: 'sampling', text: 'With lines more than 5 s apart a fast rise is seen late.' },
    {
      code: 'standing',
      text: 'For a vehicle that stands: on the road the engine speed changes all the time, and the alarms of flow come too often.',
    },
    { code: 'eyes', text: 'The watch replaces nobody: somebody stands beside the vehicle.' },
  ],
  cautions: [cautions.makerFirst, cautions.neverUnattended, cautions.runaway, cautions.hotExhaust, cautions.fumes, cautions.sensorFirst],
  sources: { watchPractice },
  dimensional: 'findings are text with units',
  compute(input, { constants: limits, warn }) {
    const log = checkedLog(input.log, warn);
    if (isRefusal(log)) return log;
    const events = watchRegeneration(log, limits as WatchLimits);
    const worst = events.map(({ rule }) => watchAnswers[rule]).sort((a, b) => a.rank - b.rank)[0];
    const missing = missingSignals(log);
    // A sensor that has gone silent watches no longer, and one line shows no rise.
    const last = log.at(-1);
    const blind = log.length < 2 || last?.inlet === undefined || last.outlet === undefined;
    const flowUnseen = last?.engineSpeed === undefined && last?.massFlow === undefined && last?.pressureDrop === undefined;
    return {
      verdict: worst?.verdict ?? (blind || flowUnseen ? 'unknown' : 'go-on'),
      act:
        worst?.act ??
        (blind
          ? 'Get both gas temperatures, in every line, before going on.'
          : flowUnseen
            ? 'Get the engine speed too, in every line, before going on: nothing here would show that the engine drops to idle.'
            : 'Go on watching until it has ended and the filter has cooled for five minutes at raised idle.'),
      never: worst?.never ?? 'Never leave it alone, and never let the engine drop to idle while the filter burns.',
      firstTime: events[0]?.time,
      notWatched: missing.length === 0 ? 'nothing' : missing.join(', '),
      events: events.map((event) => {
        const { what, act, never } = watchAnswers[event.rule];
        return { time: event.time, rule: what, found: foundText(event), act, never };
      }),
    };
  },
});
