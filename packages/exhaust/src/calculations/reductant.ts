/**
 * The reductant calculations, each with its own types.
 *
 * @module
 */
export * from '../reductant/definitions.js';
