/** Kernels of this subject: pure functions on SI numbers. */
export * from './channel-deposits/kernel.js';
export * from './clean-pressure-drop/kernel.js';
export * from './compressible-pressure-drop/kernel.js';
export * from './deep-bed-pressure-drop/kernel.js';
export * from './deep-bed-pressure-drop/kernel-unit-collector.js';
export * from './filter-geometry/kernel.js';
export * from './flow-resistance/kernel.js';
export * from './loaded-pressure-drop/kernel.js';
export * from './one-dimensional-pressure-drop/kernel.js';
export { wallFlowEquation } from './one-dimensional-pressure-drop/kernel-coefficients.js';
export type { WallFlowEquation } from './one-dimensional-pressure-drop/kernel-equation.js';
export { solveWallFlow, type WallFlowSolution } from './one-dimensional-pressure-drop/kernel-solve.js';
export * from './slip-correction/kernel.js';
export * from './soot-mass-from-pressure-drop/kernel.js';
export * from './soot-mass-from-pressure-drop/kernel-models.js';
export * from './wall-permeability-from-clean-drop/kernel.js';
