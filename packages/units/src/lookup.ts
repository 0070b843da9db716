import { labelFromName } from './derived-text.js';
import { nearestUnits } from './nearest.js';
import { plainUnit, sameButForHarmlessCase } from './spelling.js';
import type { KindData, KindName } from './types.js';

/** What the spellings of one kind mean, in their plain form. */
interface Spellings {
  readonly sure: ReadonlyMap<string, string>;
  readonly ambiguous: ReadonlyMap<string, readonly string[]>;
  /** Spellings by their form in lower case. */
  readonly folded: ReadonlyMap<string, readonly string[]>;
}

/**
 * The kinds that the program has loaded, so that a unit of another kind can be told from an unknown one. A bundle that
 * imports one kind carries that one alone.
 */
const loaded = new Set<KindData>();
const cache = new Map<KindData, Spellings>();

export function remember(data: KindData): void {
  loaded.add(data);
}

/** What a kind is called in words, without the data of all kinds: one that is not loaded goes by its name. */
export function kindLabel(kind: KindName): string {
  return [...loaded].find((data) => data.kind === kind)?.label ?? labelFromName(kind);
}

function spellingsOf(data: KindData): Spellings {
  const known = cache.get(data);
  if (known !== undefined) return known;
  const sure = new Map<string, string>();
  for (const unit of data.units.values()) {
    for (const spelling of [unit.id, unit.symbol, unit.name, ...unit.aliases]) if (spelling !== '') sure.set(plainUnit(spelling), unit.id);
  }
  const ambiguous = new Map<string, readonly string[]>();
  for (const [spellings, ids] of data.ambiguous) {
    for (const spelling of spellings.split(' ')) ambiguous.set(plainUnit(spelling), ids.split(' '));
  }
  const folded = new Map<string, string[]>();
  for (const spelling of [...sure.keys(), ...ambiguous.keys()]) {
    const lower = spelling.toLowerCase();
    folded.set(lower, [...(folded.get(lower) ?? []), spelling]);
  }
  const spellings = { sure, ambiguous, folded };
  cache.set(data, spellings);
  return spellings;
}

/** The units that a spelling can mean in a kind: none, one, or several. */
function meanings(data: KindData, plain: string): readonly string[] {
  const { sure, ambiguous, folded } = spellingsOf(data);
  const exactly = (spelling: string): readonly string[] => {
    const unit = sure.get(spelling);
    return unit === undefined ? (ambiguous.get(spelling) ?? []) : [unit];
  };
  const exact = exactly(plain);
  if (exact.length > 0) return exact;
  const alike = (folded.get(plain.toLowerCase()) ?? []).filter((known) => sameButForHarmlessCase(plain, known));
  return [...new Set(alike.flatMap(exactly))];
}

export type Lookup =
  | { readonly found: string }
  | { readonly ambiguous: readonly string[] }
  | { readonly otherKinds: readonly KindName[] }
  | { readonly candidates: readonly string[] };

/** Find the unit that a spelling means in one kind, or say why it cannot be told. */
export function lookUpUnit(data: KindData, typed: string): Lookup {
  const plain = plainUnit(typed);
  const own = meanings(data, plain);
  const [only, ...more] = own;
  if (only !== undefined) return more.length === 0 ? { found: only } : { ambiguous: own };
  const otherKinds = [...loaded].filter((other) => other !== data && meanings(other, plain).length > 0).map((other) => other.kind);
  if (otherKinds.length > 0) return { otherKinds };
  return { candidates: nearestUnits(plain, spellingsOf(data).sure, data.order) };
}
