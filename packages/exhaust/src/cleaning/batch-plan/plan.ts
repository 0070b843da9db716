import type { Decimal } from 'decimal.js';
import { exact } from '../exact-volume.js';
import { cheapestPacks, type Pack, type Purchase, type Tries } from './cheapest-packs.js';
import { cheapestSplit } from './cheapest-split.js';
import { fewestBatches, type MarkSplits, type MixRequest, markSplits } from './mix-to-marks.js';

export interface Supply {
  /** m³. */
  readonly atHand: Decimal;
  readonly packs: readonly Pack[];
}

/** What is least: the cost of the shopping, or the concentrate that is used up. */
export type PlanAim = 'least-cost' | 'least-concentrate';

export interface PlanRequest extends MixRequest {
  /** Most equal batches that may be mixed; undefined for as few as will do. */
  readonly mostBatches: number | undefined;
  /** Water beside that in the mix, m³. */
  readonly rinse: Decimal;
  readonly concentrate: Supply;
  readonly water: Supply;
}

export interface Plan {
  readonly batches: number;
  /** Of one batch, m³, whole marks. */
  readonly concentrate: Decimal;
  readonly water: Decimal;
  /** Of all batches, m³, and with it the rinse. */
  readonly concentrateInAll: Decimal;
  readonly waterInAll: Decimal;
  readonly concentratePurchase: Purchase;
  readonly waterPurchase: Purchase;
  readonly cost: Decimal;
}

const liquids = ['concentrate', 'water'] as const;
export type Liquid = (typeof liquids)[number];
export type NoPlan = 'small-container' | 'coarse-marks' | `too-many-ways-${Liquid}` | `not-enough-${Liquid}`;

/** Batches beyond the fewest that are looked at when a full container gives no strength in the range. */
const mostExtraBatches = 20;
/** Combinations of packs of one liquid that are tried; a workshop's few sizes take some hundred. */
const mostTries = 30_000;
/** What setting up one search costs, in tries. */
const triesOfASearch = 10;
const nothing: Purchase = { counts: [], cost: exact(0), surplus: exact(0) };

/** The splits for which what is at hand suffices where nothing can be bought, or the liquid that runs short. */
function withinSupply(splits: MarkSplits, { mark, rinse, concentrate, water }: PlanRequest): MarkSplits | Liquid {
  const marksIn = (left: Decimal) => left.dividedBy(mark.times(splits.batches)).floor().toNumber();
  const concentrateMarks = concentrate.packs.length === 0 ? marksIn(concentrate.atHand) : Number.POSITIVE_INFINITY;
  const waterMarks = water.packs.length === 0 ? marksIn(water.atHand.minus(rinse)) : Number.POSITIVE_INFINITY;
  if (concentrateMarks < splits.leastConcentrate) return 'concentrate';
  const leastConcentrate = Math.max(splits.leastConcentrate, splits.marks - waterMarks);
  const mostConcentrate = Math.min(splits.mostConcentrate, concentrateMarks);
  return waterMarks < 0 || leastConcentrate > mostConcentrate ? 'water' : { ...splits, leastConcentrate, mostConcentrate };
}

/** The cheapest purchases of one liquid by the volume that is needed, each looked for once. */
interface Shop {
  readonly tries: Tries;
  readonly buy: (needed: Decimal) => Purchase;
}

function shopFor({ atHand, packs }: Supply): Shop {
  const tries: Tries = { left: mostTries };
  const found = new Map<string, Purchase>();
  const buy = (needed: Decimal): Purchase => {
    const key = needed.toString();
    const before = found.get(key);
    // With the tries spent there is no plan, so that nothing more need be looked for.
    if (before !== undefined || tries.left < 0) return before ?? nothing;
    tries.left -= triesOfASearch;
    const bought = cheapestPacks(needed.minus(atHand), packs, tries);
    found.set(key, bought);
    return bought;
  };
  return { tries, buy };
}

export type Shops = Readonly<Record<Liquid, Shop>>;

/** Where the packs of a request are bought; plans for several aims share what was found. */
export function shopsFor({ concentrate, water }: PlanRequest): Shops {
  return { concentrate: shopFor(concentrate), water: shopFor(water) };
}

function planFor(splits: MarkSplits, request: PlanRequest, aim: PlanAim, shops: Shops): Plan {
  const { mark, rinse } = request;
  const { batches, marks, leastConcentrate, mostConcentrate } = splits;
  const inAll = (count: number) => mark.times(count).times(batches);
  const withRinse = (count: number) => inAll(count).plus(rinse);
  const concentrateFor = (count: number) => shops.concentrate.buy(inAll(count));
  const waterFor = (count: number) => shops.water.buy(withRinse(count));
  const poured = cheapestSplit(
    leastConcentrate,
    aim === 'least-concentrate' ? leastConcentrate : mostConcentrate,
    (count) => concentrateFor(count).cost,
    (count) => waterFor(marks - count).cost,
  );
  const concentratePurchase = concentrateFor(poured);
  const waterPurchase = waterFor(marks - poured);
  return {
    batches,
    concentrate: mark.times(poured),
    water: mark.times(marks - poured),
    concentrateInAll: inAll(poured),
    waterInAll: withRinse(marks - poured),
    concentratePurchase,
    waterPurchase,
    cost: concentratePurchase.cost.plus(waterPurchase.cost),
  };
}

function isBetter(one: Plan, other: Plan | undefined, aim: PlanAim): boolean {
  if (other === undefined) return true;
  const byCost = one.cost.comparedTo(other.cost);
  if (aim === 'least-cost') return byCost < 0;
  const byConcentrate = one.concentrateInAll.comparedTo(other.concentrateInAll);
  return byConcentrate < 0 || (byConcentrate === 0 && byCost < 0);
}

/**
 * What to pour and to buy: of all equal batches on whole marks that reach the need within the range of strengths, those with the
 * cheapest shopping, or those with the least concentrate. Of equal ones the fewest batches, and then the least concentrate. No
 * other number of marks, split or choice of packs does better.
 */
export function planBatches(request: PlanRequest, aim: PlanAim, shops: Shops = shopsFor(request)): Plan | NoPlan {
  const fewest = fewestBatches(request);
  const most = request.mostBatches ?? fewest + mostExtraBatches;
  if (most < fewest) return 'small-container';
  let best: Plan | undefined;
  let short: Liquid | undefined;
  for (let batches = fewest; batches <= most; batches += 1) {
    const splits = markSplits(request, batches);
    if (splits === undefined) continue;
    const possible = withinSupply(splits, request);
    if (typeof possible === 'string') {
      short ??= possible;
      continue;
    }
    const plan = planFor(possible, request, aim, shops);
    const spent = liquids.find((liquid) => shops[liquid].tries.left < 0);
    if (spent !== undefined) return `too-many-ways-${spent}`;
    if (isBetter(plan, best, aim)) best = plan;
    if (request.mostBatches === undefined) break;
  }
  if (best !== undefined) return best;
  return short === undefined ? 'coarse-marks' : `not-enough-${short}`;
}
