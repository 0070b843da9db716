import type { Decimal } from 'decimal.js';
import { exact } from '../exact-volume.js';

export interface MixRequest {
  /** Mix that is needed, m³. */
  readonly needed: Decimal;
  /** Graduation of the jug, m³. */
  readonly mark: Decimal;
  /** What the mixing container holds, m³; undefined when everything is mixed at once. */
  readonly capacity: Decimal | undefined;
  /** Parts of water to one of concentrate in the weakest mix that will do, and in the strongest, if there is one. */
  readonly weakest: Decimal;
  readonly strongest: Decimal | undefined;
}

/** The ways to pour one of several equal batches, counted in marks: any of the concentrates, and water for the rest. */
export interface MarkSplits {
  readonly batches: number;
  /** Concentrate and water together. */
  readonly marks: number;
  readonly leastConcentrate: number;
  readonly mostConcentrate: number;
}

/** Marks beyond the need that are tried before the marks count as too coarse for the range of strengths. */
const mostExtraMarks = 500;

/** The fewest batches that the container could hold. */
export function fewestBatches({ needed, capacity }: MixRequest): number {
  return capacity === undefined ? 1 : Math.max(1, needed.dividedBy(capacity).ceil().toNumber());
}

/**
 * Every way to pour so many equal batches that can be the best of them: never short, never outside the range of strengths.
 *
 * With the least number of marks that reaches the need, more concentrate is less water. More marks than that take no less of
 * either, so they are looked at only when the least number cannot be split within the range. Where no strongest mix is stated
 * none is made stronger than the marks force.
 *
 * @returns undefined when the container is too small for so few batches, or the marks too coarse for the range
 */
export function markSplits(request: MixRequest, batches: number): MarkSplits | undefined {
  const { needed, mark, capacity, weakest, strongest } = request;
  const room = capacity === undefined ? Number.POSITIVE_INFINITY : capacity.dividedToIntegerBy(mark).toNumber();
  const fewest = needed.dividedBy(mark.times(batches)).ceil().toNumber();
  const most = Math.min(room, fewest + mostExtraMarks);
  const whole = weakest.plus(1);
  const least = exact(fewest).dividedBy(whole).ceil().toNumber();
  if (strongest === undefined)
    return fewest > room ? undefined : { batches, marks: fewest, leastConcentrate: least, mostConcentrate: least };
  // By the marks of concentrate, which are fewer than those of the mix: so much of it makes from `from` to `to` marks in the range.
  for (let concentrate = least; ; concentrate += 1) {
    const from = strongest.plus(1).times(concentrate).ceil().toNumber();
    const to = whole.times(concentrate).floor().toNumber();
    const marks = Math.max(fewest, from);
    if (marks > most) return undefined;
    if (marks > to) continue;
    return { batches, marks, leastConcentrate: concentrate, mostConcentrate: exact(marks).dividedBy(strongest.plus(1)).floor().toNumber() };
  }
}
