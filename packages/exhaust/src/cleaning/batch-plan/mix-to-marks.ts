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

export interface MarkedMix {
  /** Equal batches. */
  readonly batches: number;
  /** Of one batch, m³, whole marks. */
  readonly concentrate: Decimal;
  readonly water: Decimal;
}

/** Marks beyond the need that are tried before the marks count as too coarse for the range of strengths. */
const mostExtraMarks = 2_000;
/** Batches beyond the fewest that are tried when a full container gives no strength in the range. */
const mostExtraBatches = 20;

/** Fewest marks of concentrate among `marks` in all that are strong enough, if they are not too strong. */
function concentrateMarks(marks: number, { weakest, strongest }: MixRequest): number | undefined {
  const least = exact(marks).dividedBy(weakest.plus(1)).ceil().toNumber();
  return strongest?.times(least).greaterThan(marks - least) ? undefined : least;
}

/**
 * The fewest equal batches, and in them the least mix, that reach the need with whole marks of concentrate and water, never
 * weaker than asked, with the least concentrate. More marks in all never take less of it.
 */
export function mixToMarks(request: MixRequest): MarkedMix | undefined {
  const { needed, mark, capacity } = request;
  const room = capacity === undefined ? Number.POSITIVE_INFINITY : capacity.dividedToIntegerBy(mark).toNumber();
  if (room < 1) return undefined;
  const fewest = capacity === undefined ? 1 : Math.max(1, needed.dividedBy(capacity).ceil().toNumber());
  for (let batches = fewest; batches <= fewest + mostExtraBatches; batches += 1) {
    const from = needed.dividedBy(mark.times(batches)).ceil().toNumber();
    for (let marks = from; marks <= Math.min(room, from + mostExtraMarks); marks += 1) {
      const concentrate = concentrateMarks(marks, request);
      if (concentrate !== undefined) {
        return { batches, concentrate: mark.times(concentrate), water: mark.times(marks - concentrate) };
      }
    }
    if (capacity === undefined) return undefined;
  }
  return undefined;
}
