import * as allData from './generated/units.js';
import { plainUnit } from './spelling.js';
import type { KindData, KindName } from './types.js';

/** Spellings of one kind: the plain form to the unit id. */
type Spellings = ReadonlyMap<string, string>;

const cache = new Map<KindData, Spellings>();

function spellingsOf(data: KindData): Spellings {
  const known = cache.get(data);
  if (known !== undefined) return known;
  const spellings = new Map<string, string>();
  for (const [id, unit] of Object.entries(data.units)) {
    for (const spelling of [id, unit.symbol, ...unit.aliases.split(' ')]) {
      const plain = plainUnit(spelling);
      if (plain !== '' && !(Object.hasOwn(data.ambiguous, plain) && plain !== plainUnit(id))) spellings.set(plain, id);
    }
  }
  cache.set(data, spellings);
  return spellings;
}

function ambiguousOf(data: KindData, plain: string): readonly string[] | undefined {
  const key = Object.keys(data.ambiguous).find((spelling) => plainUnit(spelling) === plain);
  return key === undefined ? undefined : data.ambiguous[key];
}

export type Lookup =
  | { readonly found: string }
  | { readonly ambiguous: readonly string[] }
  | { readonly otherKinds: readonly KindName[] }
  | { readonly candidates: readonly string[] };

/** m for milli and M for mega must never be taken for one another. */
function sameButForHarmlessCase(typed: string, known: string): boolean {
  if (typed.toLowerCase() !== known.toLowerCase()) return false;
  return ![...typed].some((letter, index) => /m/i.test(letter) && letter !== known[index]);
}

/** Find the unit that a spelling means in one kind, or say why it cannot be told. */
export function lookUpUnit(data: KindData, typed: string): Lookup {
  const plain = plainUnit(typed);
  const spellings = spellingsOf(data);
  const exact = spellings.get(plain);
  if (exact !== undefined) return { found: exact };
  const ambiguous = ambiguousOf(data, plain);
  if (ambiguous !== undefined) return { ambiguous };
  const alike = new Set([...spellings].filter(([known]) => sameButForHarmlessCase(plain, known)).map(([, id]) => id));
  const [only, ...more] = alike;
  if (only !== undefined && more.length === 0) return { found: only };
  if (more.length > 0) return { ambiguous: [...alike] };
  const otherKinds = (Object.values(allData) as KindData[])
    .filter((other) => other !== data && (spellingsOf(other).has(plain) || ambiguousOf(other, plain) !== undefined))
    .map((other) => other.kind as KindName);
  if (otherKinds.length > 0) return { otherKinds };
  return { candidates: similar(data, plain) };
}

function similar(data: KindData, plain: string): string[] {
  const wanted = plain.toLowerCase();
  const close = data.order.filter((id) => {
    const known = plainUnit(id).toLowerCase();
    return known === wanted || (wanted.length > 1 && (known.startsWith(wanted) || wanted.startsWith(known)));
  });
  return [...new Set([...close, ...data.order])].slice(0, 8);
}
