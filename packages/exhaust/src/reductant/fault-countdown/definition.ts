import {
  choice,
  choiceOutput,
  choiceWithDefault,
  citation,
  commonPractice,
  defineCalculation,
  inconsistentInputs,
  missingInputs,
  optional,
  quantity,
  quantityOutput,
  textOutput,
} from '@wallflow/calculation';
import { fraction, length, time } from '@wallflow/units';
import * as z from 'zod';
import { cautions } from '../../cautions.js';
import { type CountdownState, countdown } from './kernel.js';
import { type CountdownStage, type LawProfile, lawProfiles } from './profiles.js';
import { euroSixHeavyInducement, unR83Inducement, usGuidance2025 } from './sources.js';

const stages = {
  none: 'no stage that is known here',
  warning: 'driver warning',
  counting: 'countdown shown',
  'low-level': 'low-level inducement: less torque',
  severe: 'severe inducement: very low speed',
  'no-restart': 'no restart, or restricted performance',
} as const;

const needs = {
  distance: 'the distance since the fault was detected',
  engineTime: 'the engine hours since the fault was detected',
  level: 'the level in the tank',
  range: 'the range left',
} as const;
const inputOf = {
  distance: 'distanceSinceDetection',
  engineTime: 'engineTimeSinceDetection',
  level: 'tankLevel',
  range: 'rangeLeft',
} as const;

