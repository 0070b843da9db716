/**
 * Numerical methods on plain numbers: root finding, ordinary differential equations, small linear
 * systems, statistics. Every algorithm returns how it ended.
 *
 * @packageDocumentation
 */
export { NumericsError, type NumericsErrorCode } from './errors.js';
export { BandedMatrix } from './linear/banded-matrix.js';
export { DenseMatrix } from './linear/dense-matrix.js';
export { solveLinear } from './linear/solve.js';
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
export { findRoot, type RootOptions, type RootResult, type RootStatus } from './roots/find-root.js';
export { mean, standardDeviation } from './statistics/moments.js';
export { coverageFactor, studentTQuantile } from './statistics/student-t.js';
