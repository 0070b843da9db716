import type { ChannelName } from '../channels/channels.js';
import type { LeftOutCounts } from '../clean/left-out.js';
import type { SteadyRule } from './rule.js';
import { Samples } from './samples.js';
import { summarise } from './summary.js';

/** Mean and ± of a channel in a steady stretch, in SI. */
export interface SteadyValue {
  readonly mean: number;
  /** Standard deviation of the samples. */
  readonly deviation: number;
  /** The ± of the mean as a reading: the deviation, and the step of the signal, which is all that a still one shows. */
  readonly plusMinus: number;
  readonly samples: number;
  /** Samples that were left out of the mean, as they lie far from the others. */
  readonly outliers: number;
}

/** A stretch in which the engine ran steadily, or stood still. */
export interface SteadyWindow {
  /** Start and end in s of the log's time, the settling time left out. */
  readonly from: number;
  readonly to: number;
  /** Samples of the engine speed. */
  readonly samples: number;
  readonly values: { readonly [K in ChannelName]?: SteadyValue };
}

interface Stretch {
  readonly from: number;
  readonly to: number;
  readonly samples: number;
  readonly values: { [K in ChannelName]?: Omit<SteadyValue, 'plusMinus'> };
}

/** A channel with fewer than this share of its samples near each other has no mean worth quoting. */
const leastShare = 0.6;

/** Cuts a log into stretches of steady engine speed as its rows come by; an engine that is off is steady too. */
export class SteadyFinder {
  readonly #windows: Stretch[] = [];
  readonly #rule: SteadyRule;
  readonly #counts: LeftOutCounts;
  /** By the slot of the channel in the rows. */
  readonly #samples: Samples[] = [];
  readonly #channels: ChannelName[] = [];
  readonly #steps: (() => number)[] = [];
  #speedSum = 0;
  #speedCount = 0;
  #start = Number.NaN;
  #last = Number.NaN;

  constructor(rule: SteadyRule, counts: LeftOutCounts) {
    this.#rule = rule;
    this.#counts = counts;
  }

  /** The next row: speed in 1/s, NaN where the row has none; the other channels follow by {@link value}. */
  row(time: number, speed: number): void {
    const { gap, speedFloor, speedShare } = this.#rule;
    if (this.#speedCount > 0 && (time - this.#last > gap || time < this.#last)) this.close();
    if (Number.isNaN(speed)) return;
    if (this.#speedCount > 0) {
      const mean = this.#speedSum / this.#speedCount;
      if (Math.abs(speed - mean) > Math.max(speedFloor, speedShare * mean)) this.close();
    }
    if (this.#speedCount === 0) this.#start = time;
    this.#speedSum += speed;
    this.#speedCount += 1;
    this.#last = time;
  }

  /** Announce the channel of the next slot; `step` is the smallest change of its signal so far, where that is a fine one. */
  addChannel(channel: ChannelName, step: () => number): void {
    this.#channels.push(channel);
    this.#steps.push(step);
    this.#samples.push(new Samples());
  }

  /** A value of the row that was announced last. */
  value(slot: number, time: number, value: number, line: number): void {
    if (this.#speedCount > 0) (this.#samples[slot] as Samples).add(time, value, line);
  }

  /** The row that was announced last has a value of a channel that is no reading. */
  faulty(slot: number): void {
    if (this.#speedCount > 0) (this.#samples[slot] as Samples).faults += 1;
  }

  /** A channel has turned out to be no signal since a time: take it back. */
  takeBack(channel: ChannelName, since: number): void {
    this.#samples[this.#channels.indexOf(channel)]?.dropFrom(since);
    for (let i = this.#windows.length - 1; i >= 0; i -= 1) {
      const window = this.#windows[i] as Stretch;
      if (window.to < since) break;
      delete window.values[channel];
    }
  }

  /** A channel whose numbers cannot be trusted at all. */
  dropChannel(channel: ChannelName): void {
    for (const window of this.#windows) delete window.values[channel];
  }

  /** The stretches that were found. `stepOf` is the smallest change of each signal, known when the log has ended. */
  windows(stepOf: (channel: ChannelName) => number): SteadyWindow[] {
    return this.#windows.map(({ from, to, samples, values }) => ({
      from,
      to,
      samples,
      values: Object.fromEntries(
        Object.entries(values).map(([channel, { mean, deviation, samples: count, outliers }]) => {
          // A number rounded to a step lies anywhere within it.
          const plusMinus = Math.hypot(deviation, stepOf(channel as ChannelName) / Math.sqrt(12));
          return [channel, { mean, deviation, plusMinus, samples: count, outliers }];
        }),
      ),
    }));
  }

  /** End the stretch, at a change of speed, a gap or the end of the log. */
  close(): void {
    const { settling, shortest } = this.#rule;
    if (this.#speedCount > 0 && this.#last - this.#start - settling >= shortest) this.#keep(this.#start + settling, this.#last);
    for (const samples of this.#samples) samples.clear();
    this.#speedSum = 0;
    this.#speedCount = 0;
  }

  #keep(from: number, to: number): void {
    const values: Stretch['values'] = {};
    this.#samples.forEach((samples, slot) => {
      const channel = this.#channels[slot] as ChannelName;
      const value = this.#summary(channel, samples, from, to, (this.#steps[slot] as () => number)());
      if (value !== undefined) values[channel] = value;
    });
    const speed = values.engineSpeed;
    if (speed !== undefined) this.#windows.push({ from, to, samples: speed.samples, values });
  }

  #summary(channel: ChannelName, samples: Samples, from: number, to: number, step: number): Stretch['values'][ChannelName] {
    const kept = samples.from(from);
    const count = kept.values.length;
    if (count < this.#rule.samples || this.#hasGap(kept.times, from, to)) return undefined;
    // Of a signal that is lost for two thirds of the time, what is left is no reading either. Own rule.
    if (samples.faults > 2 * samples.total) return undefined;
    const summary = summarise(kept.values, step);
    if (summary === undefined) return undefined;
    const line = (index: number) => kept.lines[index] as number;
    if (summary.samples < leastShare * count) {
      this.#counts.add('scattered', line(0), channel, count * samples.stride);
      return undefined;
    }
    const [firstWild] = summary.wild;
    if (firstWild !== undefined) this.#counts.add('outlier', line(firstWild), channel, summary.wild.length * samples.stride);
    const { mean, deviation } = summary;
    return { mean, deviation, samples: summary.samples * samples.stride, outliers: summary.wild.length * samples.stride };
  }

  /** Whether the channel was silent for long within the stretch: its mean would be that of another time. */
  #hasGap(times: Float64Array, from: number, to: number): boolean {
    let last = from;
    for (let i = 0; i < times.length; i += 1) {
      const time = times[i] as number;
      if (time - last > this.#rule.gap) return true;
      last = time;
    }
    return to - last > this.#rule.gap;
  }
}
