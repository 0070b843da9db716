import { type FilterValue, filterRulings, filterValues, type ReasonedRuling } from './filter-rulings.js';
import type { ResetInput } from './inputs.js';
import { type Answers, judge, type ResetVerdict } from './kernel.js';
import { partRulings, pressureSensorRuling } from './part-rulings.js';
import { alwaysNeeded, type Proof, proofAnswers, proofWords } from './proofs.js';

/** One stored value with its verdict, before its figure is added. */
export interface ResetRow {
  readonly code: string;
  readonly verdict: ResetVerdict;
  readonly why: string;
  /** What must be proven before it may be changed. */
  readonly missing: readonly Proof[];
}

const notWorkedOn: ReasonedRuling = { verdict: 'leave', proofs: [], why: 'Nothing was done that makes it untrue.' };

const filterCodes: Readonly<Record<FilterValue, string>> = {
  soot: 'soot',
  ash: 'ash',
  filterChanged: 'filter_changed',
  statistics: 'statistics',
  pressureZero: 'pressure_zero',
};

/** A code of a blocked filter may only go when the filter is proven open. */
function faultCodeRuling({ filterWork }: ResetInput): ReasonedRuling {
  const filter: readonly Proof[] = filterWork === 'none' || filterWork === 'new' ? [] : ['drop'];
  return {
    verdict: 'reset',
    proofs: ['cause', ...filter],
    why: 'Clearing repairs nothing. A code that is cleared before its cause is repaired comes back, and the evidence is gone.',
  };
}

function row(code: string, ruling: ReasonedRuling, answers: Answers<Proof>): ResetRow {
  return { code, why: ruling.why, ...judge({ ...ruling, proofs: [...alwaysNeeded, ...ruling.proofs] }, answers) };
}

/** Proofs that a filter is free of soot. */
const freeOfSoot: readonly Proof[] = ['regeneration', 'sootFree'];

/**
 * Where the readings after the work leave room for soot, the soot value is set to the most that they allow, and never to zero: baking
 * and burning take out nearly all, and nobody has looked into the channels afterwards. Too high asks for a regeneration too early,
 * which harms nothing. It also needs no proof that the filter is free of soot: without this a clean filter would have to be
 * regenerated although it holds too little soot to burn. Only a new filter holds none, whatever the readings allow.
 */
function sootByReadings(row: ResetRow, { filterWork, dropVerified, mostSoot }: ResetInput): ResetRow {
  if (mostSoot === undefined || filterWork === 'new') return row;
  const onlySoot = row.missing.length > 0 && row.missing.every((proof) => freeOfSoot.includes(proof));
  const bySetting = row.verdict === 'not-yet' && onlySoot && dropVerified === true;
  if (row.verdict !== 'reset' && !bySetting) return row;
  const why =
    'The readings after the work allow up to this much. Zero could hide soot; too high a value only brings the next regeneration earlier.';
  return { ...row, verdict: 'set', missing: [], why };
}

const faultCodes = 'Stored fault codes';

/** The stored values by key, as a table names them. */
export const storedValues: Readonly<Record<string, string>> = Object.fromEntries([
  ...(Object.keys(filterValues) as FilterValue[]).map((key) => [filterCodes[key], filterValues[key]] as const),
  ...partRulings.map(({ code, what }) => [code, what] as const),
  ['fault_codes', faultCodes],
]);

/** Every stored value with what may be done to it. */
export function resetRows(input: ResetInput): readonly ResetRow[] {
  const answers = proofAnswers(input);
  const ofFilter = filterRulings[input.filterWork];
  const keys = Object.keys(filterValues) as FilterValue[];
  return [
    ...keys.map((key) => {
      const ruling = key === 'pressureZero' && input.pressureSensor ? pressureSensorRuling : ofFilter[key];
      const ruled = row(filterCodes[key], ruling, answers);
      return key === 'soot' ? sootByReadings(ruled, input) : ruled;
    }),
    ...partRulings.map((part) => row(part.code, part.after.some((work) => input[work]) ? part : notWorkedOn, answers)),
    row('fault_codes', faultCodeRuling(input), answers),
  ];
}

/** A proof that some value waits for. */
export interface OpenProof {
  readonly wanted: string;
  readonly answer: 'no' | 'unknown';
  readonly action: string;
  readonly waiting: number;
}

/** Every missing proof once, with what to do about it and how many values wait for it. */
export function openProofs(rows: readonly ResetRow[], input: ResetInput): readonly OpenProof[] {
  const answers = proofAnswers(input);
  return (Object.keys(proofWords) as Proof[]).flatMap((proof) => {
    const waiting = rows.filter(({ missing }) => missing.includes(proof)).length;
    if (waiting === 0) return [];
    const { wanted, repair, find } = proofWords[proof];
    const no = answers[proof] === false;
    return [{ wanted, answer: no ? ('no' as const) : ('unknown' as const), action: no ? repair : find, waiting }];
  });
}
