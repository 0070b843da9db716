/** Kernels of this subject: pure functions on SI numbers. */
export * from './channel-deposits/kernel.js';
export * from './clean-pressure-drop/kernel.js';
export * from './filter-geometry/kernel.js';
export * from './flow-resistance/kernel.js';
export * from './loaded-pressure-drop/kernel.js';
export * from './soot-mass-from-pressure-drop/kernel.js';
