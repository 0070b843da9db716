import * as wf from '@wallflow/calculation';
import { fraction, moleFraction, ratio, time, volume, volumeFlow } from '@wallflow/units';
import { cautions } from '../../cautions.js';
import { dangerAtOnce, dieselExhaustLimit, eh40, euExposureLimits, iarc2012 } from '../sources.js';
import { freshAirFor, roomFractionAfter, steadyRoomFraction } from './kernel.js';
import { type WorkplaceGas, type WorkplaceLimit, workplaceLimits } from './limits.js';

const gases = Object.fromEntries(Object.values(workplaceLimits).map(({ gas, name }) => [gas, name])) as Record<WorkplaceGas, string>;

function airVerdict(atEnd: number, { eightHours, fifteenMinutes, dangerous }: WorkplaceLimit) {
  if (atEnd >= dangerous) return 'dangerous' as const;
  if (fifteenMinutes !== undefined && atEnd > fifteenMinutes) return 'above-short-term' as const;
  return atEnd > eightHours ? ('above-eight-hours' as const) : ('below' as const);
}

const mixing: wf.Source = { type: 'derivation', title: 'Balance of a well-mixed room', mark: 'read' };
const practice = wf.commonPractice('A hood some centimetres off the tail pipe, not a tight hose, with a carbon monoxide alarm in the room');

