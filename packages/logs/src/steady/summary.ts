import { medianOf, select } from './select.js';

/** Mean and spread of a channel over a stretch, a few wild values left out. */
export interface Summary {
  readonly mean: number;
  /** Standard deviation of the values that count. */
  readonly deviation: number;
  readonly samples: number;
  /** Places of the values that were left out. */
  readonly wild: readonly number[];
}

/** Beyond this many robust standard deviations a value is wild: 1 in 16 000 of normal values. */
const wildAt = 4;
/** Standard deviations of normal values in the median of their distances from the middle, and in nine tenths of them. */
const medianDistance = 0.674_489_750_196_082;
const nineTenthsDistance = 1.644_853_626_951_472;

/** Used again for every stretch, as there are many. */
let scratch = new Float64Array(1024);

/**
 * Mean and deviation of the values within four robust standard deviations of the median; undefined without values or when one
 * is no number. A signal that stands on one value for more than half of the time has no median distance; then nine tenths of
 * the distances tell, and if those are nothing too, whatever differs is wild. A value one `step` of the signal away never is.
 */
export function summarise(values: ArrayLike<number>, step = 0): Summary | undefined {
  const { length } = values;
  if (length === 0) return undefined;
  if (scratch.length < length) scratch = new Float64Array(2 * length);
  const work = scratch;
  for (let i = 0; i < length; i += 1) {
    const value = values[i] as number;
    if (!Number.isFinite(value)) return undefined;
    work[i] = value;
  }
  const centre = medianOf(work, length);
  for (let i = 0; i < length; i += 1) work[i] = Math.abs((values[i] as number) - centre);
  const middle = medianOf(work, length) / medianDistance;
  const spread = middle > 0 ? middle : select(work, length, Math.floor(0.9 * (length - 1))) / nineTenthsDistance;
  const reach = Math.max(wildAt * spread, 1.001 * step, 1e-9 * Math.abs(centre));
  const wild: number[] = [];
  let count = 0;
  let mean = 0;
  let squares = 0;
  for (let i = 0; i < length; i += 1) {
    const value = values[i] as number;
    if (Math.abs(value - centre) > reach) {
      wild.push(i);
      continue;
    }
    count += 1;
    const away = value - mean;
    mean += away / count;
    squares += away * (value - mean);
  }
  return { mean, deviation: count < 2 ? 0 : Math.sqrt(squares / (count - 1)), samples: count, wild };
}
