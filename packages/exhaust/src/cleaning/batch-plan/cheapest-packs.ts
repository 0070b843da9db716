import type { Decimal } from 'decimal.js';
import { exact } from '../exact-volume.js';
import { reachableNeed } from './reachable-need.js';

/** A container on sale. */
export interface Pack {
  /** m³. */
  readonly volume: Decimal;
  /** In the user's currency. */
  readonly price: Decimal;
}

export interface Purchase {
  /** How many of each pack, in the order given. */
  readonly counts: readonly number[];
  readonly cost: Decimal;
  /** Bought beyond the need, m³. */
  readonly surplus: Decimal;
}

/** Combinations that may still be tried, in one search or several; below zero a search gave up. */
export interface Tries {
  left: number;
}

const zero = exact(0);

function isBetter(one: Purchase, other: Purchase | undefined): boolean {
  if (other === undefined) return true;
  const byCost = one.cost.comparedTo(other.cost);
  if (byCost !== 0) return byCost < 0;
  const bySurplus = one.surplus.comparedTo(other.surplus);
  if (bySurplus !== 0) return bySurplus < 0;
  return one.counts.reduce((sum, count) => sum + count, 0) < other.counts.reduce((sum, count) => sum + count, 0);
}

function unitPrice(pack: Pack | undefined): Decimal {
  return pack === undefined ? zero : pack.price.dividedBy(pack.volume);
}

/**
 * The cheapest packs that hold at least a volume; of equal cost those with the least surplus. Exact: branch and bound over the
 * packs from the lowest price per volume up, large before small, where what is still missing costs at least that price.
 *
 * Where the tries run out, the search ends, and the purchase is enough, but perhaps not the cheapest.
 *
 * @throws Error when more is needed and there is nothing to buy from
 */
export function cheapestPacks(needed: Decimal, packs: readonly Pack[], tries: Tries): Purchase {
  if (needed.lessThanOrEqualTo(0)) return { counts: packs.map(() => 0), cost: zero, surplus: zero.minus(needed) };
  const reachable = reachableNeed(
    needed,
    packs.map(({ volume }) => volume),
  );
  const least = reachable.minus(needed);
  const order = packs
    .map((pack, index) => ({ pack, index, unit: unitPrice(pack) }))
    // A pack that a larger one undercuts is never part of the cheapest purchase.
    .filter(({ pack }) => !packs.some((other) => other.volume.greaterThanOrEqualTo(pack.volume) && other.price.lessThan(pack.price)))
    .sort((a, b) => a.unit.comparedTo(b.unit) || b.pack.volume.comparedTo(a.pack.volume));
  const [only, ...more] = order;
  if (only !== undefined && more.length === 0) return purchaseOf(reachable.dividedBy(only.pack.volume).ceil(), only.index);
  let best: Purchase | undefined;

  function purchaseOf(count: Decimal, index: number): Purchase {
    const pack = packs[index] as Pack;
    return {
      counts: packs.map((_, at) => (at === index ? count.toNumber() : 0)),
      cost: pack.price.times(count),
      surplus: pack.volume.times(count).minus(needed),
    };
  }

  const search = (position: number, missing: Decimal, cost: Decimal, counts: number[]): void => {
    tries.left -= 1;
    if (tries.left < 0 && best !== undefined) return;
    if (missing.lessThanOrEqualTo(0)) {
      const found = { counts: [...counts], cost, surplus: least.minus(missing) };
      if (isBetter(found, best)) best = found;
      return;
    }
    const next = order[position];
    if (next === undefined) return;
    const { pack, index } = next;
    // What is missing costs at least `missing · price / volume`; without the division the comparison is exact.
    const room = best === undefined ? 1 : best.cost.minus(cost).times(pack.volume).comparedTo(missing.times(pack.price));
    if (room < 0 || (room === 0 && best?.surplus.equals(least) === true)) return;
    const most = missing.dividedBy(pack.volume).ceil().toNumber();
    // With the tries spent the loops end too: each turn costs time, and a small pack has millions of them.
    for (let count = most; count >= 0 && (tries.left >= 0 || best === undefined); count -= 1) {
      counts[index] = count;
      search(position + 1, missing.minus(pack.volume.times(count)), cost.plus(pack.price.times(count)), counts);
    }
    counts[index] = 0;
  };
  search(
    0,
    reachable,
    zero,
    packs.map(() => 0),
  );
  if (best === undefined) throw new Error('nothing to buy from');
  return best;
}
