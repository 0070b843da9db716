import {
  choiceOutput,
  count,
  defineCalculation,
  list,
  noSolution,
  optional,
  quantity,
  quantityOutput,
  quantityWithDefault,
} from '@wallflow/calculation';
import { fraction, ratio, time } from '@wallflow/units';
import * as z from 'zod';
import { qualityPractice, tripChance } from '../sources.js';
import { chanceOfNone, suitableShare } from './kernel.js';

const trip = z.strictObject({
  duration: quantity(time, {
    symbol: 't',
    label: 'Duration of the trip',
    above: '0 s',
    max: '24 h',
    example: '15 min',
    units: ['min', 'h'],
  }),
  perWeek: count({ label: 'Times a week', symbol: 'n', min: 0, max: 200, example: 10 }),
});

export const regenerationTripsCalculation = defineCalculation({
  id: 'regeneration-trips',
  version: '1.0.0',
  subject: 'regeneration',
  title: 'Do the trips let a regeneration finish?',
  purpose: 'How many of the trips are long enough for a whole regeneration, and how likely is it that none comes in time?',
  usedBy: ['technician', 'trainer', 'developer'],
  keywords: ['short trips', 'interrupted', 'driving pattern', 'advice'],
  method: 'share of trips longer than warming up and burning take together',
  inputs: z.strictObject({
    trips: list(trip, {
      label: 'Trips of a usual week',
      min: 1,
      max: 30,
      example: [
        { duration: '12 min', perWeek: 10 },
        { duration: '25 min', perWeek: 3 },
        { duration: '60 min', perWeek: 1 },
      ],
    }),
    warmUp: quantityWithDefault(time, {
      symbol: 't_w',
      label: 'From cold start to the start of the burn',
      min: '0 s',
      max: '2 h',
      example: '10 min',
      default: '10 min',
      defaultReason: 'until coolant and catalyst are warm; common practice, no source',
      units: ['min'],
    }),
    burning: quantityWithDefault(time, {
      symbol: 't_b',
      label: 'Duration of the burn on the road',
      above: '0 s',
      max: '2 h',
      example: '15 min',
      default: '15 min',
      defaultReason: 'within 10 to 25 min; common practice, no source',
      units: ['min'],
    }),
    tripsLeft: count({ label: 'Trips between the trigger and the load limit', symbol: 'N', min: 0, max: 10_000, example: 12 }),
  }),
  intermediates: {
    needed: quantityOutput(time, { symbol: 't_n', label: 'Least duration of a trip', digits: 3, units: ['min'] }),
  },
  outputs: {
    verdict: choiceOutput({
      label: 'Verdict',
      options: {
        suits: 'the trips let regenerations finish',
        seldom: 'seldom: regenerations will often break off',
        never: 'never: no trip is long enough',
      },
    }),
    share: quantityOutput(fraction, { symbol: 'p', label: 'Share of trips that are long enough', digits: 3, units: ['%'] }),
    tripsPerSuccess: optional(
      quantityOutput(ratio, { symbol: '\\bar n', label: 'Trips until one is long enough, on the mean', digits: 3, units: ['1'] }),
    ),
    chanceOfNone: quantityOutput(fraction, {
      symbol: 'P_0',
      label: 'Chance that none of the trips left is long enough',
      digits: 3,
      units: ['%'],
    }),
  },
  constants: {},
  steps: [
    { gives: 'needed', tex: '[[needed]] = [[warmUp]]+[[burning]]', source: 'qualityPractice' },
    { gives: 'tripsPerSuccess', tex: '[[tripsPerSuccess]] = \\frac{1}{[[share]]}', source: 'tripChance' },
    { gives: 'chanceOfNone', tex: '[[chanceOfNone]] = \\left(1-[[share]]\\right)^{[[tripsLeft]]}', source: 'tripChance' },
    { gives: 'share', text: 'Trips of at least that duration over all trips.' },
    { gives: 'verdict', text: 'Suits with a chance of at most 5 % that none comes in time; never without any trip that is long enough.' },
  ],
  assumptions: [
    {
      code: 'trips_by_chance',
      text: 'Trips follow each other by chance, every one starts cold, and the driving is hot enough to keep the burn going.',
    },
  ],
  limits: [{ code: 'interrupted', text: 'An interrupted burn takes some soot with it and leaves fuel in the oil; neither is counted.' }],
  cautions: [],
  sources: { qualityPractice, tripChance },
  compute({ trips, warmUp, burning, tripsLeft }) {
    const needed = warmUp + burning;
    const share = suitableShare(
      trips.map(({ duration, perWeek }) => ({ duration, frequency: perWeek })),
      needed,
    );
    if (share === undefined) return noSolution('no trip is driven in the week', ['trips']);
    const none = chanceOfNone(share, tripsLeft);
    return {
      needed,
      share,
      tripsPerSuccess: share > 0 ? 1 / share : undefined,
      chanceOfNone: none,
      verdict: share === 0 ? 'never' : none <= 0.05 ? 'suits' : 'seldom',
    };
  },
  advise({ verdict }) {
    if (verdict === 'suits') return [];
    return [{ tone: 'do', text: 'Drive once a week for half an hour without a break on a fast road, above all when the lamp is on.' }];
  },
});
