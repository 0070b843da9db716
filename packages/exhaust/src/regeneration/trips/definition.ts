import * as wf from '@wallflow/calculation';
import { fraction, ratio, time } from '@wallflow/units';
import { qualityPractice, tripChance } from '../sources.js';
import { chanceOfNone, suitableShare, suitableTrips } from './kernel.js';

export const regenerationTripsCalculation = wf.defineCalculation({
  id: 'regeneration-trips',
  subject: 'regeneration',
  title: 'Are the trips long enough for a regeneration?',
  purpose: 'How many of the trips are long enough for a whole regeneration, and how likely is it that none comes in time?',
  keywords: 'short trips, interrupted regeneration, driving pattern, advice, DPF, regen, burn-off',
  method: 'share of trips that last at least as long as warming up and burning together',
  inputs: {
    trips: wf.list(
      {
        duration: wf.quantity(time, {
          symbol: 't',
          label: 'Duration of the trip',
          range: '0 s < x <= 24 h',
          example: '15 min',
          units: ['min', 'h'],
        }),
        perWeek: wf.count({ label: 'Times a week', symbol: 'n', min: 0, max: 200, example: 10 }),
      },
      {
        label: 'Trips of a usual week',
        min: 1,
        max: 30,
        example: [
          { duration: '14 min', perWeek: 10 },
          { duration: '19 min', perWeek: 15 },
          { duration: '24 min', perWeek: 5 },
          { duration: '45 min', perWeek: 1 },
        ],
      },
    ),
    warmUp: wf.quantity(time, {
      symbol: 't_w',
      label: 'From cold start to the start of the burn',
      range: '0 s <= x <= 2 h',
      default: ['10 min', 'until coolant and catalyst are warm; common practice, no source'],
      units: ['min'],
    }),
    burning: wf.quantity(time, {
      symbol: 't_b',
      label: 'Duration of the burn on the road',
      range: '0 s < x <= 2 h',
      default: ['15 min', 'usually 10 to 25 min; common practice, no source'],
      units: ['min'],
    }),
    tripsLeft: wf.count({
      label: 'Trips left before the load limit',
      description: 'From the moment a regeneration becomes due.',
      symbol: 'N',
      min: 0,
      max: 10_000,
      example: 12,
    }),
  },
  intermediates: {
    needed: wf.quantityOutput(time, { symbol: 't_n', label: 'Least duration of a trip', digits: 3, units: ['min'] }),
    longTrips: wf.tableOutput({
      label: 'Trips that are long enough',
      columns: { counted: wf.optional(wf.countOutput({ symbol: 'n_l', label: 'Times a week' })) },
    }),
  },
  outputs: {
    verdict: wf.choiceOutput({
      label: 'Verdict',
      options: {
        suits: 'long enough: regenerations can finish',
        seldom: 'seldom long enough: regenerations will often be interrupted',
        never: 'never long enough: no trip lets a regeneration finish',
      },
    }),
    share: wf.quantityOutput(fraction, { symbol: 'p', label: 'Share of trips that are long enough', digits: 3, units: ['%'] }),
    tripsPerSuccess: wf.optional(
      wf.quantityOutput(ratio, { symbol: '\\bar n', label: 'Trips until one is long enough, on average', digits: 3, units: ['1'] }),
    ),
    chanceOfNone: wf.quantityOutput(fraction, {
      symbol: 'P_0',
      label: 'Chance that none of the trips left is long enough',
      digits: 3,
      units: ['%'],
    }),
  },
  answer: 'verdict',
  steps: [
    wf.formula('needed', 'warmUp + burning', qualityPractice),
    wf.rows('longTrips', { counted: { 'trips.duration >= needed': 'trips.perWeek' } }),
    wf.formula('share', 'sum(longTrips.counted) / sum(trips.perWeek)', tripChance),
    wf.formula('tripsPerSuccess', '1 / share', tripChance),
    wf.formula('chanceOfNone', '(1 - share) ^ tripsLeft', tripChance),
    wf.verdict('verdict', { never: 'share == 0', suits: 'chanceOfNone <= 0.05', seldom: 'otherwise' }, qualityPractice),
  ],
  assumptions: {
    trips_by_chance: 'Long and short trips come in no particular order, every trip starts cold, and the driving keeps the burn hot enough.',
  },
  limits: { interrupted: 'An interrupted burn removes some soot and leaves fuel in the oil; neither is counted.' },
  compute({ trips, warmUp, burning, tripsLeft }) {
    const needed = warmUp + burning;
    const kinds = trips.map(({ duration, perWeek }) => ({ duration, frequency: perWeek }));
    const share = suitableShare(kinds, needed);
    if (share === undefined) return wf.noSolution('no trip is driven in the week', ['trips']);
    const none = chanceOfNone(share, tripsLeft);
    return {
      needed,
      longTrips: kinds.map((kind) => ({ counted: suitableTrips(kind, needed) })),
      share,
      tripsPerSuccess: share > 0 ? 1 / share : undefined,
      chanceOfNone: none,
      verdict: share === 0 ? 'never' : none <= 0.05 ? 'suits' : 'seldom',
    };
  },
  advise({ verdict }) {
    if (verdict === 'suits') return [];
    return [
      { tone: 'do', text: 'Drive for half an hour without a break on a fast road once a week, above all when the filter lamp is on.' },
    ];
  },
});
