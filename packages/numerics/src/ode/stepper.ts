import type { StepControl } from './step-controller.js';

/** Counters that a method keeps. */
export interface StepperCounts {
  readonly evaluations: number;
  readonly jacobians: number;
  readonly factorisations: number;
}

/** One-step method as the driver sees it. */
export interface Stepper {
  readonly control: StepControl;
  readonly counts: StepperCounts;
  /** Order of the step's error estimate, for the choice of the first step. */
  readonly order: number;
  /** The derivative at the start of the next step; valid after `start` and `accept`. */
  readonly slope: Float64Array;
  /** The problem's derivative, counted. */
  evaluate(t: number, y: Float64Array, dydt: Float64Array): void;
  /** Takes up a state. False when the derivative is not finite there. */
  start(t: number, y: Float64Array): boolean;
  /** Tries a step from `y` into `next`; gives the error norm: 1 is just acceptable, NaN when not finite. */
  attempt(t: number, y: Float64Array, h: number, next: Float64Array): number;
  /** Takes the last attempt as the new state. False when the derivative is not finite there. */
  accept(t: number, y: Float64Array): boolean;
  /** Writes the polynomial of the last attempt, see `DenseOutput`; called before `accept`. */
  writePolynomial(y: Float64Array, next: Float64Array, h: number, into: Float64Array, offset: number): void;
}
