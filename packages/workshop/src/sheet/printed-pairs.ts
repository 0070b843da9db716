import type { Sheet } from './blocks.js';
import type { Claim } from './claims.js';

/** Claims of which one of either list must not stand on the same paper. */
export interface PrintedPair {
  readonly id: string;
  readonly one: readonly Claim[];
  readonly other: readonly Claim[];
}

/** Each of these alone may be said, and never two of them. */
interface OneOf {
  readonly id: string;
  readonly oneOf: readonly Claim[];
}

const heats: readonly Claim[] = ['do regenerate', 'do drive'];
const works: readonly Claim[] = ['do clean-off-vehicle', 'do clean-on-vehicle', 'do replace', ...heats];
const notOpen = ['blocked', 'filling-up', 'doubtful'] as const;

const pairs: readonly PrintedPair[] = [
  {
    id: 'the filter was sound, and something is at fault with it or around it',
    one: ['filter before sound'],
    other: ['fault before deposits', 'fault before broken', 'fault before elsewhere', 'fault before sensor', 'fault before wet'],
  },
  {
    id: 'the filter was blocked or filling up, and nothing was wrong',
    one: ['filter before blocked', 'filter before filling-up'],
    other: ['fault before none', 'do leave'],
  },
  { id: 'the filter was sound, and work on it comes first', one: ['filter before sound'], other: works },
  {
    id: 'sensor or hoses are at fault, and work on the filter comes first',
    one: ['fault before sensor'],
    other: works,
  },
  { id: 'another part is in the way, and work on the filter comes first', one: ['fault before elsewhere'], other: works },
  {
    id: 'the filter is broken, and it is cleaned or heated first',
    one: ['fault before broken'],
    other: works.filter((id) => id !== 'do replace'),
  },
  { id: 'the filter is wet, and it is heated first', one: ['fault before wet'], other: heats },
  { id: 'something is at fault, and the filter is left alone', one: ['fault before deposits', 'fault before broken'], other: ['do leave'] },
  { id: 'heat is refused or not needed, and heat comes first', one: ['heat before refused', 'heat before not-needed'], other: heats },
  {
    id: 'there is too little soot to burn, and the filter fills up with deposits that ask for a regeneration',
    one: ['heat now not-needed'],
    other: ['regeneration now'],
  },
  {
    id: 'the work is proved, and the filter is not sound after it',
    one: ['work proved'],
    other: notOpen.map((state): Claim => `filter after ${state}`),
  },
  { id: 'the work is proved, and the filter must regenerate at once', one: ['work proved'], other: ['regeneration now'] },
  { id: 'the work is proved, and its ash is at the limit', one: ['work proved'], other: ['ash due now'] },
  {
    id: 'the work changed nothing or made it worse, and everything may be reset',
    one: ['work no-change', 'work worse'],
    other: ['reset all'],
  },
  { id: 'the work cannot be compared, and everything may be reset', one: ['work not-comparable'], other: ['reset all'] },
];

const singles: readonly OneOf[] = [
  {
    id: 'the filter before the work is told in two ways',
    oneOf: [
      'filter before sound',
      'filter before filling-up',
      'filter before blocked',
      'filter before doubtful',
      'filter before not-clear',
    ],
  },
  {
    id: 'the filter after the work is told in two ways',
    oneOf: ['filter after sound', 'filter after filling-up', 'filter after blocked', 'filter after doubtful', 'filter after not-clear'],
  },
  {
    id: 'the result of the work is told in two ways',
    oneOf: ['work proved', 'work improved-not-proved', 'work no-change', 'work worse', 'work not-comparable'],
  },
  {
    id: 'heat before the work is told in two ways',
    oneOf: ['heat before permitted', 'heat before refused', 'heat before not-needed', 'heat before not-known'],
  },
  { id: 'heat now is told in two ways', oneOf: ['heat now permitted', 'heat now refused', 'heat now not-needed', 'heat now not-known'] },
];

/** What no two lines of one paper may say together. */
export const printedPairs: readonly PrintedPair[] = [...pairs, ...singles.map(({ id, oneOf }) => ({ id, one: oneOf, other: oneOf }))];

/** What the lines of these sheets claim. */
export function claimsOf(sheets: readonly Sheet[]): ReadonlySet<Claim> {
  return new Set(
    sheets.flatMap(({ blocks }) =>
      blocks.flatMap((block) => [
        ...(block.claims ?? []),
        ...(block.type === 'verdicts' ? block.lines.flatMap(({ claims }) => claims ?? []) : []),
      ]),
    ),
  );
}

/** The pairs of printed lines that contradict each other on these sheets together. */
export function printedContradictions(sheets: readonly Sheet[]): readonly string[] {
  const claims = claimsOf(sheets);
  return printedPairs
    .filter(({ one, other }) => one.some((a) => claims.has(a) && other.some((b) => b !== a && claims.has(b))))
    .map(({ id }) => id);
}
