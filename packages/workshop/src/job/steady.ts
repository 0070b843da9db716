import type { ChannelName, LogRow } from './channels.js';

/** A stretch of a log in which the engine ran steadily, with the mean of every channel. */
export interface SteadyReading {
  /** Start and end in s of the log's time, the settling time left out. */
  readonly from: number;
  readonly to: number;
  readonly samples: number;
  readonly mean: { readonly [K in ChannelName]?: number };
  readonly deviation: { readonly [K in ChannelName]?: number };
}

/** What counts as steady. */
export interface SteadyRule {
  /** How far engine speed may stray from the mean of the stretch, as a share and in 1/s at least. */
  readonly speedShare: number;
  readonly speedFloor: number;
  /** Time left out at the start of a stretch, and least time kept, in s. */
  readonly settling: number;
  readonly shortest: number;
}

/** Practice: 5 % or 50 rpm, 10 s to settle, then 20 s at least. */
export const usualRule: SteadyRule = { speedShare: 0.05, speedFloor: 50 / 60, settling: 10, shortest: 20 };

function statistics(values: readonly number[]): { mean: number; deviation: number } {
  const mean = values.reduce((sum, value) => sum + value, 0) / values.length;
  const squares = values.reduce((sum, value) => sum + (value - mean) ** 2, 0);
  return { mean, deviation: values.length < 2 ? 0 : Math.sqrt(squares / (values.length - 1)) };
}

function summarise(rows: readonly LogRow[], from: number, to: number): SteadyReading {
  const mean: { -readonly [K in ChannelName]?: number } = {};
  const deviation: { -readonly [K in ChannelName]?: number } = {};
  const names = new Set(rows.flatMap((row) => Object.keys(row) as ChannelName[]));
  for (const name of names) {
    const values = rows.map((row) => row[name]).filter((value): value is number => value !== undefined);
    // A channel that is missing in most of the stretch has no mean worth quoting.
    if (values.length < rows.length / 2) continue;
    const summary = statistics(values);
    mean[name] = summary.mean;
    deviation[name] = summary.deviation;
  }
  return { from, to, samples: rows.length, mean, deviation };
}

/** Cut a log into stretches of steady engine speed, engine off included. */
export function steadyReadings(rows: readonly LogRow[], rule: SteadyRule = usualRule): readonly SteadyReading[] {
  const readings: SteadyReading[] = [];
  let stretch: LogRow[] = [];
  let sum = 0;
  const close = () => {
    const start = stretch[0]?.time;
    const end = stretch.at(-1)?.time;
    if (start !== undefined && end !== undefined && end - start - rule.settling >= rule.shortest) {
      const kept = stretch.filter((row) => (row.time ?? start) >= start + rule.settling);
      readings.push(summarise(kept, start + rule.settling, end));
    }
    stretch = [];
    sum = 0;
  };
  for (const row of rows) {
    const speed = row.engineSpeed;
    if (speed === undefined) continue;
    const mean = stretch.length === 0 ? speed : sum / stretch.length;
    if (Math.abs(speed - mean) > Math.max(rule.speedFloor, rule.speedShare * mean)) close();
    stretch.push(row);
    sum += speed;
  }
  close();
  return readings;
}
