import type { Source } from '@wallflow/calculation';
import { germanyParticleRule, netherlandsParticleRule, recommendation2023, switzerlandParticleRule } from '../sources.js';

/** One rule for the particle number at idle. Concentrations in 1/m³, dates as 12 · year + month − 1. */
export interface ParticleRule {
  readonly name: string;
  readonly limit: number;
  /** Month from which tests are made by it. */
  readonly testedFrom: number;
  readonly source: Source;
  readonly note: string;
}

const perCubicCentimetre = 1e6;

export const particleRules = {
  'eu-recommendation': {
    name: 'EU recommendation 2023/688',
    limit: 250_000 * perCubicCentimetre,
    testedFrom: 12 * 2023 + 2,
    source: recommendation2023,
    note: 'Voluntary; each state decides.',
  },
  'netherlands-2015': {
    name: 'Netherlands, built from 2015',
    limit: 250_000 * perCubicCentimetre,
    testedFrom: 12 * 2023,
    source: netherlandsParticleRule,
    note: 'Start of the tests from memory: January 2023.',
  },
  'netherlands-2014': {
    name: 'Netherlands, built up to 2014',
    limit: 1_000_000 * perCubicCentimetre,
    testedFrom: 12 * 2023,
    source: netherlandsParticleRule,
    note: 'Start of the tests from memory: January 2023.',
  },
  germany: {
    name: 'Germany, Euro 6 and VI',
    limit: 250_000 * perCubicCentimetre,
    testedFrom: 12 * 2023 + 6,
    source: germanyParticleRule,
    note: 'Older classes are tested by opacity.',
  },
  'switzerland-low-idle': {
    name: 'Switzerland, low idle',
    limit: 100_000 * perCubicCentimetre,
    testedFrom: 12 * 2023,
    source: switzerlandParticleRule,
    note: 'From 1 January 2023.',
  },
  'switzerland-high-idle': {
    name: 'Switzerland, high idle',
    limit: 250_000 * perCubicCentimetre,
    testedFrom: 12 * 2023,
    source: switzerlandParticleRule,
    note: 'From 1 January 2023.',
  },
} as const satisfies Record<string, ParticleRule>;

export type ParticleRuleId = keyof typeof particleRules;
