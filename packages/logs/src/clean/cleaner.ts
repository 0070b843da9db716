import { type ChannelName, channelOf } from '../channels/channels.js';
import { endStopsInSI, limitsInSI } from '../channels/limits.js';
import type { Scale } from '../channels/scale.js';
import type { SteadyFinder } from '../steady/windows.js';
import type { LeftOutCounts } from './left-out.js';
import { isLostSignal } from './lost-signals.js';

/** A signal that stands exactly still for this long, over this many samples and this change of speed, is none. Own rule. */
const stuckAfter = 60;
const stuckSamples = 30;
const stuckSpeedRatio = 1.5;
/** A step of a signal that is no coarser than this share of its range is no jump. Own rule. */
const fineStep = 0.01;
/** A value so little beyond those before it is a reading, whatever code it may look like. */
const nearLast = 0.05;

interface ChannelState {
  readonly channel: ChannelName;
  readonly scale: Scale;
  readonly least: number;
  readonly greatest: number;
  /** In SI. */
  readonly endStops: readonly number[];
  readonly mayStand: boolean;
  /** Its values stay although it stands still. */
  readonly kept: boolean;
  /** Last number in the column's unit that was taken. */
  last: number;
  step: number;
  low: number;
  high: number;
  runFrom: number;
  runLine: number;
  runCount: number;
  runSlowest: number;
  runFastest: number;
  stuck: boolean;
}

/** Whether a number lies beyond all that the channel has shown, or is its first. */
function isFarOut({ low, high }: ChannelState, number: number): boolean {
  return !(number >= low - nearLast * Math.abs(low) && number <= high + nearLast * Math.abs(high));
}

/** A signal at the end of what it has shown is saturated; one that never moved is stuck. */
function whyStill({ low, high, last }: ChannelState): 'saturated' | 'stuck' {
  return high > low && (last >= high || last <= low) ? 'saturated' : 'stuck';
}

/** Rows after cleaning, a few thousand at a time. The arrays are used again for the next batch. */
export interface Batch {
  readonly rows: number;
  /** Time in s. */
  readonly time: Float64Array;
  /** Line of the file of each row. */
  readonly lines: Float64Array;
  /** Values in SI by channel; NaN where a row has none. */
  readonly values: ReadonlyMap<ChannelName, Float64Array>;
}

const batchRows = 4096;

interface CleanerOptions {
  readonly onBatch?: (batch: Batch) => void;
  readonly keepStill?: readonly ChannelName[];
}

/** Checks each value against its channel, in one pass and with a few numbers of memory for each channel. */
export class Cleaner {
  readonly #counts: LeftOutCounts;
  readonly #steady: SteadyFinder;
  readonly #states: ChannelState[] = [];
  readonly #onBatch: ((batch: Batch) => void) | undefined;
  readonly #keepStill: readonly ChannelName[];
  readonly #batchTime = new Float64Array(batchRows);
  readonly #batchLines = new Float64Array(batchRows);
  readonly #batchValues = new Map<ChannelName, Float64Array>();
  #columns: Float64Array[] = [];
  #held = 0;
  #lastTime = Number.NaN;
  #lastValues = new Float64Array(0);
  #backTime = Number.NaN;
  #speedSlot = -1;
  #speed = Number.NaN;
  rows = 0;
  /** How often the time started anew, as when a recording is stopped and begun again. */
  restarts = 0;
  firstTime = Number.NaN;
  lastTime = Number.NaN;

  constructor(counts: LeftOutCounts, steady: SteadyFinder, { onBatch, keepStill = [] }: CleanerOptions = {}) {
    this.#counts = counts;
    this.#steady = steady;
    this.#onBatch = onBatch;
    this.#keepStill = keepStill;
  }

