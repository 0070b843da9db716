/** How the pressure drop follows the engine speed. */
export interface LagAndSign {
  /** By how much the drop comes after the speed, in s. */
  readonly lag: number;
  /** The correlation at that lag; negative where the drop falls as the speed rises, as with swapped hoses. */
  readonly correlation: number;
  readonly sign: 'same' | 'opposite' | 'none';
  readonly samples: number;
}

/** Practice, no source: a weaker relation than this tells neither lag nor sign. */
const leastCorrelation = 0.5;
const mostSamples = 20_000;

function onGrid(times: ArrayLike<number>, values: ArrayLike<number>, from: number, step: number, count: number): Float64Array {
  const grid = new Float64Array(count);
  let at = 0;
  for (let i = 0; i < count; i += 1) {
    const time = from + i * step;
    while (at < times.length - 2 && (times[at + 1] as number) <= time) at += 1;
    const [t0, t1] = [times[at] as number, times[at + 1] as number];
    const [v0, v1] = [values[at] as number, values[at + 1] as number];
    grid[i] = t1 > t0 ? v0 + ((v1 - v0) * (time - t0)) / (t1 - t0) : v1;
  }
  return grid;
}

function correlationAt(a: Float64Array, b: Float64Array, shift: number): number {
  const from = Math.max(0, -shift);
  const to = Math.min(a.length, b.length - shift);
  const count = to - from;
  if (count < 10) return 0;
  let [sumA, sumB] = [0, 0];
  for (let i = from; i < to; i += 1) {
    sumA += a[i] as number;
    sumB += b[i + shift] as number;
  }
  const [meanA, meanB] = [sumA / count, sumB / count];
  let [aa, bb, ab] = [0, 0, 0];
  for (let i = from; i < to; i += 1) {
    const da = (a[i] as number) - meanA;
    const db = (b[i + shift] as number) - meanB;
    aa += da * da;
    bb += db * db;
    ab += da * db;
  }
  return aa > 0 && bb > 0 ? ab / Math.sqrt(aa * bb) : 0;
}

/**
 * The lag at which speed and drop agree best, by their correlation on an even grid, between 2 s before and 6 s after. Times in
 * s, rising, without NaN; undefined where there are too few samples or the speed does not change.
 */
export function lagAndSign(times: ArrayLike<number>, speed: ArrayLike<number>, drop: ArrayLike<number>): LagAndSign | undefined {
  const count = times.length;
  if (count < 20 || speed.length !== count || drop.length !== count) return undefined;
  const [from, to] = [times[0] as number, times[count - 1] as number];
  const step = Math.max((to - from) / (count - 1), (to - from) / mostSamples);
  if (!(step > 0)) return undefined;
  const points = Math.floor((to - from) / step) + 1;
  const a = onGrid(times, speed, from, step, points);
  const b = onGrid(times, drop, from, step, points);
  const [earliest, latest] = [-Math.ceil(2 / step), Math.ceil(6 / step)];
  let best = { shift: 0, correlation: 0 };
  for (let shift = earliest; shift <= latest; shift += 1) {
    const correlation = correlationAt(a, b, shift);
    if (Math.abs(correlation) > Math.abs(best.correlation)) best = { shift, correlation };
  }
  if (best.correlation === 0) return undefined;
  // The top of a parabola through the best place and its neighbours.
  const [before, after] = [Math.abs(correlationAt(a, b, best.shift - 1)), Math.abs(correlationAt(a, b, best.shift + 1))];
  const bend = before - 2 * Math.abs(best.correlation) + after;
  const part = bend < 0 ? Math.max(-0.5, Math.min(0.5, (0.5 * (before - after)) / bend)) : 0;
  const { correlation } = best;
  const sign = Math.abs(correlation) < leastCorrelation ? 'none' : correlation > 0 ? 'same' : 'opposite';
  return { lag: (best.shift + part) * step, correlation, sign, samples: points };
}
