import * as wf from '@wallflow/calculation';
import { fraction, length, time } from '@wallflow/units';
import { cautions } from '../../cautions.js';
import { siBrochure } from '../../sources.js';
import { type CountdownState, faultCountdown } from './kernel.js';
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

const practice = wf.commonPractice('Counters and freeze frames are saved before anything is cleared');
const stretch = (symbol: string, label: string) => wf.quantityOutput(length, { symbol, label, digits: 3, units: ['km', 'mi'] });
const hours = (symbol: string, label: string) => wf.quantityOutput(time, { symbol, label, digits: 3, units: ['h', 'min'] });
const days = (symbol: string, label: string) => wf.quantityOutput(time, { symbol, label, digits: 3, units: ['d'] });
const share = (symbol: string, label: string) => wf.quantityOutput(fraction, { symbol, label, digits: 3, units: ['%'] });

export const faultCountdownCalculation = wf.defineCalculation({
  id: 'fault-countdown',
  subject: 'reductant',
  title: 'Countdown after a reagent or NOx fault',
  purpose: 'Which stage has the vehicle reached, what comes next, and how far or how long until then?',
  keywords: 'countdown, inducement, no restart, reagent, warning, DEF, AUS 32, SCR',
  method: 'stages of the law, from a table',
  inputs: {
    rule: wf.choice({
      label: 'Rule',
      options: {
        'eu-light-duty': lawProfiles['eu-light-duty'].name,
        'eu-heavy-duty': lawProfiles['eu-heavy-duty'].name,
        'us-guidance-2025': lawProfiles['us-guidance-2025'].name,
      },
      example: 'eu-heavy-duty',
    }),
    fault: wf.choice({
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
    faultState: wf.choice({
      label: 'State of the fault',
      options: {
        active: 'active',
        'repaired-unconfirmed': 'repaired, not yet confirmed by the vehicle',
        'repaired-confirmed': 'repaired and confirmed by the vehicle',
      },
      default: ['active', 'a fault counts until the vehicle has confirmed the repair'],
    }),
    distanceSinceDetection: wf.optional(
      wf.quantity(length, {
        symbol: 's',
        label: 'Distance since the fault was detected',
        description: 'From the freeze frame or the counter. Read it before anything is cleared.',
        range: '0 <= x <= 100000 km',
        example: '300 km',
        units: ['km', 'mi'],
      }),
    ),
    engineTimeSinceDetection: wf.optional(
      wf.quantity(time, {
        symbol: 't',
        label: 'Engine running time since the fault was detected',
        range: '0 <= x <= 10000 h',
        example: '6 h',
        units: ['h', 'min'],
      }),
    ),
    tankLevel: wf.optional(
      wf.quantity(fraction, { symbol: 'l', label: 'Level in the tank', range: '0 <= x <= 100 %', example: '8 %', units: ['%'] }),
    ),
    rangeLeft: wf.optional(
      wf.quantity(length, {
        symbol: 'r',
        label: 'Range left on the reagent',
        range: '0 <= x <= 100000 km',
        example: '1500 km',
        units: ['km', 'mi'],
      }),
    ),
    distancePerDay: wf.optional(
      wf.quantity(length, {
        symbol: 's_d',
        label: 'Distance driven per day',
        description: 'Enter it to see the days left.',
        range: '0 < x <= 2000 km',
        example: '60 km',
        units: ['km', 'mi'],
      }),
    ),
    engineTimePerDay: wf.optional(
      wf.quantity(time, {
        symbol: 't_d',
        label: 'Engine running time per day',
        description: 'Enter it to see the days left.',
        range: '0 < x <= 24 h',
        example: '6 h',
        units: ['h'],
      }),
    ),
    ...wf.relevantWhen('faultState', 'repaired-confirmed', {
      timeSinceConfirmed: wf.optional(
        wf.quantity(time, {
          symbol: 't_c',
          label: 'Engine running time since the repair was confirmed',
          range: '0 <= x <= 10000 h',
          example: '5 h',
          units: ['h'],
        }),
      ),
    }),
  },
  example: { engineTimeSinceDetection: '6 h', engineTimePerDay: '2 h' },
  intermediates: {
    nextDistance: wf.optional(stretch('s_2', 'Distance at which the next stage begins')),
    nextEngineTime: wf.optional(hours('t_2', 'Engine running time at which the next stage begins')),
    nextLevel: wf.optional(share('l_2', 'Tank level at which the next stage begins')),
    nextRange: wf.optional(stretch('r_2', 'Range left at which the next stage begins')),
    daysByDistance: wf.optional(days('d_s', 'Days by distance')),
    daysByTime: wf.optional(days('d_t', 'Days by engine running time')),
    counterMemory: wf.optional(hours('t_m', 'Engine running time for which the counter is kept')),
  },
  outputs: {
    effect: wf.textOutput({ label: 'What it does' }),
    nextStage: wf.optional(wf.choiceOutput({ label: 'Next stage', options: stages })),
    nextEffect: wf.optional(wf.textOutput({ label: 'What that will do' })),
    distanceToStage: wf.optional(stretch('s_n', 'Distance until the next stage')),
    timeLeft: wf.optional(hours('t_n', 'Engine running time until the next stage')),
    levelLeft: wf.optional(share('l_n', 'Tank level above the next stage')),
    rangeLeftToNext: wf.optional(stretch('r_n', 'Range above the next stage')),
    daysLeft: wf.optional(days('d', 'Days until the next stage, at this use')),
    counterKeptFor: wf.optional(hours('t_k', 'A repeat still continues the old counter for')),
    basis: wf.textOutput({ label: 'Basis' }),
    stage: wf.choiceOutput({ label: 'Stage reached', options: stages }),
  },
  constants: { day: wf.constant(time, '1 d', { symbol: 'd_1', label: 'One day', source: siBrochure }) },
  answer: 'stage',
  steps: [
    wf.statement('basis', 'Rule, edition and how far it was checked.'),
    wf.statement('stage', 'The most severe stage of which any limit is reached: [[stage]].'),
    wf.statement('nextStage', 'The stage after the one that is reached: [[nextStage]].'),
    wf.fromTable('nextDistance', ['rule', 'fault'], undefined, undefined, 'Limit of the next stage.'),
    wf.formula('distanceToStage', 'nextDistance - distanceSinceDetection'),
    wf.fromTable('nextEngineTime', ['rule', 'fault'], undefined, undefined, 'Limit of the next stage.'),
    wf.formula('timeLeft', 'nextEngineTime - engineTimeSinceDetection'),
    wf.fromTable('nextLevel', ['rule', 'fault'], undefined, undefined, 'Limit of the next stage.'),
    wf.formula('levelLeft', 'tankLevel - nextLevel'),
    wf.fromTable('nextRange', ['rule', 'fault'], undefined, undefined, 'Limit of the next stage.'),
    wf.formula('rangeLeftToNext', 'rangeLeft - nextRange'),
    wf.cases('daysByDistance', {
      'known(distanceToStage)': 'day * distanceToStage / distancePerDay',
      otherwise: 'day * rangeLeftToNext / distancePerDay',
    }),
    wf.formula('daysByTime', 'day * timeLeft / engineTimePerDay'),
    wf.formula('daysLeft', 'max(0, min(daysByDistance, daysByTime))', undefined, undefined, 'What comes first counts.'),
    wf.fromTable('counterMemory', ['rule'], euroSixHeavyInducement),
    wf.formula('counterKeptFor', 'max(0, counterMemory - timeSinceConfirmed)'),
  ],
  assumptions: { rule_not_vehicle: 'These are the latest limits of the rule. A vehicle may act earlier; its own display comes first.' },
  limits: { profiles: 'Not for non-road machines and US model years from 2027: they follow other rules.' },
  cautions: [cautions.noDefeat, cautions.makerFirst],
  dimensional: 'compares with limits of the law that are held as data',
  sources: [unR83Inducement, usGuidance2025, practice],
  compute(input, { constants, warn, method }) {
    const profile: LawProfile = lawProfiles[input.rule];
    const list: readonly CountdownStage[] | undefined = profile.faults[input.fault];
    if (list === undefined) return wf.inconsistentInputs('no stages are known here for this fault under this rule', ['rule'], ['fault']);
    const found = faultCountdown(list, {
      distance: input.distanceSinceDetection,
      engineTime: input.engineTimeSinceDetection,
      level: input.tankLevel,
      range: input.rangeLeft,
    });
    const counted = (['distance', 'engineTime', 'level', 'range'] as const).filter((axis) => countsOn(list, axis));
    if (input.faultState !== 'repaired-confirmed' && counted.every((axis) => found.unknown.includes(axis))) {
      if (counted.length === 1) return wf.missingInputs(...counted.map((axis) => inputOf[axis]));
      return wf.inconsistentInputs(
        wf.say`this rule counts ${counted.map((axis) => needs[axis]).join(' or ')}; enter one of them`,
        ['rule'],
        ...counted.map((axis) => [inputOf[axis]]),
      );
    }
    const basis = wf.citation(profile.source);
    method(wf.say`stages by ${basis}`);
    if (profile.source.mark !== 'read')
      warn('from_memory', wf.say`The limits of this rule are from memory: ${basis}. Read the text before telling a customer a date.`);
    else warn('read_second_hand', profile.source.note ?? basis);
    for (const axis of found.unknown)
      warn('axis_unknown', wf.say`Not entered: ${needs[axis]}. A later stage may have been reached.`, [inputOf[axis]]);
    if (input.faultState === 'repaired-confirmed') return confirmed(profile, basis, input.timeSinceConfirmed);
    const frozen = input.faultState === 'repaired-unconfirmed';
    if (frozen) warn('not_confirmed', 'The stage stays until the vehicle has confirmed the repair by its own test.');
    const after = frozen ? undefined : found.next;
    const left: CountdownState = frozen ? {} : found.left;
    const byDistance = daysFor(left.distance ?? left.range, input.distancePerDay, constants.day);
    const byTime = daysFor(left.engineTime, input.engineTimePerDay, constants.day);
    const first = Math.min(...[byDistance, byTime].filter((days) => days !== undefined));
    return {
      ...nothing,
      // The limits of which the distance is known, as only with these there is something left to work out.
      nextDistance: left.distance === undefined ? undefined : after?.distance,
      nextEngineTime: left.engineTime === undefined ? undefined : after?.engineTime,
      nextLevel: left.level === undefined ? undefined : after?.levelAtMost,
      nextRange: left.range === undefined ? undefined : after?.rangeAtMost,
      daysByDistance: byDistance,
      daysByTime: byTime,
      stage: found.stage,
      effect: found.effect,
      nextStage: after?.stage,
      nextEffect: after?.effect,
      distanceToStage: left.distance,
      timeLeft: left.engineTime,
      levelLeft: left.level,
      rangeLeftToNext: left.range,
      daysLeft: byDistance === undefined && byTime === undefined ? undefined : Math.max(0, first),
      basis: wf.say`${basis}. ${profile.note}`,
    };
  },
  advise: () => [
    {
      tone: 'do',
      text: 'Save codes, freeze frames and counters first; then repair the cause, and let the vehicle confirm it by the maker’s test or drive.',
    },
    { tone: 'do-not', text: 'Do not clear codes to gain time: the vehicle remembers the counter, and the evidence is gone.' },
  ],
});

function countsOn(list: readonly CountdownStage[], axis: keyof typeof needs): boolean {
  const key = { distance: 'distance', engineTime: 'engineTime', level: 'levelAtMost', range: 'rangeAtMost' } as const;
  return list.some((stage) => stage[key[axis]] !== undefined);
}

/** Calendar time in s until what is left is used up at so much a day. */
function daysFor(rest: number | undefined, perDay: number | undefined, day: number): number | undefined {
  return rest === undefined || perDay === undefined ? undefined : (day * rest) / perDay;
}

const nothing = {
  nextDistance: undefined,
  nextEngineTime: undefined,
  nextLevel: undefined,
  nextRange: undefined,
  daysByDistance: undefined,
  daysByTime: undefined,
  counterMemory: undefined,
  nextStage: undefined,
  nextEffect: undefined,
  distanceToStage: undefined,
  timeLeft: undefined,
  levelLeft: undefined,
  rangeLeftToNext: undefined,
  daysLeft: undefined,
  counterKeptFor: undefined,
};

function confirmed(profile: LawProfile, basis: string, since: number | undefined) {
  const kept = profile.counterMemory === undefined || since === undefined ? undefined : Math.max(0, profile.counterMemory - since);
  return {
    ...nothing,
    stage: 'none' as const,
    effect: 'none: the vehicle has confirmed the repair',
    counterMemory: kept === undefined ? undefined : profile.counterMemory,
    counterKeptFor: kept,
    basis: wf.say`${basis}. ${profile.note}`,
  };
}
