/**
 * Kernels of the filter: pure functions on SI numbers, without validation and without units.
 *
 * @module
 */
export * from './channel-deposits/kernel.js';
export * from './clean-pressure-drop/kernel.js';
export * from './compressible-pressure-drop/kernel.js';
export * from './deep-bed-pressure-drop/kernel.js';
export * from './deep-bed-pressure-drop/kernel-unit-collector.js';
export * from './drop-at-reference-state/kernel.js';
export * from './exhaust-drop-shares/kernel.js';
export * from './filter-geometry/kernel.js';
export * from './flow-bench-drop/kernel.js';
export * from './flow-resistance/kernel.js';
export * from './hose-swap-test/kernel.js';
export * from './hose-swap-test/kernel-verdict.js';
export * from './loaded-pressure-drop/kernel.js';
export * from './one-dimensional-pressure-drop/kernel.js';
export { wallFlowEquation } from './one-dimensional-pressure-drop/kernel-coefficients.js';
export type { WallFlowEquation } from './one-dimensional-pressure-drop/kernel-equation.js';
export { solveWallFlow, type WallFlowSolution } from './one-dimensional-pressure-drop/kernel-solve.js';
export * from './sensor-lag-test/kernel.js';
export * from './sensor-zero-check/kernel.js';
export * from './slip-correction/kernel.js';
export * from './soot-mass-from-pressure-drop/kernel.js';
export * from './soot-mass-from-pressure-drop/kernel-models.js';
export * from './viscous-inertial-fit/kernel.js';
export * from './wall-permeability-from-clean-drop/kernel.js';
