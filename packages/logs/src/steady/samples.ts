/** A stretch is thinned beyond this many samples of a channel, so that hours of idling take no more memory than minutes. */
const most = 8192;

/** Samples of one channel in a stretch: time, value and line. */
export class Samples {
  #times = new Float64Array(64);
  #values = new Float64Array(64);
  #lines = new Float64Array(64);
  #count = 0;
  #stride = 1;
  #skipped = 0;
  #first = Number.NaN;
  #last = Number.NaN;
  #total = 0;
  /** Values of the stretch that were left out before they came here. */
  faults = 0;

  add(time: number, value: number, line: number): void {
    if (this.#total === 0) this.#first = time;
    this.#total += 1;
    this.#last = time;
    this.#skipped += 1;
    if (this.#skipped < this.#stride) return;
    this.#skipped = 0;
    if (this.#count === this.#times.length) this.#grow();
    this.#times[this.#count] = time;
    this.#values[this.#count] = value;
    this.#lines[this.#count] = line;
    this.#count += 1;
  }

  #grow(): void {
    if (this.#count < most) {
      const wider = (old: Float64Array<ArrayBuffer>) => {
        const fresh = new Float64Array(old.length * 2);
        fresh.set(old);
        return fresh;
      };
      this.#times = wider(this.#times);
      this.#values = wider(this.#values);
      this.#lines = wider(this.#lines);
      return;
    }
    for (let i = 0; i < this.#count >> 1; i += 1) {
      this.#times[i] = this.#times[2 * i] as number;
      this.#values[i] = this.#values[2 * i] as number;
      this.#lines[i] = this.#lines[2 * i] as number;
    }
    this.#count >>= 1;
    this.#stride *= 2;
  }

  /** Drop the samples from a time on. */
  dropFrom(time: number): void {
    while (this.#count > 0 && (this.#times[this.#count - 1] as number) >= time) this.#count -= 1;
    this.#last = this.#count === 0 ? Number.NaN : (this.#times[this.#count - 1] as number);
    if (this.#count === 0) this.#total = 0;
  }

  clear(): void {
    this.#count = 0;
    this.#stride = 1;
    this.#skipped = 0;
    this.#total = 0;
    this.faults = 0;
    this.#first = Number.NaN;
    this.#last = Number.NaN;
  }

  /** How many there were, with those that were thinned out. */
  get total(): number {
    return this.#total;
  }

  get count(): number {
    return this.#count;
  }

  get first(): number {
    return this.#first;
  }

  get last(): number {
    return this.#last;
  }

  /** Values and lines from a time on. */
  from(time: number): { times: Float64Array; values: Float64Array; lines: Float64Array } {
    let start = 0;
    while (start < this.#count && (this.#times[start] as number) < time) start += 1;
    return {
      times: this.#times.subarray(start, this.#count),
      values: this.#values.subarray(start, this.#count),
      lines: this.#lines.subarray(start, this.#count),
    };
  }

  /** How many samples stand for one that is kept. */
  get stride(): number {
    return this.#stride;
  }
}
