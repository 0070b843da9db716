import { signalRiseRate, type WatchEvent, type WatchLimits, type WatchRule, type WatchSample } from './kernel.js';
import { DropWatch } from './kernel-drop.js';
import { FlowWatch } from './kernel-flow.js';

type Found = Partial<Record<WatchRule, number | true>>;

/** What the sample at an index breaks by its temperatures and by what was seen. */
function brokenAt(log: readonly WatchSample[], index: number, limits: WatchLimits): Found {
  const sample = log[index]!;
  const found: Found = {};
  if (sample.fire) found.fire = true;
  if (sample.oilPressureLamp) found['oil-pressure'] = true;
  if (sample.smokeOrSmell) found.smoke = true;
  const hottest = Math.max(sample.inlet ?? -Infinity, sample.bed ?? -Infinity, sample.outlet ?? -Infinity);
  if (hottest > limits.zoneLimit) found['over-temperature'] = hottest;
  const above = excess(sample);
  const climbing = signalRiseRate(log, index, limits.riseTime, excess);
  if (above !== undefined && above > limits.outletAbove && climbing !== undefined && climbing > 0) found['outlet-over-inlet'] = above;
  const rises = (['inlet', 'bed', 'outlet'] as const).map(
    (place) => signalRiseRate(log, index, limits.riseTime, (at) => at[place]) ?? -Infinity,
  );
  const fastest = Math.max(...rises);
  if (fastest > limits.riseLimit) found.rise = fastest;
  const { coolantTemperature } = sample;
  if (coolantTemperature !== undefined && coolantTemperature > limits.coolantLimit) found.coolant = coolantTemperature;
  return found;
}

function excess({ inlet, outlet }: WatchSample): number | undefined {
  return inlet === undefined || outlet === undefined ? undefined : outlet - inlet;
}

/** Every rule that the log breaks, when it broke it first; in order of time. The times of the log rise from line to line. */
export function watchRegeneration(log: readonly WatchSample[], limits: WatchLimits): WatchEvent[] {
  const seen = new Set<string>();
  const events: WatchEvent[] = [];
  const flow = new FlowWatch(log, limits);
  const drop = new DropWatch(log, limits);
  // Since when the inlet has been over its limit without a break.
  let hotSince: number | undefined;
  for (const [index, { time, inlet }] of log.entries()) {
    const found = brokenAt(log, index, limits);
    flow.next(index, found);
    const dropRise = drop.next(index);
    if (dropRise !== undefined) found['drop-rising'] = dropRise;
    hotSince = inlet === undefined || inlet <= limits.inletLasting ? undefined : (hotSince ?? time);
    if (hotSince !== undefined && inlet !== undefined && time - hotSince >= limits.inletTime) found['hot-inlet'] = inlet;
    for (const [rule, value] of Object.entries(found) as [WatchRule, number | true][]) {
      if (seen.has(rule)) continue;
      seen.add(rule);
      events.push({ rule, time, ...(value === true ? {} : { value }) });
    }
  }
  return events;
}
