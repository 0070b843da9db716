import type { FilterWork } from './inputs.js';
import type { Ruling } from './kernel.js';
import type { Proof } from './proofs.js';

/** A ruling with the reason that a person reads. */
export interface ReasonedRuling extends Ruling<Proof> {
  readonly why: string;
}

/** Values that belong to the filter, in the order of the table. */
export const filterValues = {
  soot: 'Soot load',
  ash: 'Ash mass',
  filterChanged: 'Filter-changed counter',
  statistics: 'Regeneration statistics and distance',
  pressureZero: 'Zero of the filter pressure sensor',
} as const;

export type FilterValue = keyof typeof filterValues;

const leave = (why: string): ReasonedRuling => ({ verdict: 'leave', proofs: [], why });
const untouched = leave('Nothing was done to the filter.');
const unknownWork: ReasonedRuling = { verdict: 'reset', proofs: ['workKnown'], why: 'Nobody knows what is true after this work.' };

const zeroOfOtherFilter: ReasonedRuling = {
  verdict: 'relearn',
  proofs: ['sensors'],
  why: 'Another filter is fitted. A wrong zero starts regenerations too early or too late.',
};
const ashOfWeight: ReasonedRuling = {
  verdict: 'set',
  proofs: ['ash', 'drop'],
  why: 'Ash is left in every cleaned filter. Zero would hide it: the filter would be overfilled with soot, and crack.',
};
const sootOfCleaned = (proof: Proof): ReasonedRuling => ({
  verdict: 'reset',
  proofs: [proof, 'drop'],
  why: 'Only a filter that is proven free of soot starts at zero. A wrong reset hides a loaded filter.',
});
const stillTheSameFilter = leave('It is the same filter, and it is not new.');
const evidenceStays = leave('They show why the filter loaded, and whether the work lasts.');

/** What each work on the filter makes true. */
export const filterRulings: Readonly<Record<FilterWork, Readonly<Record<FilterValue, ReasonedRuling>>>> = {
  none: { soot: untouched, ash: untouched, filterChanged: untouched, statistics: untouched, pressureZero: untouched },
  'on-vehicle': {
    soot: sootOfCleaned('regeneration'),
    ash: leave('A clean on the vehicle moves soot and very little ash: the ash is still there.'),
    filterChanged: stillTheSameFilter,
    statistics: evidenceStays,
    pressureZero: leave('The sensor and its hoses were not changed.'),
  },
  'off-vehicle': {
    soot: sootOfCleaned('sootFree'),
    ash: ashOfWeight,
    filterChanged: stillTheSameFilter,
    statistics: evidenceStays,
    pressureZero: leave('The sensor and its hoses were not changed.'),
  },
  new: {
    soot: { verdict: 'reset', proofs: [], why: 'A new filter holds no soot.' },
    ash: { verdict: 'reset', proofs: [], why: 'A new filter holds no ash. The old figure would ask for the next filter too early.' },
    filterChanged: { verdict: 'relearn', proofs: [], why: 'The vehicle must know that a new filter is fitted.' },
    statistics: { verdict: 'reset', proofs: [], why: 'They belong to the old filter.' },
    pressureZero: zeroOfOtherFilter,
  },
  exchange: {
    soot: sootOfCleaned('sootFree'),
    ash: ashOfWeight,
    filterChanged: leave('It may set the ash to zero, and this filter is not new. Enter its ash instead.'),
    statistics: leave('Only a new filter starts them at zero. Note the exchange on the job sheet.'),
    pressureZero: zeroOfOtherFilter,
  },
  unknown: { soot: unknownWork, ash: unknownWork, filterChanged: unknownWork, statistics: unknownWork, pressureZero: unknownWork },
};
