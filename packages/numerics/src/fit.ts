/**
 * Least-squares fits with covariance, linear and non-linear.
 *
 * @packageDocumentation
 */
export { type ExponentialFit, fitExponentialApproach } from './fit/exponential.js';
export {
  fitLinear,
  type LinearFit,
  type LinearFitOptions,
  type LinearFitProblem,
  type LinearFitResult,
} from './fit/linear.js';
export {
  fitNonlinear,
  type NonlinearFit,
  type NonlinearFitOptions,
  type NonlinearFitStatus,
  type ParametricModel,
} from './fit/nonlinear.js';
export type { FitWeights } from './fit/weights.js';
