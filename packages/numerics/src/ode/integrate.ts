import { requireArgument } from '../errors.js';
import { DormandPrinceStepper } from './dormand-prince-stepper.js';
import { drive } from './drive.js';
import { makeTolerances } from './error-norm.js';
import type { IntegrationOptions, IntegrationProblem, IntegrationResult } from './types.js';

/**
 * Integrates a system of ordinary differential equations by the explicit Dormand–Prince 5(4) method
 * with PI step control and dense output of fourth order. For problems that are not stiff; on a stiff
 * one it takes very many steps and may end with `max_steps`: use {@link integrateStiff} there.
 *
 * The tolerance holds for each step: the error of one step, as a root mean square over the states of
 * error / (absoluteTolerance + relativeTolerance |y|), stays at or below 1.
 *
 * Sources: Dormand and Prince, J. Comput. Appl. Math. 6 (1980) 19–26; Hairer, Nørsett and Wanner,
 * Solving Ordinary Differential Equations I, 2nd ed. 1993, II.4 to II.6.
 *
 * @throws NumericsError `invalid_argument` for an empty state, tolerances that are negative or both
 * zero, steps that are not above zero; `unequal_lengths` for a list of tolerances of another length
 */
export function integrate(problem: IntegrationProblem, options: IntegrationOptions = {}): IntegrationResult {
  const size = problem.initial.length;
  requireArgument(size > 0, 'the state must have at least one value');
  const tolerances = makeTolerances(size, options.relativeTolerance ?? 1e-6, options.absoluteTolerance ?? 1e-9);
  return drive(problem, new DormandPrinceStepper(problem.derivative, size, tolerances), tolerances, options);
}
