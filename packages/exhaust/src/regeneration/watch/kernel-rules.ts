import { riseOf, type WatchEvent, type WatchLimits, type WatchRule, type WatchSample } from './kernel.js';
import { risingDrop } from './kernel-drop.js';

type Found = Partial<Record<WatchRule, number | true>>;

/** Rules that the sample at an index breaks, with what was found. */
function brokenAt(log: readonly WatchSample[], index: number, limits: WatchLimits): Found {
  const sample = log[index]!;
  const found: Found = {};
  if (sample.fire) found.fire = true;
  if (sample.oilPressureLamp) found['oil-pressure'] = true;
  if (sample.smokeOrSmell) found.smoke = true;
  const hottest = Math.max(sample.inlet ?? -Infinity, sample.bed ?? -Infinity, sample.outlet ?? -Infinity);
  if (hottest > limits.anywhere) found['over-temperature'] = hottest;
  const above = excess(sample);
  const climbing = riseOf(log, index, limits.window, excess);
  if (above !== undefined && above > limits.outletAbove && climbing !== undefined && climbing > 0) found['outlet-over-inlet'] = above;
  const rises = (['inlet', 'bed', 'outlet'] as const).map((place) => riseOf(log, index, limits.window, (at) => at[place]) ?? -Infinity);
  const fastest = Math.max(...rises);
  if (fastest > limits.rise) found.rise = fastest;
  if (lasting(log, index, limits)) found['hot-inlet'] = sample.inlet!;
  const dropRise = risingDrop(log, index, limits);
  if (dropRise !== undefined) found['drop-rising'] = dropRise;
  if (sample.coolant !== undefined && sample.coolant > limits.coolant) found.coolant = sample.coolant;
  return found;
}

function excess({ inlet, outlet }: WatchSample): number | undefined {
  return inlet === undefined || outlet === undefined ? undefined : outlet - inlet;
}

/** Whether the inlet has been over its limit for longer than allowed, without a break. */
function lasting(log: readonly WatchSample[], index: number, { inletLasting, inletTime }: WatchLimits): boolean {
  let since = log[index]!.time;
  for (let i = index; i >= 0; i -= 1) {
    const { inlet, time } = log[i]!;
    if (inlet === undefined || inlet <= inletLasting) break;
    since = time;
  }
  return log[index]!.time - since >= inletTime;
}

/** Every rule that the log breaks, when it broke it first; in order of time. The log is in order of time. */
export function watchRegeneration(log: readonly WatchSample[], limits: WatchLimits): WatchEvent[] {
  const seen = new Set<string>();
  const events: WatchEvent[] = [];
  for (let index = 0; index < log.length; index += 1) {
    for (const [rule, value] of Object.entries(brokenAt(log, index, limits)) as [WatchRule, number | true][]) {
      if (seen.has(rule)) continue;
      seen.add(rule);
      events.push({ rule, time: log[index]!.time, ...(value === true ? {} : { value }) });
    }
  }
  return events;
}
