import type { Decimal } from 'decimal.js';

/**
 * The whole number in a range at which two costs together are least, one that never falls and one that never rises along it; of
 * several the smallest. Exact, by halving: nothing between two ends costs less than the first cost here and the second there.
 */
export function cheapestSplit(least: number, most: number, rising: (at: number) => Decimal, falling: (at: number) => Decimal): number {
  let best = least;
  let bestCost = rising(least).plus(falling(least));
  const search = (from: number, to: number): void => {
    if (from > to || rising(from).plus(falling(to)).greaterThanOrEqualTo(bestCost)) return;
    const middle = Math.floor((from + to) / 2);
    search(from, middle - 1);
    const cost = rising(middle).plus(falling(middle));
    if (cost.lessThan(bestCost)) {
      best = middle;
      bestCost = cost;
    }
    search(middle + 1, to);
  };
  search(least + 1, most);
  return best;
}
