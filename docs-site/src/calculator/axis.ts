import { nice, ticks } from 'd3-array';

const about = 5;

/** A straight axis that begins and ends at round numbers: where a value lies on it, and the values to mark. */
export function axisOf(
  [low, high]: readonly [number, number],
  [from, to]: readonly [number, number],
): [place: (value: number) => number, marks: readonly number[]] {
  const [first, last] = nice(low, high, about);
  const place = (value: number) => from + ((value - first) / (last - first)) * (to - from);
  return [place, ticks(first, last, about)];
}