  /** Add a channel; its slot in the rows that follow. */
  addChannel(channel: ChannelName, scale: Scale): number {
    const known = this.#states.findIndex((state) => state.channel === channel);
    if (known >= 0) return known;
    const entry = channelOf(channel);
    const [least, greatest] = limitsInSI(entry);
    this.#states.push({
      channel,
      scale,
      least,
      greatest,
      endStops: endStopsInSI(entry),
      mayStand: entry.mayStand === true,
      kept: this.#keepStill.includes(channel),
      last: Number.NaN,
      step: Number.POSITIVE_INFINITY,
      low: Number.POSITIVE_INFINITY,
      high: Number.NEGATIVE_INFINITY,
      runFrom: 0,
      runLine: 0,
      runCount: 0,
      runSlowest: 0,
      runFastest: 0,
      stuck: false,
    });
    const slot = this.#states.length - 1;
    const state = this.#states[slot] as ChannelState;
    this.#steady.addChannel(channel, () => (state.step <= (fineStep * (greatest - least)) / scale.factor ? state.step * scale.factor : 0));
    if (channel === 'engineSpeed') this.#speedSlot = slot;
    const column = new Float64Array(batchRows).fill(Number.NaN);
    this.#columns.push(column);
    this.#batchValues.set(channel, column);
    const last = new Float64Array(slot + 1).fill(Number.NaN);
    last.set(this.#lastValues);
    this.#lastValues = last;
    return slot;
  }

  /** The signal's resolution in SI: the smallest change that was seen. */
  stepOf(channel: ChannelName): number {
    const state = this.#states.find((known) => known.channel === channel);
    return state === undefined || !Number.isFinite(state.step) ? 0 : state.step * state.scale.factor;
  }

  /** A row: time in s, numbers in the units of their columns by slot, NaN where there is none. */
  row(time: number, numbers: Float64Array, line: number): void {
    if (!this.#timeIsGood(time, numbers, line)) return;
    const at = this.#held;
    const states = this.#states;
    const speedSlot = this.#speedSlot;
    let speed = Number.NaN;
    if (speedSlot >= 0) {
      speed = this.#check(states[speedSlot] as ChannelState, numbers[speedSlot] as number, time, line);
      if (!Number.isNaN(speed)) this.#speed = speed;
      this.#steady.row(time, speed);
    }
    for (let slot = 0; slot < states.length; slot += 1) {
      const state = states[slot] as ChannelState;
      const number = numbers[slot] as number;
      const column = this.#columns[slot] as Float64Array;
      if (Number.isNaN(number)) {
        column[at] = number;
        continue;
      }
      const value = slot === speedSlot ? speed : this.#check(state, number, time, line);
      column[at] = value;
      if (Number.isNaN(value)) this.#steady.faulty(slot);
      else this.#steady.value(slot, time, value, line);
    }
    this.#batchTime[at] = time;
    this.#batchLines[at] = line;
    this.#held += 1;
    this.rows += 1;
    if (this.#held === batchRows) this.#deliver();
  }

  /** The log has ended. */
  end(): void {
    this.#steady.close();
    this.#deliver();
  }

  #deliver(): void {
    if (this.#held > 0 && this.#onBatch !== undefined) {
      this.#onBatch({ rows: this.#held, time: this.#batchTime, lines: this.#batchLines, values: this.#batchValues });
    }
    this.#held = 0;
  }

  /** Time forward, or a new start; a line that says nothing new is left out. */
  #timeIsGood(time: number, numbers: Float64Array, line: number): boolean {
    const last = this.#lastTime;
    if (time < last) {
      // One line with an earlier time is a fault; a second one that goes on from it is a new start.
      if (time >= this.#backTime) {
        this.restarts += 1;
        this.#steady.close();
        this.#backTime = Number.NaN;
      } else {
        this.#backTime = time;
        this.#counts.add('time-back', line);
        return false;
      }
    } else {
      this.#backTime = Number.NaN;
      if (time === last && this.#sameAsLast(numbers)) {
        this.#counts.add('same-line-again', line);
        return false;
      }
    }
    this.#lastTime = time;
    if (!(this.firstTime <= time)) this.firstTime = Number.isNaN(this.firstTime) ? time : Math.min(time, this.firstTime);
    if (!(this.lastTime >= time)) this.lastTime = time;
    this.#lastValues.set(numbers.subarray(0, this.#lastValues.length));
    return true;
  }

  #sameAsLast(numbers: Float64Array): boolean {
    for (let slot = 0; slot < this.#lastValues.length; slot += 1) if (!Object.is(numbers[slot], this.#lastValues[slot])) return false;
    return true;
  }

  /** The number as SI, or NaN and counted. */
  #check(state: ChannelState, number: number, time: number, line: number): number {
    if (Number.isNaN(number)) return number;
    if (number === state.last) this.#standsStill(state, time, line);
    else if (isFarOut(state, number) && isLostSignal(number)) {
      this.#counts.add('signal-lost', line, state.channel);
      return Number.NaN;
    }
    const value = (number + state.scale.offset) * state.scale.factor;
    for (const stop of state.endStops) {
      if (Math.abs(value - stop) < 1e-9 * Math.abs(stop)) {
        this.#counts.add('open-circuit', line, state.channel);
        return Number.NaN;
      }
    }
    if (value < state.least || value > state.greatest) {
      this.#counts.add('outside-limits', line, state.channel);
      return Number.NaN;
    }
    if (number !== state.last) this.#moved(state, number, time, line);
    if (state.stuck) {
      this.#counts.add(whyStill(state), line, state.channel);
      return state.kept ? value : Number.NaN;
    }
    return value;
  }

  #moved(state: ChannelState, number: number, time: number, line: number): void {
    const change = Math.abs(number - state.last);
    // Rounding of decimals makes tiny differences of equal steps; they are no finer resolution.
    if (change < state.step && change > 1e-9 * Math.abs(number)) state.step = change;
    if (number < state.low) state.low = number;
    if (number > state.high) state.high = number;
    state.last = number;
    state.runFrom = time;
    state.runLine = line;
    state.runCount = 1;
    state.runSlowest = this.#speed;
    state.runFastest = this.#speed;
    state.stuck = false;
  }

  #standsStill(state: ChannelState, time: number, line: number): void {
    if (state.mayStand || state.stuck || state.channel === 'engineSpeed') return;
    state.runCount += 1;
    const speed = this.#speed;
    if (Number.isNaN(speed)) return;
    if (!(state.runSlowest <= speed)) state.runSlowest = speed;
    if (!(state.runFastest >= speed)) state.runFastest = speed;
    if (time - state.runFrom < stuckAfter || state.runCount < stuckSamples) return;
    if (state.runFastest < stuckSpeedRatio * state.runSlowest || state.runFastest < 1) return;
    state.stuck = true;
    if (!state.kept) this.#steady.takeBack(state.channel, state.runFrom);
    this.#counts.add(whyStill(state), Math.min(state.runLine, line), state.channel, state.runCount - 1);
  }
}
