import type { Batch, ChannelName } from '@wallflow/logs';

export interface PlotSeriesData {
  readonly channel: ChannelName;
  readonly label: string;
  readonly unit: string;
  /** Two values for each stretch of time, the least and the greatest in it; null where there is none. */
  readonly values: readonly (number | null)[];
}

export interface PlotData {
  readonly time: readonly number[];
  readonly series: readonly PlotSeriesData[];
}

/** A plot is no wider on a phone or a desk than twice this many points. */
const stretches = 600;

/** Least and greatest value by stretch of time, in one pass and a memory that does not grow: when time runs on, stretches are joined in pairs. */
export class LogPoints {
  readonly #channels: readonly ChannelName[];
  readonly #low: Float64Array[];
  readonly #high: Float64Array[];
  #start = Number.NaN;
  #width = 0.05;

  constructor(channels: readonly ChannelName[]) {
    this.#channels = channels;
    const filled = (value: number) => channels.map(() => new Float64Array(stretches).fill(value));
    this.#low = filled(Number.POSITIVE_INFINITY);
    this.#high = filled(Number.NEGATIVE_INFINITY);
  }

  add({ rows, time, values }: Batch): void {
    for (let row = 0; row < rows; row += 1) {
      const at = time[row] as number;
      if (Number.isNaN(this.#start)) this.#start = at;
      // A clock that was set back is drawn where it says; what lies before the start is not.
      if (at < this.#start) continue;
      while (at - this.#start >= stretches * this.#width) this.#join();
      const place = Math.floor((at - this.#start) / this.#width);
      this.#channels.forEach((channel, index) => {
        const value = values.get(channel)?.[row];
        if (value === undefined || Number.isNaN(value)) return;
        const low = this.#low[index] as Float64Array;
        const high = this.#high[index] as Float64Array;
        if (value < (low[place] as number)) low[place] = value;
        if (value > (high[place] as number)) high[place] = value;
      });
    }
  }

  #join(): void {
    this.#width *= 2;
    for (let index = 0; index < this.#channels.length; index += 1) {
      const low = this.#low[index] as Float64Array;
      const high = this.#high[index] as Float64Array;
      for (let place = 0; place < stretches; place += 1) {
        const one = 2 * place;
        const isIn = one < stretches;
        low[place] = isIn ? Math.min(low[one] as number, low[one + 1] as number) : Number.POSITIVE_INFINITY;
        high[place] = isIn ? Math.max(high[one] as number, high[one + 1] as number) : Number.NEGATIVE_INFINITY;
      }
    }
  }

  /** What is drawn, in units to be read; undefined without values. */
  reduced(inUnit: (channel: ChannelName, si: number) => number): PlotData | undefined {
    const filled = Array.from({ length: stretches }, (_, place) => place).filter((place) =>
      this.#low.some((low) => Number.isFinite(low[place] as number)),
    );
    if (filled.length < 2) return undefined;
    const series = this.#channels.flatMap((channel, index): PlotSeriesData[] => {
      const value = (from: Float64Array | undefined, place: number) => {
        const si = from?.[place] ?? Number.NaN;
        const number = Number.isFinite(si) ? inUnit(channel, si) : Number.NaN;
        return Number.isFinite(number) ? number : null;
      };
      const values = filled.flatMap((place) => [value(this.#low[index], place), value(this.#high[index], place)]);
      return values.every((one) => one === null) ? [] : [{ channel, label: channel, unit: '', values }];
    });
    const at = (place: number) => this.#start + place * this.#width;
    return { time: filled.flatMap((place) => [at(place), at(place) + this.#width / 2]), series };
  }
}
