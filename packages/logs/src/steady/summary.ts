import { median } from '@wallflow/numerics';

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

/**
 * A standard deviation that a few outliers do not change. A signal that stands on one value for more than half of the time
 * has no median distance; then nine tenths of the distances tell, and if those are nothing too, whatever differs is wild.
 */
function robustSpread(distances: Float64Array): number {
  const sorted = distances.slice().sort();
  const middle = (median(sorted) ?? 0) / medianDistance;
  return middle > 0 ? middle : (sorted[Math.floor(0.9 * (sorted.length - 1))] ?? 0) / nineTenthsDistance;
}

/** Mean and deviation of the values within four robust standard deviations of the median. */
export function summarise(values: ArrayLike<number>): Summary | undefined {
  const centre = median(values);
  if (centre === undefined) return undefined;
  const distances = Float64Array.from(values, (value) => Math.abs(value - centre));
  const reach = Math.max(wildAt * robustSpread(distances), 1e-9 * Math.abs(centre));
  const wild: number[] = [];
  let count = 0;
  let mean = 0;
  let squares = 0;
  for (let i = 0; i < values.length; i += 1) {
    if ((distances[i] as number) > reach) {
      wild.push(i);
      continue;
    }
    const value = values[i] as number;
    count += 1;
    const away = value - mean;
    mean += away / count;
    squares += away * (value - mean);
  }
  return { mean, deviation: count < 2 ? 0 : Math.sqrt(squares / (count - 1)), samples: count, wild };
}
