/**
 * Numerical methods on plain numbers: root finding, ordinary differential equations, interpolation,
 * small linear systems, statistics. Every algorithm returns how it ended.
 *
 * @packageDocumentation
 */
export { NumericsError, type NumericsErrorCode } from './errors.js';
export type { Interpolant, InterpolantProblem, InterpolantResult, OutsidePolicy } from './interpolation/interpolant.js';
export { interpolateLinearly } from './interpolation/linear.js';
export { interpolateMonotonically } from './interpolation/monotone.js';
export { cumulativeTrapezoid, type TrapezoidResult, type TrapezoidStatus } from './interpolation/trapezoid.js';
export { BandedMatrix } from './linear/banded-matrix.js';
export { DenseMatrix } from './linear/dense-matrix.js';
export { solveLinear, solveTridiagonal } from './linear/solve.js';
export type { LinearSolveResult, LinearSolveStatus, SystemMatrix } from './linear/system-matrix.js';
export { TridiagonalMatrix } from './linear/tridiagonal-matrix.js';
export { integrate } from './ode/integrate.js';
export { integrateStiff, type StiffProblem } from './ode/integrate-stiff.js';
export type { JacobianFunction, JacobianStructure } from './ode/jacobian.js';
export { rodas4p2 } from './ode/rodas4p2.js';
export type {
  CrossingDirection,
  Derivative,
  IntegrationOptions,
  IntegrationProblem,
  IntegrationResult,
  IntegrationStatistics,
  IntegrationStatus,
} from './ode/types.js';
export { type BracketOptions, type BracketResult, type BracketStatus, expandBracket } from './roots/expand-bracket.js';
export { findRoot, type RootOptions, type RootResult, type RootStatus } from './roots/find-root.js';
export { median, medianAbsoluteDeviation } from './statistics/median.js';
export { correlation, covariance, mean, rootMeanSquare, standardDeviation } from './statistics/moments.js';
export { type WeightedMean, weightedMean } from './statistics/weighted-mean.js';
export type { CorrelationMatrix } from './uncertainty/correlation-matrix.js';
export {
  type BudgetLine,
  type PropagationOptions,
  type PropagationResult,
  type PropagationStatus,
  propagateUncertainty,
  type UncertainInput,
  type UncertainOutput,
} from './uncertainty/propagate.js';
export type { Model } from './uncertainty/sensitivity.js';
export { confidenceInterval, coverageFactor, studentTQuantile } from './uncertainty/student-t.js';
export { welchSatterthwaite } from './uncertainty/welch-satterthwaite.js';
