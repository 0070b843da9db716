import { errorNorm, type Tolerances } from './error-norm.js';
import type { Stepper } from './stepper.js';
import type { Derivative } from './types.js';

/**
 * The Dormand–Prince 5(4) pair. Coefficients: J. R. Dormand and P. J. Prince, A family of embedded
 * Runge–Kutta formulae, J. Comput. Appl. Math. 6 (1980) 19–26, table 2 (RK5(4)7M). Fourth-order
 * dense output: Hairer, Nørsett and Wanner, Solving Ordinary Differential Equations I, 1993, II.6.
 */
export class DormandPrinceStepper implements Stepper {
  readonly order = 5;
  // Hairer and Wanner, Solving Ordinary Differential Equations II, 1996, IV.2: exponent 1/k - 0.75 beta.
  readonly control = { exponent: 0.2 - 0.04 * 0.75, beta: 0.04, predictive: false, maxFactor: 10 };
  readonly counts = { evaluations: 0, jacobians: 0, factorisations: 0 };
  private readonly derivative: Derivative;
  private readonly tolerances: Tolerances;
  private k1: Float64Array;
  private readonly k2: Float64Array;
  private readonly k3: Float64Array;
  private readonly k4: Float64Array;
  private readonly k5: Float64Array;
  private readonly k6: Float64Array;
  private k7: Float64Array;
  private readonly stage: Float64Array;

  constructor(derivative: Derivative, size: number, tolerances: Tolerances) {
    this.derivative = derivative;
    this.tolerances = tolerances;
    this.k1 = new Float64Array(size);
    this.k2 = new Float64Array(size);
    this.k3 = new Float64Array(size);
    this.k4 = new Float64Array(size);
    this.k5 = new Float64Array(size);
    this.k6 = new Float64Array(size);
    this.k7 = new Float64Array(size);
    this.stage = new Float64Array(size);
  }

  get slope(): Float64Array {
    return this.k1;
  }

  evaluate(t: number, y: Float64Array, dydt: Float64Array): void {
    this.counts.evaluations += 1;
    this.derivative(t, y, dydt);
  }

  start(t: number, y: Float64Array): boolean {
    this.evaluate(t, y, this.k1);
    return this.k1.every(Number.isFinite);
  }

  attempt(t: number, y: Float64Array, h: number, next: Float64Array): number {
    const { k1, k2, k3, k4, k5, k6, k7, stage } = this;
    const n = y.length;
    for (let i = 0; i < n; i += 1) stage[i] = y[i]! + h * (k1[i]! / 5);
    this.evaluate(t + h / 5, stage, k2);
    for (let i = 0; i < n; i += 1) stage[i] = y[i]! + h * ((3 / 40) * k1[i]! + (9 / 40) * k2[i]!);
    this.evaluate(t + (3 / 10) * h, stage, k3);
    for (let i = 0; i < n; i += 1) {
      stage[i] = y[i]! + h * ((44 / 45) * k1[i]! - (56 / 15) * k2[i]! + (32 / 9) * k3[i]!);
    }
    this.evaluate(t + (4 / 5) * h, stage, k4);
    for (let i = 0; i < n; i += 1) {
      stage[i] = y[i]! + h * ((19372 / 6561) * k1[i]! - (25360 / 2187) * k2[i]! + (64448 / 6561) * k3[i]! - (212 / 729) * k4[i]!);
    }
    this.evaluate(t + (8 / 9) * h, stage, k5);
    for (let i = 0; i < n; i += 1) {
      stage[i] =
        y[i]! +
        h * ((9017 / 3168) * k1[i]! - (355 / 33) * k2[i]! + (46732 / 5247) * k3[i]! + (49 / 176) * k4[i]! - (5103 / 18656) * k5[i]!);
    }
    this.evaluate(t + h, stage, k6);
    for (let i = 0; i < n; i += 1) {
      next[i] =
        y[i]! + h * ((35 / 384) * k1[i]! + (500 / 1113) * k3[i]! + (125 / 192) * k4[i]! - (2187 / 6784) * k5[i]! + (11 / 84) * k6[i]!);
    }
    this.evaluate(t + h, next, k7);
    // Difference of the two embedded results; the stage vector is free now.
    for (let i = 0; i < n; i += 1) {
      stage[i] =
        h *
        ((71 / 57600) * k1[i]! -
          (71 / 16695) * k3[i]! +
          (71 / 1920) * k4[i]! -
          (17253 / 339200) * k5[i]! +
          (22 / 525) * k6[i]! -
          (1 / 40) * k7[i]!);
    }
    return errorNorm(stage, y, next, this.tolerances);
  }

  /** The last stage is the first of the next step. */
  accept(): boolean {
    const first = this.k1;
    this.k1 = this.k7;
    this.k7 = first;
    return true;
  }

  writePolynomial(y: Float64Array, next: Float64Array, h: number, into: Float64Array, offset: number): void {
    const { k1, k3, k4, k5, k6, k7 } = this;
    const n = y.length;
    for (let i = 0; i < n; i += 1) {
      const difference = next[i]! - y[i]!;
      const bend = h * k1[i]! - difference;
      into[offset + i] = y[i]!;
      into[offset + n + i] = difference;
      into[offset + 2 * n + i] = bend;
      into[offset + 3 * n + i] = difference - h * k7[i]! - bend;
      into[offset + 4 * n + i] =
        h *
        ((-12715105075 / 11282082432) * k1[i]! +
          (87487479700 / 32700410799) * k3[i]! -
          (10690763975 / 1880347072) * k4[i]! +
          (701980252875 / 199316789632) * k5[i]! -
          (1453857185 / 822651844) * k6[i]! +
          (69997945 / 29380423) * k7[i]!);
    }
  }
}
