import { median, medianAbsoluteDeviation } from '@wallflow/numerics';

/** Mean and spread of a channel over a stretch, a few wild values left out. */
export interface Summary {
  readonly mean: number;
  /** Standard deviation of the values that count. */
  readonly deviation: number;
  /** The ± of the reading: the deviation, and half a step of the signal where that is all one can see. */
  readonly plusMinus: number;
  readonly samples: number;
  /** Places of the values that were left out. */
  readonly wild: readonly number[];
}

/** Beyond this many robust standard deviations a value is wild: 1 in 16 000 of normal values. */
const wildAt = 4;

/**
 * Mean and deviation of the values within four robust standard deviations (1.4826 times the median absolute deviation) of
 * the median. `step` is the signal's own resolution: values within three steps always count, so that a signal which mostly
 * stands still keeps its last digit.
 */
export function summarise(values: ArrayLike<number>, step: number): Summary | undefined {
  const centre = median(values);
  const spread = medianAbsoluteDeviation(values, true);
  if (centre === undefined || spread === undefined) return undefined;
  const reach = Math.max(wildAt * spread, 3 * step, 1e-9 * Math.abs(centre));
  const wild: number[] = [];
  let count = 0;
  let mean = 0;
  let squares = 0;
  for (let i = 0; i < values.length; i += 1) {
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
  const deviation = count < 2 ? 0 : Math.sqrt(squares / (count - 1));
  return { mean, deviation, plusMinus: Math.sqrt(deviation * deviation + (step * step) / 12), samples: count, wild };
}
