import { type Batch, type ChannelName, channelOf, type LogReading, shown } from '@wallflow/logs';
import { unitSymbol } from '@wallflow/units';

const columns = 72;
const lines = 8;
const most = 4000;

/** Points of a few channels, thinned as the log grows. */
export class PlotSeries {
  readonly channels: readonly ChannelName[];
  readonly points: { readonly time: number; readonly values: readonly number[] }[] = [];
  #stride = 1;
  #passed = 0;

  constructor(channels: readonly ChannelName[]) {
    this.channels = channels;
  }

  add({ rows, time, values }: Batch): void {
    for (let row = 0; row < rows; row += 1) {
      this.#passed += 1;
      if (this.#passed % this.#stride !== 0) continue;
      this.points.push({ time: time[row] ?? 0, values: this.channels.map((channel) => values.get(channel)?.[row] ?? Number.NaN) });
      if (this.points.length < most) continue;
      for (let i = 0; i < most / 2; i += 1) this.points[i] = this.points[2 * i] as (typeof this.points)[number];
      this.points.length = most / 2;
      this.#stride *= 2;
    }
  }
}

/** Draw the channels over time, one below the other. */
export function drawPlot(series: PlotSeries, reading: LogReading): string {
  const units = new Map(reading.channels.map(({ channel, unit }) => [channel, unit]));
  return series.channels.map((channel, index) => drawChannel(series, index, channel, units.get(channel))).join('');
}

function drawChannel({ points }: PlotSeries, index: number, channel: ChannelName, unit: string | undefined): string {
  const seen = points.flatMap(({ time, values }) =>
    Number.isFinite(values[index]) && unit !== undefined ? [{ time, value: shown(channel, values[index] as number, unit) }] : [],
  );
  const [first] = seen;
  const last = seen.at(-1);
  if (first === undefined || last === undefined || unit === undefined || last.time <= first.time) return '';
  const low = seen.reduce((least, { value }) => Math.min(least, value), Number.POSITIVE_INFINITY);
  const high = seen.reduce((greatest, { value }) => Math.max(greatest, value), Number.NEGATIVE_INFINITY);
  const field = Array.from({ length: lines }, () => new Array<string>(columns).fill(' '));
  for (const { time, value } of seen) {
    const x = Math.min(columns - 1, Math.floor((columns * (time - first.time)) / (last.time - first.time)));
    const y = high > low ? Math.min(lines - 1, Math.floor((lines * (value - low)) / (high - low))) : 0;
    (field[lines - 1 - y] as string[])[x] = '*';
  }
  const { kind, label } = channelOf(channel);
  const drawn = field.map((line) => `  |${line.join('').trimEnd()}\n`).join('');
  return `\n${label}, ${low.toFixed(1)} to ${high.toFixed(1)} ${unitSymbol(kind, unit)}, over ${first.time.toFixed(0)} to ${last.time.toFixed(0)} s\n${drawn}  +${'-'.repeat(columns)}\n`;
}
