import type { Batch } from '../clean/cleaner.js';

/** When gas before the filter counts as that of a regeneration. Common practice, no source. */
export interface RegenerationRule {
  /** It begins when the gas has been this hot, K, for so long, s. */
  readonly begins: number;
  readonly beginsAfter: number;
  /** It ends when the gas has been colder than this, K, for so long, s. */
  readonly ends: number;
  readonly endsAfter: number;
  /** Soot burns well from here on, K; so long of it, s, makes a whole regeneration. */
  readonly burns: number;
  readonly whole: number;
}

/** 500 °C for 30 s begins it, 450 °C for 60 s ends it; 550 °C for 10 minutes burns a filter out. */
export const usualRegeneration: RegenerationRule = {
  begins: 773.15,
  beginsAfter: 30,
  ends: 723.15,
  endsAfter: 60,
  burns: 823.15,
  whole: 600,
};

/** One regeneration in a log. */
export interface Regeneration {
  /** In s of the log's time. */
  readonly from: number;
  readonly to: number;
  /** Peak and mean of the gas before the filter, K. */
  readonly peak: number;
  readonly mean: number;
  /** Seconds above the temperature at which soot burns well. */
  readonly burning: number;
  /** Whether it burnt for long enough, too short, or the log ended in its midst. */
  readonly quality: 'whole' | 'short' | 'cut off by the log';
  /** The control unit's soot figure before and after, kg. */
  readonly sootBefore?: number;
  readonly sootAfter?: number;
}

/** A gap longer than this ends what was going on, s. */
const longestGap = 30;

/** Finds regenerations in the rows of a log as they come by. */
export class RegenerationFinder {
  readonly #rule: RegenerationRule;
  readonly #found: Regeneration[] = [];
  #hotSince = Number.NaN;
  #coldSince = Number.NaN;
  #running = false;
  #last = Number.NaN;
  #lastTemperature = Number.NaN;
  #peak = 0;
  #sum = 0;
  #seconds = 0;
  /** The same up to where it grew cold. */
  #kept = { sum: 0, seconds: 0 };
  #burning = 0;
  #soot = Number.NaN;
  #sootBefore = Number.NaN;

  constructor(rule: RegenerationRule = usualRegeneration) {
    this.#rule = rule;
  }

  /** The next rows. */
  add({ rows, time, values }: Batch): void {
    const temperature = values.get('gasTemperature');
    const soot = values.get('sootMass');
    if (temperature === undefined) return;
    for (let row = 0; row < rows; row += 1) {
      const figure = soot?.[row] ?? Number.NaN;
      const value = temperature[row] as number;
      if (!Number.isNaN(value)) this.#row(time[row] as number, value);
      if (!Number.isNaN(figure)) this.#soot = figure;
    }
  }

  /** The log has ended: all that were found. */
  end(): readonly Regeneration[] {
    if (this.#running) this.#close(this.#last, true);
    return this.#found;
  }

  #row(time: number, temperature: number): void {
    const { begins, beginsAfter, ends, endsAfter, burns } = this.#rule;
    const passed = time - this.#last;
    if (!(passed >= 0 && passed <= longestGap)) {
      if (this.#running) this.#close(this.#last, true);
      this.#start();
    } else if (!Number.isNaN(this.#hotSince)) {
      const middle = 0.5 * (temperature + this.#lastTemperature);
      this.#sum += passed * middle;
      this.#seconds += passed;
      if (middle >= burns) this.#burning += passed;
    }
    this.#last = time;
    this.#lastTemperature = temperature;
    if (temperature >= begins && Number.isNaN(this.#hotSince)) {
      this.#start();
      this.#hotSince = time;
      this.#sootBefore = this.#soot;
    }
    if (Number.isNaN(this.#hotSince)) return;
    this.#peak = Math.max(this.#peak, temperature);
    if (!this.#running) {
      if (temperature < begins) this.#start();
      else if (time - this.#hotSince >= beginsAfter) this.#running = true;
      return;
    }
    if (temperature >= ends) this.#coldSince = Number.NaN;
    else if (Number.isNaN(this.#coldSince)) {
      this.#coldSince = time;
      this.#kept = { sum: this.#sum, seconds: this.#seconds };
    } else if (time - this.#coldSince >= endsAfter) this.#close(this.#coldSince, false);
  }

  #start(): void {
    this.#hotSince = Number.NaN;
    this.#coldSince = Number.NaN;
    this.#running = false;
    this.#peak = 0;
    this.#sum = 0;
    this.#seconds = 0;
    this.#burning = 0;
  }

  #close(to: number, cut: boolean): void {
    const { sum, seconds } = cut ? { sum: this.#sum, seconds: this.#seconds } : this.#kept;
    const whole = this.#burning >= this.#rule.whole;
    this.#found.push({
      from: this.#hotSince,
      to,
      peak: this.#peak,
      mean: seconds > 0 ? sum / seconds : this.#peak,
      burning: this.#burning,
      quality: whole ? 'whole' : cut ? 'cut off by the log' : 'short',
      ...(Number.isNaN(this.#sootBefore) ? {} : { sootBefore: this.#sootBefore }),
      ...(Number.isNaN(this.#soot) ? {} : { sootAfter: this.#soot }),
    });
    this.#start();
  }
}
