import type { Source } from '@wallflow/calculation';
import {
  californiaSmoke,
  directive2014,
  germanyParticleRule,
  netherlandsParticleRule,
  recommendation2023,
  switzerlandParticleRule,
  ukConstructionAndUse,
  ukTestLimits,
} from '../sources.js';

export const rulePlaces = {
  uk: 'United Kingdom',
  eu: 'European Union',
  netherlands: 'Netherlands',
  germany: 'Germany',
  switzerland: 'Switzerland',
  california: 'California',
} as const;

export type RulePlace = keyof typeof rulePlaces;

/** One rule of roadworthiness, as data. */
export interface RoadworthinessRule {
  readonly place: RulePlace;
  readonly subject: 'filter-fitted' | 'visible-smoke' | 'opacity' | 'particle-number' | 'offence';
  readonly rule: string;
  readonly source: Source;
}

export const roadworthinessRules: readonly RoadworthinessRule[] = [
  {
    place: 'uk',
    subject: 'filter-fitted',
    rule: 'A filter that was fitted as standard must be there (since February 2014).',
    source: ukTestLimits,
  },
  {
    place: 'uk',
    subject: 'visible-smoke',
    rule: 'Visible smoke of any colour from a vehicle with a filter, or signs of tampering, is a major fail (since 20 May 2018).',
    source: ukTestLimits,
  },
  {
    place: 'uk',
    subject: 'opacity',
    rule: 'Plate value first; otherwise 2.5 per metre without and 3.0 with turbocharger before July 2008, 1.5 from July 2008, 0.7 from January 2014.',
    source: ukTestLimits,
  },
  {
    place: 'uk',
    subject: 'offence',
    rule: 'Using a vehicle whose filter was taken out is an offence, with a fine of up to 1000 pounds, 2500 for a light goods vehicle.',
    source: ukConstructionAndUse,
  },
  {
    place: 'eu',
    subject: 'opacity',
    rule: 'Plate value first; otherwise 0.7 per metre for Euro 6 and VI, 1.5 for Euro 4 and 5, IV and V and for first use from July 2008, else 2.5 without and 3.0 with turbocharger.',
    source: directive2014,
  },
  {
    place: 'eu',
    subject: 'particle-number',
    rule: '250 000 per cubic centimetre at idle is recommended; each state decides.',
    source: recommendation2023,
  },
  {
    place: 'netherlands',
    subject: 'particle-number',
    rule: '1 000 000 per cubic centimetre for vehicles built up to 2014, 250 000 from 2015.',
    source: netherlandsParticleRule,
  },
  {
    place: 'germany',
    subject: 'particle-number',
    rule: 'Particle count in place of opacity for Euro 6 and VI from 1 July 2023, limit 250 000 per cubic centimetre.',
    source: germanyParticleRule,
  },
  {
    place: 'switzerland',
    subject: 'particle-number',
    rule: '250 000 per cubic centimetre at high idle or 100 000 at low idle, from 1 January 2023.',
    source: switzerlandParticleRule,
  },
  {
    place: 'california',
    subject: 'opacity',
    rule: 'Snap-acceleration opacity of at most 5 % for model year 2007 and newer or a level 3 retrofit, 20 % for 1997 to 2006, 30 % for 1991 to 1996, 40 % for older ones.',
    source: californiaSmoke,
  },
];
