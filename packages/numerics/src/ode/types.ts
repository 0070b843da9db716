/** Right-hand side of a system of ordinary differential equations: writes dy/dt into `dydt`. */
export type Derivative = (t: number, y: Float64Array, dydt: Float64Array) => void;

/** How an integration ended. */
export type IntegrationStatus =
  /** Reached the end time. */
  | 'finished'
  /** The stop function changed sign; the solution ends there. */
  | 'stopped_by_event'
  /** The tolerance would need a step below the resolution of `t`: a singularity or a jump. */
  | 'step_too_small'
  /** The limit of attempted steps came first. */
  | 'max_steps'
  /** The initial state, the derivative or the stop function is NaN or infinite. */
  | 'not_finite';

/** Which sign changes of a stop function end the integration. */
export type CrossingDirection = 'any' | 'rising' | 'falling';

/** What both integrators need to know of a problem. */
export interface IntegrationProblem {
  readonly derivative: Derivative;
  readonly from: number;
  /** May lie before `from`: the integration then runs backwards. */
  readonly to: number;
  readonly initial: ArrayLike<number>;
}

/** Options of both integrators. */
export interface IntegrationOptions {
  /** Default 1e-6. */
  readonly relativeTolerance?: number;
  /** One value, or one for each state. Default 1e-9. */
  readonly absoluteTolerance?: number | ArrayLike<number>;
  /** Chosen from the problem when not given. */
  readonly initialStep?: number;
  /** Longest step. Limit it when the derivative has short pulses that a long step could jump over. */
  readonly maxStep?: number;
  /** Limit of attempted steps, accepted and rejected together. Default 100 000. */
  readonly maxSteps?: number;
  /**
   * Ends the integration where this function of the solution passes through zero. It is looked at
   * once a step: two crossings within one step can stay unseen (limit `maxStep` then).
   */
  readonly stopWhen?: (t: number, y: Float64Array) => number;
  /** Default `any`. */
  readonly stopDirection?: CrossingDirection;
  /** Keep what is needed for `at`. Default true; false saves the memory when only the end counts. */
  readonly dense?: boolean;
}

/** Work done by an integration. */
export interface IntegrationStatistics {
  readonly acceptedSteps: number;
  readonly rejectedSteps: number;
  /** Calls of the derivative, those for a finite-difference Jacobian included. */
  readonly evaluations: number;
  readonly jacobians: number;
  readonly factorisations: number;
}

/** Outcome of an integration. With any status the solution holds up to `t`. */
export interface IntegrationResult {
  readonly status: IntegrationStatus;
  /** Where the solution ends. */
  readonly t: number;
  /** The state at `t`. */
  readonly y: Float64Array;
  readonly statistics: IntegrationStatistics;
  /** Ends of the accepted steps, the start included; empty when `dense` is false. */
  readonly times: Float64Array;
  /**
   * The solution at any time between `from` and `t`, written into `out` when given.
   *
   * @throws NumericsError `outside_solution` for another time or when `dense` is false
   */
  readonly at: (t: number, out?: Float64Array) => Float64Array;
}
