import * as wf from '@wallflow/calculation';
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
import { cautions } from '../../cautions.js';
import { checkedLog } from '../checked-log.js';
import { watchPractice } from '../sources.js';
import type { WatchEvent, WatchLimits, WatchSample } from './kernel.js';
import { watchRegeneration } from './kernel-rules.js';
import { watchAnswers } from './rules.js';

const celsius = 273.15;
const hot = (symbol: string, label: string, example: string) =>
  wf.optional(wf.quantity(temperature, { symbol, label, range: '-60 <= x <= 1500 °C', example, units: ['degC', 'K', 'degF'] }));

const sample = {
  time: wf.quantity(time, { symbol: 't', label: 'Time', range: '0 s <= x <= 24 h', example: '0 s', units: ['s', 'min'] }),
  inlet: hot('T_{in}', 'Temperature before the filter', '600 °C'),
  bed: hot('T_b', 'Temperature in the filter', '620 °C'),
  outlet: hot('T_{out}', 'Temperature after the filter', '590 °C'),
  pressureDrop: wf.optional(
    wf.quantity(differentialPressure, {
      symbol: '\\Delta p',
      label: 'Pressure drop of the filter',
      range: '-1000 <= x <= 2000 mbar',
      example: '60 mbar',
      units: ['mbar', 'kPa', 'hPa'],
    }),
  ),
  engineSpeed: wf.optional(
    wf.quantity(rotationalSpeed, { symbol: 'n', label: 'Engine speed', range: '0 <= x <= 10000 rpm', example: '2000 rpm' }),
  ),
  massFlow: wf.optional(
    wf.quantity(massFlow, {
      symbol: '\\dot m',
      label: 'Exhaust or air mass flow',
      range: '0 <= x <= 5000 kg/h',
      example: '190 kg/h',
      units: ['kg/h', 'g/s'],
    }),
  ),
  coolantTemperature: wf.optional(
    wf.quantity(temperature, {
      symbol: 'T_c',
      label: 'Coolant temperature',
      range: '-60 <= x <= 200 °C',
      example: '92 °C',
      units: ['degC', 'degF', 'K'],
    }),
  ),
  oilPressureLamp: wf.optional(wf.flag({ label: 'Oil pressure lamp on', example: false })),
  fire: wf.optional(wf.flag({ label: 'Fire or glowing parts outside the exhaust', example: false })),
  smokeOrSmell: wf.optional(wf.flag({ label: 'Lasting white smoke or smell of fuel', example: false })),
};

const yesNo = { yes: 'yes', no: 'no' };

const own = { source: watchPractice };
const constants = {
  inletLasting: wf.constant(temperature, 700 + celsius, { symbol: 'T_{in,max}', label: 'Inlet temperature that must not last', ...own }),
  inletTime: wf.constant(time, 10, { symbol: 't_{in}', label: 'How long it may last', ...own }),
  zoneLimit: wf.constant(temperature, 750 + celsius, { symbol: 'T_{max}', label: 'Highest temperature in the filter zone', ...own }),
  outletAbove: wf.constant(temperatureDifference, 100, { symbol: '\\Delta T_{max}', label: 'Outlet above inlet, while rising', ...own }),
  riseLimit: wf.constant(temperatureRate, 10, { symbol: '\\dot T_{max}', label: 'Fastest rise', ...own }),
  dropRiseTime: wf.constant(time, 180, { symbol: 't_{\\Delta p}', label: 'How long the pressure drop may rise', ...own }),
  steadySpeed: wf.constant(fraction, 0.05, { symbol: '\\delta_n', label: 'Change of engine speed that counts as steady', ...own }),
  coolantLimit: wf.constant(temperature, 105 + celsius, { symbol: 'T_{c,max}', label: 'Highest coolant temperature', ...own }),
  burningTemperature: wf.constant(temperature, 450 + celsius, {
    symbol: 'T_h',
    label: 'Temperature from which the filter counts as burning',
    ...own,
  }),
  hotTime: wf.constant(time, 60, { symbol: 't_h', label: 'How long it counts as burning after it was last seen hot', ...own }),
  stoppedSpeed: wf.constant(rotationalSpeed, 300 / 60, { symbol: 'n_0', label: 'Engine speed below which it counts as stopped', ...own }),
  idleSpeed: wf.constant(rotationalSpeed, 900 / 60, { symbol: 'n_i', label: 'Engine speed below which it counts as idling', ...own }),
  speedLoss: wf.constant(fraction, 0.25, { symbol: '\\delta_l', label: 'Fall of the engine speed that is an alarm', ...own }),
  flowLoss: wf.constant(fraction, 0.5, { symbol: '\\delta_f', label: 'Fall of mass flow or pressure drop that is an alarm', ...own }),
  lossTime: wf.constant(time, 20, { symbol: 't_l', label: 'Time over which a fall is measured', ...own }),
  riseTime: wf.constant(time, 2, { symbol: 't_w', label: 'Time over which a rise is measured', ...own }),
};

