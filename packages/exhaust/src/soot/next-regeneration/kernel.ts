import { findRoot } from '@wallflow/numerics';
import { type DrivenState, type DrivingStretch, drivePattern, patternMap, peakMass, settledSootMass } from '../driving-pattern/kernel.js';

/** When and where the soot reaches the trigger, and the whole pass in which it does. */
export interface ReachedTrigger extends DrivenState {
  readonly pass: readonly DrivenState[];
}

/** When and where the soot reaches the trigger; undefined when the pattern never gets there. */
export function reachTrigger(pattern: readonly DrivingStretch[], mass: number, trigger: number): ReachedTrigger | undefined {
  if (mass >= trigger) return { time: 0, distance: 0, mass, pass: [{ time: 0, distance: 0, mass }] };
  const map = patternMap(pattern);
  const massBefore = (passes: number) => mass * map.keep ** passes + map.add * geometricSum(map.loss, passes);
  const reaches = (passes: number) => peakMass(pattern, massBefore(passes)) >= trigger;
  const last = 2 ** 40;
  if (!reaches(0) && !reaches(last)) return undefined;
  // The mass before a pass runs steadily towards where it settles, so the first pass that reaches the trigger is found by halving.
  let [low, high] = [0, reaches(0) ? 0 : last];
  while (high - low > 1) {
    const middle = Math.floor((low + high) / 2);
    if (reaches(middle)) high = middle;
    else low = middle;
  }
  const start = { time: high * map.duration, distance: high * map.distance, mass: massBefore(high) };
  return withinPass(pattern, start, trigger);
}

/** 1 + keep + … + keep^(n−1), also where nearly nothing or everything burns. */
function geometricSum(loss: number, n: number): number {
  if (n === 0 || loss === 0) return n;
  return -Math.expm1(n * Math.log1p(-loss)) / loss;
}

function withinPass(pattern: readonly DrivingStretch[], start: DrivenState, trigger: number): ReachedTrigger | undefined {
  const states = drivePattern(pattern, start);
  for (const [index, stretch] of pattern.entries()) {
    const from = states[index]!;
    if (states[index + 1]!.mass < trigger) continue;
    const time = timeToReach(from.mass, trigger, stretch);
    return { time: from.time + time, distance: from.distance + time * stretch.speed, mass: trigger, pass: states };
  }
  return undefined;
}

/** Time in s in which the soot rises from one mass to a larger one within a stretch. */
function timeToReach(from: number, to: number, { sootFlow, rate, duration }: DrivingStretch): number {
  if (from >= to) return 0;
  const time = rate === 0 ? (to - from) / sootFlow : -Math.log1p((-(to - from) * rate) / (sootFlow - rate * from)) / rate;
  return Math.min(duration, Math.max(0, time));
}

/**
 * Least duration in s of a hot stretch at the end of every pass that keeps the settled soot below the trigger at all times;
 * zero when none is needed, undefined when even `longest` does not do it.
 */
export function preventingStretch(
  pattern: readonly DrivingStretch[],
  hot: Omit<DrivingStretch, 'duration'>,
  trigger: number,
  longest: number,
): number | undefined {
  const excess = (duration: number) => {
    const whole = [...pattern, { ...hot, duration }];
    const settled = settledSootMass(whole);
    return settled === undefined ? Infinity : peakMass(whole, settled) / trigger - 1;
  };
  if (excess(0) <= 0) return 0;
  if (!(excess(longest) <= 0)) return undefined;
  // Without any burning the mass settles nowhere: start where it does.
  const shortest = Number.isFinite(excess(0)) ? 0 : 1e-9 * longest;
  const root = findRoot(excess, shortest, longest);
  return root.status === 'converged' ? root.root : undefined;
}
