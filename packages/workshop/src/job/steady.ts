import { type ChannelName, channelNames, channels, type LogRow } from './channels.js';
import type { LeftOutCell } from './left-out.js';

/** A stretch of a log in which the engine ran steadily, with the middle of every channel. */
export interface SteadyReading {
  /** Start and end in s of the log's time, the settling time left out. */
  readonly from: number;
  readonly to: number;
  readonly samples: number;
  /** Median of the stretch: one wrong sample does not move it. A typed reading is its own middle. */
  readonly mean: { readonly [K in ChannelName]?: number };
  /** Standard uncertainty of that, from the scatter of the stretch or as it was typed; absent where nothing is known of it. */
  readonly uncertainty: { readonly [K in ChannelName]?: number };
  /** As it was typed, for the sheet. */
  readonly typed?: { readonly [K in ChannelName]?: string };
  /** Samples that were left out, by line and column. */
  readonly leftOut: readonly LeftOutCell[];
  /** Channels that scatter more than a sound signal of a steady engine does; the stretch cannot be used. */
  readonly restless: readonly ChannelName[];
  /** Channels that the log has, but that are missing in most of the stretch. */
  readonly lost: readonly ChannelName[];
}

/** What counts as steady. */
export interface SteadyRule {
  /** How far engine speed may stray from the mean of the stretch, as a share and in 1/s at least. */
  readonly speedShare: number;
  readonly speedFloor: number;
  /** Time left out at the start of a stretch, and least time kept, in s. */
  readonly settling: number;
  readonly shortest: number;
  /** Least number of samples kept: fewer show no steadiness. */
  readonly leastSamples: number;
  /** Longest time between two samples of a stretch, in s; a longer gap ends it, as nobody knows what happened in it. */
  readonly largestGap: number;
}

/** Practice: 5 % or 50 rpm, 10 s to settle, then 20 s at least with five samples, none more than 10 s after the last. */
export const usualRule: SteadyRule = {
  speedShare: 0.05,
  speedFloor: 50 / 60,
  settling: 10,
  shortest: 20,
  leastSamples: 5,
  largestGap: 10,
};

/** Samples closer than this are taken as one: neighbours in a log repeat each other. In s. */
const independent = 5;
/** The median of absolute deviations times this is the standard deviation of a normal scatter. */
const normalScatter = 1.4826;
/** A sample further off than this many deviations, and than half the scatter of a sound sensor, is none of the stretch. */
const outlierDeviations = 6;

function median(sorted: readonly number[]): number {
  const middle = sorted.length / 2;
  return sorted.length % 2 === 1 ? (sorted[Math.floor(middle)] ?? 0) : ((sorted[middle - 1] ?? 0) + (sorted[middle] ?? 0)) / 2;
}

function middleAndDeviation(values: readonly number[]): { readonly middle: number; readonly deviation: number } {
  const middle = median([...values].sort((a, b) => a - b));
  const off = values.map((value) => Math.abs(value - middle)).sort((a, b) => a - b);
  return { middle, deviation: normalScatter * median(off) };
}

function allowedScatter(name: ChannelName, middle: number): number {
  const channel = channels[name];
  return 'scatter' in channel ? Math.max(channel.scatter.floor, channel.scatter.share * Math.abs(middle)) : Infinity;
}

interface Sample {
  readonly value: number;
  readonly line: number;
}

function summarise(rows: readonly LogRow[], from: number, to: number, inLog: ReadonlySet<ChannelName>): SteadyReading {
  const mean: { -readonly [K in ChannelName]?: number } = {};
  const uncertainty: { -readonly [K in ChannelName]?: number } = {};
  const leftOut: LeftOutCell[] = [];
  const restless: ChannelName[] = [];
  const lost: ChannelName[] = [];
  for (const name of channelNames) {
    const samples = rows.flatMap((row): Sample[] => {
      const value = row[name];
      return value === undefined ? [] : [{ value, line: row.line ?? 0 }];
    });
    // A channel that is missing in most of the stretch has no middle worth quoting.
    if (samples.length === 0 || samples.length < rows.length / 2) {
      if (inLog.has(name)) lost.push(name);
      continue;
    }
    const first = middleAndDeviation(samples.map(({ value }) => value));
    const allowed = allowedScatter(name, first.middle);
    const isFar = ({ value }: Sample) => Math.abs(value - first.middle) > Math.max(allowed / 2, outlierDeviations * first.deviation);
    const kept = samples.filter((sample) => name === 'time' || !isFar(sample));
    for (const { value, line } of samples.filter((sample) => !kept.includes(sample))) {
      leftOut.push({ line, column: name, given: shownValue(name, value), reason: 'outlier' });
    }
    const { middle, deviation } = middleAndDeviation(kept.map(({ value }) => value));
    // One wrong sample is a dropout; many are a signal that does not stand still.
    if (deviation > allowed / 2 || (name !== 'time' && kept.length < 0.75 * samples.length)) restless.push(name);
    mean[name] = middle;
    const counted = Math.max(1, Math.min(kept.length, (to - from) / independent));
    uncertainty[name] = deviation / Math.sqrt(counted);
  }
  return { from, to, samples: rows.length, mean, uncertainty, leftOut, restless, lost };
}

/** A value in the unit in which people read it. */
function shownValue(name: ChannelName, value: number): string {
  const { kind } = channels[name];
  const unit = {
    time: 's',
    engineSpeed: 'rpm',
    airMassFlow: 'kg/h',
    gasTemperature: 'degC',
    pressureDrop: 'mbar',
    coolantTemperature: 'degC',
  }[name];
  const anyKind = kind as unknown as {
    si(value: number): never;
    format(quantity: never, unit: string, options: { digits: number }): string;
  };
  return anyKind.format(anyKind.si(value), unit, { digits: 4 });
}

/** Cut a log into stretches of steady engine speed, engine off included. */
export function steadyReadings(rows: readonly LogRow[], rule: SteadyRule = usualRule): readonly SteadyReading[] {
  const readings: SteadyReading[] = [];
  const inLog = new Set(channelNames.filter((name) => rows.some((row) => row[name] !== undefined)));
  let stretch: LogRow[] = [];
  let sum = 0;
  const close = () => {
    const start = stretch[0]?.time;
    const end = stretch.at(-1)?.time;
    if (start !== undefined && end !== undefined && end - start - rule.settling >= rule.shortest) {
      const kept = stretch.filter((row) => (row.time ?? start) >= start + rule.settling);
      if (kept.length >= rule.leastSamples) readings.push(summarise(kept, start + rule.settling, end, inLog));
    }
    stretch = [];
    sum = 0;
  };
  for (const row of rows) {
    const speed = row.engineSpeed;
    if (speed === undefined) continue;
    const mean = stretch.length === 0 ? speed : sum / stretch.length;
    const last = stretch.at(-1)?.time;
    const gap = last !== undefined && row.time !== undefined && row.time - last > rule.largestGap;
    if (gap || Math.abs(speed - mean) > Math.max(rule.speedFloor, rule.speedShare * mean)) close();
    stretch.push(row);
    sum += speed;
  }
  close();
  return readings;
}
