import { say } from '@wallflow/calculation';
import type { WatchRule } from './kernel.js';

/** What to do when a rule is broken; the more dangerous, the lower the number. */
export interface WatchAnswer {
  readonly urgency: number;
  readonly verdict: 'stop-engine' | 'flow-lost' | 'runaway' | 'end';
  readonly what: string;
  readonly act: string;
  readonly never: string;
}

const keepFlow =
  'Stop the heating, hold a fast idle or raise the engine speed so that gas keeps cooling the filter, until the temperatures fall.';
const neverIdle = 'Never stop the engine and never let it drop to idle, unless there is fire.';

const raiseFlow =
  'Raise the engine speed at once to what it was, stop the heating, and keep the gas flowing until the temperatures fall. If the speed was right, look for a hose or a sensor that came off.';

/** All common practice, no source. */
export const watchAnswers: Readonly<Record<WatchRule, WatchAnswer>> = {
  fire: {
    urgency: 1,
    verdict: 'stop-engine',
    what: say`Fire`,
    act: 'Stop the engine, get everybody away, call the fire service. Use the extinguisher only if you can do so without danger.',
    never: 'Never open the bonnet wide or spray water on hot exhaust parts.',
  },
  'oil-pressure': {
    urgency: 2,
    verdict: 'stop-engine',
    what: 'Oil pressure lamp',
    act: 'Stop the engine, and watch the hot filter with the extinguisher at hand until it has cooled.',
    never: 'Never run on without oil pressure.',
  },
  'engine-stopped': {
    urgency: 3,
    verdict: 'flow-lost',
    what: 'Engine stopped while the filter is hot',
    act: 'If there is no fire and the oil pressure is good, start it again at once, without heating, and hold raised speed until the temperatures fall. If it does not start, leave it off: get everybody away, keep the extinguisher at hand, and watch it until it is cold.',
    never: 'Never let it run at idle after the restart, never spray water on hot exhaust parts, never leave it alone.',
  },
  'speed-drop': {
    urgency: 4,
    verdict: 'flow-lost',
    what: 'Engine speed drops towards idle while the filter is hot',
    act: raiseFlow,
    never: neverIdle,
  },
  'flow-lost': { urgency: 5, verdict: 'flow-lost', what: 'Flow through the hot filter falls', act: raiseFlow, never: neverIdle },
  'over-temperature': { urgency: 6, verdict: 'runaway', what: 'Filter zone too hot', act: keepFlow, never: neverIdle },
  'outlet-over-inlet': { urgency: 7, verdict: 'runaway', what: 'Outlet above inlet and rising', act: keepFlow, never: neverIdle },
  rise: { urgency: 8, verdict: 'runaway', what: 'Temperature rises too fast', act: keepFlow, never: neverIdle },
  'hot-inlet': { urgency: 9, verdict: 'end', what: 'Inlet too hot for too long', act: keepFlow, never: neverIdle },
  coolant: {
    urgency: 10,
    verdict: 'end',
    what: 'Coolant too hot',
    act: 'End the regeneration; keep the engine at a raised idle with the fan running until coolant and filter have cooled.',
    never: neverIdle,
  },
  'drop-rising': {
    urgency: 11,
    verdict: 'end',
    what: 'Pressure drop rises instead of falling',
    act: 'End the regeneration and keep the flow up while the filter cools: this deposit does not burn, or something else is blocking up. Find out what.',
    never: neverIdle,
  },
  smoke: {
    urgency: 12,
    verdict: 'end',
    what: 'Lasting white smoke or smell of fuel',
    act: 'End the regeneration and keep the flow up: fuel passes the catalyst unburnt. Find out why.',
    never: 'Never go on injecting fuel into a cold catalyst.',
  },
};
