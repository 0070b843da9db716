import type { Decimal } from 'decimal.js';
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

export type Liquid = 'concentrate' | 'water';
export type NoPlan = 'small-container' | 'coarse-marks' | 'too-many-ways' | `not-enough-${Liquid}`;

/** Batches beyond the fewest that are looked at when a full container gives no strength in the range. */
const mostExtraBatches = 20;
/** Combinations of packs that are tried for one plan; a workshop's few sizes take some hundred. */
const mostTries = 200_000;

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

/** Purchases by the number of marks that are needed, each looked for once. */
function purchases({ atHand, packs }: Supply, needed: (marks: number) => Decimal, tries: Tries) {
  const found = new Map<number, Purchase>();
  return (marks: number): Purchase => {
    const bought = found.get(marks) ?? cheapestPacks(needed(marks).minus(atHand), packs, tries);
    found.set(marks, bought);
    return bought;
  };
}

function planFor(splits: MarkSplits, request: PlanRequest, aim: PlanAim, tries: Tries): Plan {
  const { mark, rinse } = request;
  const { batches, marks, leastConcentrate, mostConcentrate } = splits;
  const inAll = (count: number) => mark.times(count).times(batches);
  const withRinse = (count: number) => inAll(count).plus(rinse);
  const concentrateFor = purchases(request.concentrate, inAll, tries);
  const waterFor = purchases(request.water, withRinse, tries);
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
export function planBatches(request: PlanRequest, aim: PlanAim): Plan | NoPlan {
  const fewest = fewestBatches(request);
  const most = request.mostBatches ?? fewest + mostExtraBatches;
  if (most < fewest) return 'small-container';
  const tries: Tries = { left: mostTries };
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
    const plan = planFor(possible, request, aim, tries);
    if (isBetter(plan, best, aim)) best = plan;
    if (request.mostBatches === undefined) break;
  }
  if (tries.left < 0) return 'too-many-ways';
  if (best !== undefined) return best;
  return short === undefined ? 'coarse-marks' : `not-enough-${short}`;
}
