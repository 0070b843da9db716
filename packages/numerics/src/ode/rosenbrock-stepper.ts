import type { SystemMatrix } from '../linear/system-matrix.js';
import { errorNorm, type Tolerances } from './error-norm.js';
import { rodas4p2 } from './rodas4p2.js';
import type { Stepper } from './stepper.js';
import type { Derivative } from './types.js';

const STAGES = 6;

/** What the Rosenbrock method needs of a problem besides its size. */
export interface RosenbrockParts {
  readonly derivative: Derivative;
  readonly tolerances: Tolerances;
  /** Diagonal of the mass matrix. */
  readonly mass: Float64Array;
  /** Storage for the Jacobian, and for the matrix that is factorised. */
  readonly jacobian: SystemMatrix;
  readonly factored: SystemMatrix;
  readonly fillJacobian: (t: number, y: Float64Array, slope: Float64Array, into: SystemMatrix) => void;
  /** Undefined when the derivative does not depend on time. */
  readonly timeSlope: ((t: number, y: Float64Array, slope: Float64Array, into: Float64Array) => void) | undefined;
}

/** The Rosenbrock–Wanner method with the coefficients of `rodas4p2.ts`. */
export class RosenbrockStepper implements Stepper {
  readonly order = 4;
  readonly control = { exponent: 0.25, beta: 0, predictive: true, maxFactor: 6 };
  readonly counts = { evaluations: 0, jacobians: 0, factorisations: 0 };
  readonly slope: Float64Array;
  private readonly parts: RosenbrockParts;
  private readonly stages: Float64Array[];
  private readonly dfdt: Float64Array;
  private readonly stageSlope: Float64Array;
  private readonly shift: Float64Array;
  /** Whether Jacobian and time slope belong to the current state: a rejected step keeps them. */
  private current = false;

  constructor(size: number, parts: RosenbrockParts) {
    this.parts = parts;
    this.slope = new Float64Array(size);
    this.stages = Array.from({ length: STAGES }, () => new Float64Array(size));
    this.dfdt = new Float64Array(size);
    this.stageSlope = new Float64Array(size);
    this.shift = new Float64Array(size);
  }

  evaluate = (t: number, y: Float64Array, dydt: Float64Array): void => {
    this.counts.evaluations += 1;
    this.parts.derivative(t, y, dydt);
  };

  start(t: number, y: Float64Array): boolean {
    this.evaluate(t, y, this.slope);
    this.current = false;
    return this.slope.every(Number.isFinite);
  }

  accept(t: number, y: Float64Array): boolean {
    return this.start(t, y);
  }

  attempt(t: number, y: Float64Array, h: number, next: Float64Array): number {
    const { mass, jacobian, factored, tolerances } = this.parts;
    const { stages, stageSlope, shift } = this;
    const n = y.length;
    this.linearise(t, y);
    for (let i = 0; i < n; i += 1) shift[i] = mass[i]! / (h * rodas4p2.gamma);
    factored.setToDiagonalMinus(shift, jacobian);
    this.counts.factorisations += 1;
    // A singular matrix calls for a shorter step, as a large error does; one of unknown entries is not finite.
    if (!factored.factor()) return hasFiniteEntries(jacobian) ? Infinity : Number.NaN;

    for (let stage = 0; stage < STAGES; stage += 1) {
      let slope = this.slope;
      if (stage > 0) {
        next.set(y);
        addWeighted(next, rodas4p2.stateWeights[stage]!, stages);
        slope = stageSlope;
        this.evaluate(t + rodas4p2.stageTimes[stage]! * h, next, slope);
      }
      const u = stages[stage]!.fill(0);
      addWeighted(u, rodas4p2.slopeWeights[stage]!, stages);
      const timeWeight = rodas4p2.timeSlopeWeights[stage]! * h;
      for (let i = 0; i < n; i += 1) u[i] = (u[i]! * mass[i]!) / h + slope[i]! + timeWeight * this.dfdt[i]!;
      factored.solveInPlace(u);
    }
    const last = stages[STAGES - 1]!;
    for (let i = 0; i < n; i += 1) next[i]! += last[i]!;
    return errorNorm(last, y, next, tolerances);
  }

  writePolynomial(y: Float64Array, next: Float64Array, _h: number, into: Float64Array, offset: number): void {
    const n = y.length;
    const inner = into.subarray(offset + 2 * n, offset + 3 * n).fill(0);
    const innermost = into.subarray(offset + 3 * n, offset + 4 * n).fill(0);
    addWeighted(inner, rodas4p2.denseWeights[0], this.stages);
    addWeighted(innermost, rodas4p2.denseWeights[1], this.stages);
    for (let i = 0; i < n; i += 1) {
      into[offset + i] = y[i]!;
      into[offset + n + i] = next[i]! - y[i]!;
      into[offset + 4 * n + i] = 0;
    }
  }

  private linearise(t: number, y: Float64Array): void {
    if (this.current) return;
    const { jacobian, fillJacobian, timeSlope } = this.parts;
    jacobian.clear();
    fillJacobian(t, y, this.slope, jacobian);
    timeSlope?.(t, y, this.slope, this.dfdt);
    this.counts.jacobians += 1;
    this.current = true;
  }
}

function hasFiniteEntries(matrix: SystemMatrix): boolean {
  for (let i = 0; i < matrix.size; i += 1) {
    for (let j = 0; j < matrix.size; j += 1) if (!Number.isFinite(matrix.get(i, j))) return false;
  }
  return true;
}

function addWeighted(target: Float64Array, weights: readonly number[], vectors: readonly Float64Array[]): void {
  for (let j = 0; j < weights.length; j += 1) {
    const weight = weights[j]!;
    const vector = vectors[j]!;
    for (let i = 0; i < target.length; i += 1) target[i]! += weight * vector[i]!;
  }
}
