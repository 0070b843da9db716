/**
 * The gas calculations, each with its own types.
 *
 * @module
 */
export * from '../gas/definitions.js';