const exampleLog = [
  { time: '0 s', inlet: '400 °C', outlet: '320 °C', pressureDrop: '31 mbar', engineSpeed: '1500 rpm', coolantTemperature: '88 °C' },
  { time: '120 s', inlet: '590 °C', outlet: '500 °C', pressureDrop: '40 mbar', engineSpeed: '1500 rpm', coolantTemperature: '90 °C' },
  { time: '240 s', inlet: '610 °C', outlet: '640 °C', pressureDrop: '38 mbar', engineSpeed: '1500 rpm', coolantTemperature: '92 °C' },
  { time: '250 s', inlet: '610 °C', outlet: '700 °C', pressureDrop: '38 mbar', engineSpeed: '1500 rpm', coolantTemperature: '92 °C' },
  { time: '255 s', inlet: '610 °C', outlet: '730 °C', pressureDrop: '38 mbar', engineSpeed: '1500 rpm', coolantTemperature: '93 °C' },
];

/** What was found, in words. */
function foundText({ rule, value }: WatchEvent): string {
  if (value === undefined) return wf.say`seen`;
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
    ['coolantTemperature', 'coolant temperature'],
  ];
  return names
    .filter(([key]) => last?.[key] === undefined)
    .map(([key, name]) => (log.some((line) => line[key] !== undefined) ? wf.say`${name} (silent now)` : name));
}

