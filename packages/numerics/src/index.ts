/**
 * Numerical methods on plain numbers: root finding, ordinary differential equations, interpolation,
 * small linear systems, statistics. Every algorithm returns how it ended.
 *
 * @packageDocumentation
 */
export { NumericsError, type NumericsErrorCode } from './errors.js';
export { integrate } from './ode/integrate.js';
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
