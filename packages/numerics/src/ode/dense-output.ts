import { NumericsError } from '../errors.js';

/** Vectors kept for each step. */
const POLYNOMIAL_VECTORS = 5;

/**
 * The solution as one polynomial for each accepted step, in the nested form of Hairer, Nørsett and
 * Wanner (Solving Ordinary Differential Equations I, 1993, II.6):
 * `c0 + s (c1 + (1-s) (c2 + s (c3 + (1-s) c4)))` with `s` from 0 to 1 over the step.
 */
export class DenseOutput {
  private readonly size: number;
  private starts: Float64Array;
  private coefficients: Float64Array;
  private count = 0;
  private end: number;
  private last = 0;

  constructor(initial: Float64Array, t: number, steps: number) {
    this.size = initial.length;
    this.end = t;
    this.starts = new Float64Array(steps);
    this.coefficients = new Float64Array(steps * POLYNOMIAL_VECTORS * this.size);
    // Stands for the solution until the first step: the polynomial that is constant.
    this.coefficients.set(initial);
    this.starts[0] = t;
  }

  /** Makes room for a step that starts at `t`; its coefficients go to `target.array` from `target.offset` on. */
  reserve(t: number): { readonly array: Float64Array; readonly offset: number } {
    const stride = POLYNOMIAL_VECTORS * this.size;
    if (this.count + 1 >= this.starts.length) {
      const starts = new Float64Array(2 * this.starts.length);
      starts.set(this.starts);
      this.starts = starts;
      const coefficients = new Float64Array(2 * this.coefficients.length);
      coefficients.set(this.coefficients);
      this.coefficients = coefficients;
    }
    this.starts[this.count] = t;
    return { array: this.coefficients, offset: this.count * stride };
  }

  /** Forgets all steps and uses their room again. */
  restart(): void {
    this.count = 0;
    this.last = 0;
  }

  /** Closes the step reserved last. */
  commit(end: number): void {
    this.count += 1;
    this.starts[this.count] = end;
    this.end = end;
  }

  /** Cuts the solution short within its last step (an event). The polynomial stays as it was. */
  cut(end: number): void {
    this.end = end;
  }

  /** Start, ends of all steps. */
  times(): Float64Array {
    const times = this.starts.slice(0, this.count + 1);
    times[this.count] = this.end;
    return times;
  }

  /** Value of the solution. Throws `outside_solution` for a time that it does not cover. */
  at(t: number, out: Float64Array = new Float64Array(this.size)): Float64Array {
    const begin = this.starts[0]!;
    const forward = this.end >= begin;
    const outside = forward ? !(t >= begin && t <= this.end) : !(t <= begin && t >= this.end);
    if (outside) {
      throw new NumericsError('outside_solution', `the solution runs from ${begin} to ${this.end}, not to ${t}`);
    }
    const step = this.find(t, forward);
    const start = this.starts[step]!;
    const length = this.count === 0 ? 1 : this.starts[step + 1]! - start;
    this.evaluate(step, (t - start) / length, out);
    return out;
  }

  private find(t: number, forward: boolean): number {
    const covers = (step: number): boolean =>
      forward ? this.starts[step]! <= t && t <= this.starts[step + 1]! : this.starts[step]! >= t && t >= this.starts[step + 1]!;
    if (this.count === 0) return 0;
    for (const step of [this.last, this.last + 1]) {
      if (step < this.count && covers(step)) {
        this.last = step;
        return step;
      }
    }
    let low = 0;
    let high = this.count - 1;
    while (low < high) {
      const middle = (low + high + 1) >> 1;
      const before = forward ? this.starts[middle]! <= t : this.starts[middle]! >= t;
      if (before) low = middle;
      else high = middle - 1;
    }
    this.last = low;
    return low;
  }

  private evaluate(step: number, s: number, out: Float64Array): void {
    const n = this.size;
    const c = this.coefficients;
    const s1 = 1 - s;
    let k = step * POLYNOMIAL_VECTORS * n;
    for (let i = 0; i < n; i += 1, k += 1) {
      out[i] = c[k]! + s * (c[k + n]! + s1 * (c[k + 2 * n]! + s * (c[k + 3 * n]! + s1 * c[k + 4 * n]!)));
    }
  }
}