export const regenerationWatchCalculation = wf.defineCalculation({
  id: 'regeneration-watch',
  subject: 'regeneration',
  title: 'Watch over a running regeneration',
  purpose: 'Must this regeneration be stopped, what must be done, and what must never be done?',
  keywords: 'abort, stop, runaway, log, over-temperature, safety, DPF, regen, burn-off',
  method: 'every line of the log against the limits; a rule once broken stays broken',
  inputs: {
    log: wf.list(sample, {
      label: 'Log',
      description: 'Lines in order of time, one every second or two if possible. Leave blank what is not measured.',
      min: 1,
      max: 5_000,
      example: exampleLog,
    }),
  },
  intermediates: {
    temperaturesWatched: wf.choiceOutput({ label: 'Both gas temperatures in the last of at least two lines', options: yesNo }),
    flowWatched: wf.choiceOutput({ label: 'Engine speed, mass flow or pressure drop in the last line', options: yesNo }),
    urgency: wf.optional(wf.countOutput({ symbol: 'r_1', label: 'Highest urgency (lowest number) of the broken rules' })),
  },
  outputs: {
    verdict: wf.choiceOutput({
      label: 'Verdict',
      options: {
        'go-on': 'go on: nothing that is watched speaks against it',
        unknown: 'do not go on: not watched well enough',
        end: 'end it, and keep the flow up',
        'flow-lost': 'cooling flow lost: bring it back at once and stop heating',
        runaway: 'runaway: stop heating, and keep the flow up',
        'stop-engine': 'stop the engine',
      },
    }),
    act: wf.textOutput({ label: 'Do this' }),
    never: wf.textOutput({ label: 'Never do this' }),
    firstTime: wf.optional(
      wf.quantityOutput(time, { symbol: 't_1', label: 'Time of the first broken rule', digits: 5, units: ['s', 'min'] }),
    ),
    notWatched: wf.textOutput({ label: 'Not watched' }),
    events: wf.tableOutput({
      label: 'Broken rules',
      columns: {
        time: wf.quantityOutput(time, { symbol: 't', label: 'First at', digits: 5, units: ['s', 'min'] }),
        rule: wf.textOutput({ label: 'Rule' }),
        found: wf.textOutput({ label: 'Found' }),
        act: wf.textOutput({ label: 'Do' }),
        never: wf.textOutput({ label: 'Never' }),
        urgency: wf.countOutput({ symbol: 'r', label: 'Urgency (1 is the most urgent)' }),
      },
    }),
  },
  constants,
  answer: 'verdict',
  steps: [
    wf.statement(
      'events',
      'Every line is compared with the limits: a hot inlet that lasts, any place too hot, outlet above inlet and rising, a rise too fast, a pressure drop that rises at steady speed (brought to one temperature by T to the power of −1.7), coolant, an engine that stops, idles or slows while the filter is hot, a flow that falls then, and what was seen.',
      watchPractice,
    ),
    wf.formula('firstTime', 'min(events.time)'),
    wf.formula('urgency', 'min(events.urgency)'),
    wf.statement('temperaturesWatched', 'One line shows no rise, and a sensor that has gone silent watches no longer.'),
    wf.statement('flowWatched', 'Otherwise nothing would show that the engine drops to idle.'),
    wf.verdict(
      'verdict',
      {
        'stop-engine': 'urgency <= 2',
        'flow-lost': 'urgency <= 5',
        runaway: 'urgency <= 8',
        end: 'urgency > 8',
        unknown: "temperaturesWatched == 'no' or flowWatched == 'no'",
        'go-on': 'otherwise',
      },
      watchPractice,
    ),
  ],
  assumptions: {
    sensors_true:
      'The sensors are right and were compared when cold. Inside, a filter is about 50 K to 100 K hotter than the gas after it.',
  },
  limits: {
    sampling: 'With lines more than 5 s apart a fast rise is seen late.',
    standing: 'Only for a stationary vehicle: on the road the engine speed changes all the time, and the flow alarms come too often.',
    eyes: 'The watch replaces nobody: somebody must stay with the vehicle.',
  },
  cautions: [cautions.makerFirst, cautions.neverUnattended, cautions.runaway, cautions.hotExhaust, cautions.fumes, cautions.sensorFirst],
  dimensional: 'findings are text with units',
  compute(input, { constants: limits, warn }) {
    const log = checkedLog(input.log, warn);
    if (wf.isRefusal(log)) return log;
    const events = watchRegeneration(log, limits as WatchLimits);
    const answers = events.map((event) => ({ ...event, ...watchAnswers[event.rule] }));
    const worst = answers.toSorted((a, b) => a.urgency - b.urgency)[0];
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
          ? 'Record both gas temperatures in every line before you go on.'
          : flowUnseen
            ? 'Record the engine speed too, in every line, before you go on: nothing here would show that the engine drops to idle.'
            : 'Keep watching until it has ended and the filter has cooled for five minutes at raised idle.'),
      never: worst?.never ?? 'Never leave it alone, and never let the engine drop to idle while the filter burns.',
      firstTime: events[0]?.time,
      notWatched: missing.length === 0 ? wf.say`nothing` : missing.map((one) => wf.spoken(one)).join(', '),
      temperaturesWatched: blind ? 'no' : 'yes',
      flowWatched: flowUnseen ? 'no' : 'yes',
      urgency: worst?.urgency,
      events: answers.map((answer) => ({ ...answer, rule: answer.what, found: foundText(answer) })),
    };
  },
});