export const workplaceAirCalculation = wf.defineCalculation({
  id: 'workplace-air',
  subject: 'smoke',
  title: 'Exhaust in the workshop air',
  purpose: 'How fast does the air become dangerous with an engine running indoors, and how much fresh air would it take?',
  keywords: 'workplace, ventilation, carbon monoxide, nitrogen dioxide, exposure limit',
  method: 'well-mixed room',
  inputs: {
    gas: wf.choice({ label: 'Gas', options: gases, example: 'nitrogen-dioxide' }),
    cooledExhaustFlow: wf.quantity(volumeFlow, {
      symbol: 'Q_e',
      label: 'Exhaust of the engine, cooled to room temperature',
      description: 'About 40 m³/h for a two-litre engine at idle.',
      range: '0 < x <= 2000 m3/h',
      example: '40 m3/h',
      units: ['m3/h'],
    }),
    exhaustFraction: wf.quantity(moleFraction, {
      symbol: 'x_e',
      label: 'Gas in the exhaust',
      range: '0 <= x <= 100000 ppm',
      example: '60 ppm',
      units: ['ppm'],
    }),
    escapingShare: wf.quantity(fraction, {
      symbol: 's',
      label: 'Share that gets past the extraction',
      description: '100 % without extraction.',
      range: '0 <= x <= 100 %',
      example: '100 %',
      units: ['%'],
    }),
    roomVolume: wf.quantity(volume, {
      symbol: 'V',
      label: 'Air in the room',
      range: '10 <= x <= 100000 m3',
      example: '300 m3',
      units: ['m3'],
    }),
    freshAirFlow: wf.quantity(volumeFlow, {
      symbol: 'Q_f',
      label: 'Fresh air',
      description: '0 m³/h in a closed garage.',
      range: '0 <= x <= 100000 m3/h',
      example: '300 m3/h',
      units: ['m3/h'],
    }),
    runningTime: wf.quantity(time, {
      symbol: 't',
      label: 'How long the engine runs',
      range: '0 min <= x <= 12 h',
      example: '30 min',
      units: ['min', 'h'],
    }),
    mixingFactor: wf.quantity(fraction, {
      symbol: 'm',
      label: 'Share of the fresh air that mixes in',
      range: '10 <= x <= 100 %',
      units: ['%'],
      default: ['50 %', 'rooms do not mix well; common practice, no source'],
    }),
  },
  intermediates: {
    airChanges: wf.quantityOutput(ratio, { symbol: 'n', label: 'Air changes while the engine runs', digits: 3 }),
    steadyShare: wf.quantityOutput(moleFraction, {
      symbol: 'x_\\infty',
      label: 'In the room after a long time',
      digits: 3,
      units: ['ppm'],
    }),
    limitEightHours: wf.quantityOutput(moleFraction, { symbol: 'x_8', label: 'Limit, mean over eight hours', digits: 3, units: ['ppm'] }),
    limitFifteenMinutes: wf.optional(
      wf.quantityOutput(moleFraction, { symbol: 'x_{15}', label: 'Limit, mean over fifteen minutes', digits: 3, units: ['ppm'] }),
    ),
    limitDangerous: wf.quantityOutput(moleFraction, {
      symbol: 'x_d',
      label: 'Level that endangers life at once',
      digits: 3,
      units: ['ppm'],
    }),
  },
  outputs: {
    atEnd: wf.quantityOutput(moleFraction, { symbol: 'x', label: 'In the room at the end of the run', digits: 3, units: ['ppm'] }),
    freshAirNeeded: wf.quantityOutput(volumeFlow, {
      symbol: 'Q_n',
      label: 'Fresh air that would keep it at the eight-hour limit',
      digits: 3,
      units: ['m3/h'],
    }),
    basis: wf.textOutput({ label: 'Basis' }),
    verdict: wf.choiceOutput({
      label: 'Verdict',
      options: {
        dangerous: 'danger to life: stop the engine, leave at once, let nobody in',
        'above-short-term': 'goes above the fifteen-minute limit: stop, extract, or go outdoors',
        'above-eight-hours': 'goes above the eight-hour limit: extract at the tail pipe or go outdoors',
        below: 'this gas stays below its limits; soot and other gases still need extraction',
      },
    }),
  },
  answer: 'verdict',
  steps: [
    wf.formula('airChanges', '(mixingFactor * freshAirFlow + escapingShare * cooledExhaustFlow) * runningTime / roomVolume', mixing),
    wf.cases(
      'steadyShare',
      {
        'escapingShare == 0': '0',
        otherwise:
          'escapingShare * cooledExhaustFlow * exhaustFraction / (mixingFactor * freshAirFlow + escapingShare * cooledExhaustFlow)',
      },
      mixing,
    ),
    wf.cases(
      'atEnd',
      {
        'airChanges < 1e-5': 'steadyShare * airChanges * (1 - airChanges / 2)',
        otherwise: 'steadyShare * (1 - exp(-airChanges))',
      },
      mixing,
    ),
    wf.fromTable('limitEightHours', ['gas'], eh40),
    wf.fromTable('limitFifteenMinutes', ['gas'], eh40),
    wf.fromTable('limitDangerous', ['gas'], dangerAtOnce),
    wf.formula(
      'freshAirNeeded',
      'max(0, escapingShare * cooledExhaustFlow / mixingFactor * (exhaustFraction / limitEightHours - 1))',
      mixing,
    ),
    wf.verdict(
      'verdict',
      {
        dangerous: 'atEnd >= limitDangerous',
        'above-short-term': 'atEnd > limitFifteenMinutes',
        'above-eight-hours': 'atEnd > limitEightHours',
        below: 'otherwise',
      },
      eh40,
    ),
  ],
  assumptions: {
    clean_start: 'The room was clean at the start, and the fresh air is clean.',
    peak_for_mean: 'The value at the end is compared with limits that are means, which is on the safe side.',
  },
  limits: {
    one_gas:
      'Each gas is judged alone. Diesel exhaust as a whole is carcinogenic: 0.05 mg/m³ of elemental carbon is the European limit, and extraction comes first in any case.',
    not_a_measurement: 'A calculation replaces no gas alarm and no measurement.',
  },
  cautions: [cautions.fumes],
  sources: [euExposureLimits, dieselExhaustLimit, iarc2012, practice],
  compute(input, { warn }) {
    const limit = workplaceLimits[input.gas];
    const room = {
      exhaustFlow: input.escapingShare * input.cooledExhaustFlow,
      exhaustFraction: input.exhaustFraction,
      freshAirFlow: input.mixingFactor * input.freshAirFlow,
    };
    const atEnd = roomFractionAfter(room, input.roomVolume, input.runningTime);
    warn('from_memory', 'The limits are from memory of EH40 (2018) and Directive (EU) 2017/164; read the list in force.');
    const shortTerm = limit.fifteenMinutes;
    return {
      airChanges: ((room.freshAirFlow + room.exhaustFlow) * input.runningTime) / input.roomVolume,
      steadyShare: steadyRoomFraction(room),
      atEnd,
      limitEightHours: limit.eightHours,
      limitFifteenMinutes: shortTerm,
      limitDangerous: limit.dangerous,
      freshAirNeeded: freshAirFor(room.exhaustFlow, room.exhaustFraction, limit.eightHours) / input.mixingFactor,
      basis: limit.sources.map((source) => wf.citation(source)).join('; '),
      verdict: airVerdict(atEnd, limit),
    };
  },
  advise: ({ verdict }) => [
    ...(verdict === 'dangerous'
      ? ([
          {
            tone: 'do',
            text: 'Stop the engine from outside if you can, leave at once, open the doors, and call help for anyone who feels unwell.',
          },
          { tone: 'do-not', text: 'Do not go back in for the vehicle, and do not rely on smell: carbon monoxide has none.' },
        ] as const)
      : []),
    { tone: 'do', text: 'Work outdoors or with extraction that is rated for hot exhaust, and with a carbon monoxide alarm.' },
    { tone: 'do-not', text: 'Never run a regeneration in a closed room on the strength of this number.' },
  ],
});
