/** How a method's step length follows from its error. */
export interface StepControl {
  /** One over the order of the local error: the exponent of the error just made. */
  readonly exponent: number;
  /** Exponent of the error before it (PI control); 0 for none. */
  readonly beta: number;
  /** Also look at how the last two steps and errors changed (Gustafsson), for stiff problems. */
  readonly predictive: boolean;
  readonly maxFactor: number;
}

const SAFETY = 0.9;
const MIN_FACTOR = 0.2;

/**
 * Step length control. PI control: Hairer, Nørsett and Wanner, Solving Ordinary Differential
 * Equations I, 1993, II.4 and Hairer and Wanner, II, 1996, IV.2; predictive control: K. Gustafsson,
 * ACM Trans. Math. Softw. 20 (1994) 496–517, in the form of Hairer and Wanner II, equation IV.8.25.
 */
export class StepController {
  private readonly control: StepControl;
  private errorBefore = 1e-4;
  private lengthBefore = 0;
  private rejectedBefore = false;

  constructor(control: StepControl) {
    this.control = control;
  }

  /** Factor for the step after one with this error (at most 1) and length. */
  accepted(error: number, length: number): number {
    const { exponent, beta, predictive, maxFactor } = this.control;
    const made = Math.max(error, 1e-10);
    let wanted = SAFETY * made ** -exponent * this.errorBefore ** beta;
    if (predictive && this.lengthBefore > 0) {
      const growth = length / this.lengthBefore;
      const errorBefore = Math.max(this.errorBefore, 1e-2);
      wanted = Math.min(wanted, SAFETY * growth * (errorBefore / made ** 2) ** exponent);
    }
    const factor = clamp(wanted, this.rejectedBefore ? 1 : maxFactor);
    this.errorBefore = Math.max(error, 1e-4);
    this.lengthBefore = length;
    this.rejectedBefore = false;
    return factor;
  }

  /** Factor for the next attempt after a step with this error, NaN when the state is not finite. */
  rejected(error: number): number {
    this.rejectedBefore = true;
    return Number.isNaN(error) ? MIN_FACTOR : clamp(SAFETY * error ** -this.control.exponent, 1);
  }
}

function clamp(factor: number, maxFactor: number): number {
  return Math.max(MIN_FACTOR, Math.min(maxFactor, factor));
}
