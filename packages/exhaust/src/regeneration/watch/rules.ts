import type { WatchRule } from './kernel.js';

/** What to do when a rule is broken; the more dangerous, the lower the rank. */
export interface WatchAnswer {
  readonly rank: number;
  readonly verdict: 'stop-engine' | 'runaway' | 'end';
  readonly what: string;
  readonly act: string;
  readonly never: string;
}

const keepFlow =
  'Stop the heating, hold a fast idle or raise the engine speed so that gas keeps cooling the filter, until the temperatures fall.';
const neverIdle = 'Never stop the engine and never let it drop to idle, unless there is fire.';

/** All common practice, no source. */
export const watchAnswers: Readonly<Record<WatchRule, WatchAnswer>> = {
  fire: {
    rank: 1,
    verdict: 'stop-engine',
    what: 'Fire',
    act: 'Stop the engine, get everybody away, call the fire service; use the extinguisher only without danger to yourself.',
    never: 'Never open the bonnet wide or spray water on hot exhaust parts.',
  },
  'oil-pressure': {
    rank: 2,
    verdict: 'stop-engine',
    what: 'Oil pressure lamp',
    act: 'Stop the engine; watch the hot filter with the extinguisher at hand until it has cooled.',
    never: 'Never run on without oil pressure.',
  },
  'over-temperature': { rank: 3, verdict: 'runaway', what: 'Filter zone too hot', act: keepFlow, never: neverIdle },
  'outlet-over-inlet': { rank: 4, verdict: 'runaway', what: 'Outlet above inlet and rising', act: keepFlow, never: neverIdle },
  rise: { rank: 5, verdict: 'runaway', what: 'Temperature rises too fast', act: keepFlow, never: neverIdle },
  'hot-inlet': { rank: 6, verdict: 'end', what: 'Inlet too hot for too long', act: keepFlow, never: neverIdle },
  coolant: {
    rank: 7,
    verdict: 'end',
    what: 'Coolant too hot',
    act: 'End the regeneration; keep the engine at a raised idle with the fan running until coolant and filter have cooled.',
    never: neverIdle,
  },
  'drop-rising': {
    rank: 8,
    verdict: 'end',
    what: 'Pressure drop rises instead of falling',
    act: 'End the regeneration and keep the flow while it cools: this deposit does not burn, or something else closes up. Find out what.',
    never: neverIdle,
  },
  smoke: {
    rank: 9,
    verdict: 'end',
    what: 'Lasting white smoke or smell of fuel',
    act: 'End the regeneration and keep the flow: fuel goes through the catalyst unburnt. Find out why.',
    never: 'Never go on injecting into a cold catalyst.',
  },
};