export const faultCountdownCalculation = defineCalculation({
  id: 'fault-countdown',
  version: '1.0.0',
  subject: 'reductant',
  title: 'Countdown after a reagent or NOx fault',
  purpose: 'Which stage has the vehicle reached, what comes next, and how far or how long until then?',
  usedBy: ['technician', 'trainer'],
  keywords: ['countdown', 'inducement', 'no restart', 'reagent', 'warning'],
  method: 'stages of the law, held as data',
  inputs: z.strictObject({
    law: choice({
      label: 'Rule',
      options: {
        'eu-light-duty': lawProfiles['eu-light-duty'].name,
        'eu-heavy-duty': lawProfiles['eu-heavy-duty'].name,
        'us-guidance-2025': lawProfiles['us-guidance-2025'].name,
      },
      example: 'eu-light-duty',
    }),
    fault: choice({
      label: 'Fault',
      options: {
        level: 'reagent low or empty',
        quality: 'wrong reagent quality',
        consumption: 'no or too little consumption, dosing interrupted',
        nox: 'NOx above the threshold',
        tampering: 'part disconnected, or exhaust recirculation blocked',
      },
      example: 'quality',
    }),
    state: choiceWithDefault({
      label: 'State of the fault',
      options: {
        active: 'active',
        'repaired-unconfirmed': 'repaired, not yet confirmed by the vehicle',
        'repaired-confirmed': 'repaired and confirmed by the vehicle',
      },
      example: 'active',
      default: 'active',
      defaultReason: 'a fault counts until the vehicle has confirmed the repair',
    }),
    distanceSinceDetection: quantity(length, {
      symbol: 's',
      label: 'Distance since the fault was detected',
      description: 'From the freeze frame or the counter. Read it before anything is cleared.',
      min: '0 km',
      max: '100000 km',
      example: '300 km',
      units: ['km', 'mi'],
    }).optional(),
    engineTimeSinceDetection: quantity(time, {
      symbol: 't',
      label: 'Engine running time since the fault was detected',
      min: '0 h',
      max: '10000 h',
      example: '6 h',
      units: ['h', 'min'],
    }).optional(),
    tankLevel: quantity(fraction, {
      symbol: 'l',
      label: 'Level in the tank',
      min: '0 %',
      max: '100 %',
      example: '8 %',
      units: ['%'],
    }).optional(),
    rangeLeft: quantity(length, {
      symbol: 'r',
      label: 'Range left on the reagent',
      min: '0 km',
      max: '100000 km',
      example: '1500 km',
      units: ['km', 'mi'],
    }).optional(),
    distancePerDay: quantity(length, {
      symbol: 's_d',
      label: 'Distance driven per day',
      description: 'Give it to get the days left.',
      above: '0 km',
      max: '2000 km',
      example: '60 km',
      units: ['km', 'mi'],
    }).optional(),
    engineTimePerDay: quantity(time, {
      symbol: 't_d',
      label: 'Engine running time per day',
      description: 'Give it to get the days left.',
      above: '0 h',
      max: '24 h',
      example: '6 h',
      units: ['h'],
    }).optional(),
    timeSinceConfirmed: quantity(time, {
      symbol: 't_c',
      label: 'Engine running time since the repair was confirmed',
      min: '0 h',
      max: '10000 h',
      example: '5 h',
      units: ['h'],
    }).optional(),
  }),
  example: { distanceSinceDetection: '300 km', distancePerDay: '60 km' },
  intermediates: {},
  outputs: {
    effect: textOutput({ label: 'What it does' }),
    nextStage: optional(choiceOutput({ label: 'Next stage', options: stages })),
    nextEffect: optional(textOutput({ label: 'What that will do' })),
    distanceLeft: optional(
      quantityOutput(length, { symbol: 's_n', label: 'Distance until the next stage', digits: 3, units: ['km', 'mi'] }),
    ),
    timeLeft: optional(
      quantityOutput(time, { symbol: 't_n', label: 'Engine running time until the next stage', digits: 3, units: ['h', 'min'] }),
    ),
    levelLeft: optional(quantityOutput(fraction, { symbol: 'l_n', label: 'Tank level above the next stage', digits: 3, units: ['%'] })),
    rangeLeftToNext: optional(
      quantityOutput(length, { symbol: 'r_n', label: 'Range above the next stage', digits: 3, units: ['km', 'mi'] }),
    ),
    daysLeft: optional(quantityOutput(time, { symbol: 'd', label: 'Days until the next stage, at this use', digits: 3, units: ['d'] })),
    counterKeptFor: optional(
      quantityOutput(time, { symbol: 't_k', label: 'A repeat still continues the old counter for', digits: 3, units: ['h'] }),
    ),
    basis: textOutput({ label: 'Basis' }),
    stage: choiceOutput({ label: 'Stage reached', options: stages }),
  },
  constants: {},
  steps: [
    { gives: 'basis', text: 'Rule, edition and how far it was checked.' },
    { gives: 'distanceLeft', tex: '[[distanceLeft]] = s_{next}-[[distanceSinceDetection]]' },
    { gives: 'timeLeft', tex: '[[timeLeft]] = t_{next}-[[engineTimeSinceDetection]]' },
    { gives: 'levelLeft', tex: '[[levelLeft]] = [[tankLevel]]-l_{next}' },
    { gives: 'rangeLeftToNext', tex: '[[rangeLeftToNext]] = [[rangeLeft]]-r_{next}' },
    { gives: 'daysLeft', text: 'What is left over what a day uses; the axis that comes first counts.' },
    { gives: 'nextStage', text: 'The stage after the one that is reached.' },
    { gives: 'stage', text: 'The most severe stage of which any limit is reached.' },
  ],
  assumptions: [
    { code: 'rule_not_vehicle', text: 'These are the latest limits of the rule. A vehicle may act earlier; its own display comes first.' },
  ],
  limits: [{ code: 'profiles', text: 'Non-road machines and model years from 2027 in the US follow other rules that are not held here.' }],
  cautions: [cautions.noDefeat, cautions.makerFirst],
  sources: {
    unR83Inducement,
    euroSixHeavyInducement,
    usGuidance2025,
    practice: commonPractice('Counters and freeze frames are saved before anything is cleared'),
  },
  dimensional: 'compares with limits of the law that are held as data',
  compute(input, { warn, method }) {
    const profile: LawProfile = lawProfiles[input.law];
    const list: readonly CountdownStage[] | undefined = profile.faults[input.fault];
    if (list === undefined) return inconsistentInputs('this rule has no stages for this fault in the data held here', ['law'], ['fault']);
    const found = countdown(list, {
      distance: input.distanceSinceDetection,
      engineTime: input.engineTimeSinceDetection,
      level: input.tankLevel,
      range: input.rangeLeft,
    });
    const counted = (['distance', 'engineTime', 'level', 'range'] as const).filter((axis) => countsOn(list, axis));
    if (input.state !== 'repaired-confirmed' && counted.every((axis) => found.unknown.includes(axis))) {
      if (counted.length === 1) return missingInputs(...counted.map((axis) => inputOf[axis]));
      return inconsistentInputs(
        `this rule counts ${counted.map((axis) => needs[axis]).join(' or ')}, which was not given`,
        ['law'],
        ...counted.map((axis) => [inputOf[axis]]),
      );
    }
    const basis = citation(profile.source);
    method(`stages by ${basis}`);
    if (profile.source.mark !== 'read')
      warn('from_memory', `The limits of this rule are from memory: ${basis}. Read the text before telling a customer a date.`);
    else warn('read_second_hand', profile.source.note ?? basis);
    for (const axis of found.unknown)
      warn('axis_unknown', `Not given: ${needs[axis]}. A later stage may have been reached.`, [inputOf[axis]]);
    if (input.state === 'repaired-confirmed') return confirmed(profile, basis, input.timeSinceConfirmed);
    const frozen = input.state === 'repaired-unconfirmed';
    if (frozen) warn('not_confirmed', 'The stage stays until the vehicle has confirmed the repair by its own test.');
    const after = frozen ? undefined : found.next;
    const left: CountdownState = frozen ? {} : found.left;
    return {
      stage: found.stage,
      effect: found.effect,
      nextStage: after?.stage,
      nextEffect: after?.effect,
      distanceLeft: left.distance,
      timeLeft: left.engineTime,
      levelLeft: left.level,
      rangeLeftToNext: left.range,
      daysLeft: daysUntil(left, input.distancePerDay, input.engineTimePerDay),
      counterKeptFor: undefined,
      basis: `${basis}. ${profile.note}`,
    };
  },
  advise: () => [
    {
      tone: 'do',
      text: 'Save codes, freeze frames and counters first; then repair the cause, and let the vehicle confirm it by the maker’s test or drive.',
    },
    { tone: 'do-not', text: 'Do not clear codes to gain time: the counter is remembered, and the evidence is gone.' },
  ],
});

