import { findRoot } from '../roots/find-root.js';
import type { DenseOutput } from './dense-output.js';
import type { CrossingDirection } from './types.js';

/** Watches a stop function from step to step. */
export class EventWatcher {
  private before: number;
  private readonly value: (t: number, y: Float64Array) => number;
  private readonly direction: CrossingDirection;

  constructor(value: (t: number, y: Float64Array) => number, direction: CrossingDirection, t: number, y: Float64Array) {
    this.value = value;
    this.direction = direction;
    this.before = value(t, y);
  }

  /** False when the last value of the stop function was NaN or infinite. */
  get isFinite(): boolean {
    return Number.isFinite(this.before);
  }

  /** Looks at the end of a step. True when the function crossed zero in the watched direction. */
  crossed(t: number, y: Float64Array): boolean {
    const before = this.before;
    const after = this.value(t, y);
    this.before = after;
    // A function that starts at zero has to leave zero first.
    const rising = before < 0 && after >= 0;
    const falling = before > 0 && after <= 0;
    return (rising && this.direction !== 'falling') || (falling && this.direction !== 'rising');
  }

  /** Time of the crossing between two times of the solution, undefined when the function is not finite there. */
  locate(from: number, to: number, solution: DenseOutput): number | undefined {
    const y = solution.at(from);
    const found = findRoot((t) => this.value(t, solution.at(t, y)), Math.min(from, to), Math.max(from, to));
    if (found.status === 'not_finite') return undefined;
    // Rounding of the polynomial can hide a crossing at the very end of the step.
    return found.status === 'no_bracket' ? to : found.root;
  }
}
