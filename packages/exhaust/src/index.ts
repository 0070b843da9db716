/**
 * Kernels: pure functions on SI numbers, without validation and without units.
 *
 * Use them in loops. For checked inputs with units, working and sources, use `@wallflow/exhaust/calculations`.
 *
 * @module
 */
export * from './cleaning/kernels.js';
export * from './filter/kernels.js';
export * from './flow/kernels.js';
export * from './gas/kernels.js';
export * from './reductant/kernels.js';
export * from './regeneration/kernels.js';
export * from './smoke/kernels.js';
export * from './soot/kernels.js';
