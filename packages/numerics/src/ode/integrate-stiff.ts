import { requireArgument, requireEqualLengths } from '../errors.js';
import { drive } from './drive.js';
import { makeTolerances } from './error-norm.js';
import { DifferenceJacobian, type JacobianFunction, type JacobianStructure, makeSystemMatrix } from './jacobian.js';
import { RosenbrockStepper } from './rosenbrock-stepper.js';
import type { Derivative, IntegrationOptions, IntegrationProblem, IntegrationResult } from './types.js';

/** A stiff problem: what is known of its Jacobian makes it fast. */
export interface StiffProblem extends IntegrationProblem {
  /** Default `dense`. */
  readonly structure?: JacobianStructure;
  /** Taken by differences when not given. */
  readonly jacobian?: JacobianFunction;
  /** Writes `∂f/∂t`. Taken by differences when not given. */
  readonly timeDerivative?: Derivative;
  /** True when the derivative does not depend on `t`: saves an evaluation a step. Default false. */
  readonly autonomous?: boolean;
  /**
   * Diagonal of the mass matrix in `mass · dy/dt = f(t, y)`. A zero makes that equation algebraic
   * (index 1); the initial state must then fulfil it. Default all ones.
   */
  readonly mass?: ArrayLike<number>;
}

/**
 * Integrates a stiff system, or one of differential and algebraic equations of index 1, by an
 * L-stable Rosenbrock–Wanner method of order 4 with error control and dense output of third order.
 *
 * Each step solves six linear systems with one matrix; give the band of the Jacobian when it has
 * one. Tolerances below about 1e-10 are better served by another method. The tolerance controls the
 * ends of the steps; on a very stiff and smooth stretch the steps grow so long that the solution
 * between them (`at`, `stopWhen`) is less exact: limit `maxStep` where that counts.
 *
 * Source: G. Steinebach, Improvement of Rosenbrock–Wanner method RODASP, in: Progress in
 * Differential-Algebraic Equations II, Springer 2020, 165–184 (Rodas4P2).
 *
 * @throws NumericsError as `integrate`; `unequal_lengths` when `mass` has another length than the
 * state; `invalid_argument` for a band without meaning or an entry of the Jacobian outside of it
 */
export function integrateStiff(problem: StiffProblem, options: IntegrationOptions = {}): IntegrationResult {
  const size = problem.initial.length;
  requireArgument(size > 0, 'the state must have at least one value');
  const structure = problem.structure ?? 'dense';
  const tolerances = makeTolerances(size, options.relativeTolerance ?? 1e-6, options.absoluteTolerance ?? 1e-9);
  const mass = problem.mass ? Float64Array.from(problem.mass) : new Float64Array(size).fill(1);
  requireEqualLengths('mass', mass, 'the state', problem.initial);

  const differences = new DifferenceJacobian(size, structure, tolerances.absolute);
  const { jacobian, timeDerivative } = problem;
  const span = Math.abs(problem.to - problem.from);
  const direction = Math.sign(problem.to - problem.from);
  const probe = Math.sqrt(Number.EPSILON);
  const stepper: RosenbrockStepper = new RosenbrockStepper(size, {
    derivative: problem.derivative,
    tolerances,
    mass,
    jacobian: makeSystemMatrix(size, structure),
    factored: makeSystemMatrix(size, structure),
    fillJacobian: (t, y, slope, into) => {
      if (jacobian) jacobian(t, y, into);
      else differences.fill(stepper.evaluate, t, y, slope, into);
    },
    timeSlope: problem.autonomous
      ? undefined
      : (t, y, slope, into) => {
          if (timeDerivative) return timeDerivative(t, y, into);
          // Backwards at the end of the span, so that nothing is asked for beyond it.
          const change = direction * Math.min(0.5 * span, probe * Math.max(Math.abs(t), span));
          const later = Math.abs(t + change - problem.from) <= span ? t + change : t - change;
          stepper.evaluate(later, y, into);
          for (let i = 0; i < size; i += 1) into[i] = (into[i]! - slope[i]!) / (later - t);
        },
  });
  return drive(problem, stepper, tolerances, options);
}