function countsOn(list: readonly CountdownStage[], axis: keyof typeof needs): boolean {
  const key = { distance: 'distance', engineTime: 'engineTime', level: 'levelAtMost', range: 'rangeAtMost' } as const;
  return list.some((stage) => stage[key[axis]] !== undefined);
}

/** Seconds of calendar time until the first of the axes that count on daily use reaches its limit. */
function daysUntil(left: CountdownState, distancePerDay: number | undefined, engineTimePerDay: number | undefined): number | undefined {
  const shares = [
    [left.distance ?? left.range, distancePerDay],
    [left.engineTime, engineTimePerDay],
  ].flatMap(([rest, perDay]) => (rest === undefined || perDay === undefined ? [] : [rest / perDay]));
  return shares.length === 0 ? undefined : 86_400 * Math.max(0, Math.min(...shares));
}

function confirmed(profile: LawProfile, basis: string, since: number | undefined) {
  const kept = profile.counterMemory === undefined || since === undefined ? undefined : Math.max(0, profile.counterMemory - since);
  return {
    stage: 'none' as const,
    effect: 'none: the vehicle has confirmed the repair',
    nextStage: undefined,
    nextEffect: undefined,
    distanceLeft: undefined,
    timeLeft: undefined,
    levelLeft: undefined,
    rangeLeftToNext: undefined,
    daysLeft: undefined,
    counterKeptFor: kept,
    basis: `${basis}. ${profile.note}`,
  };
}
