/**
 * The flow calculations, each with its own types.
 *
 * @module
 */
export * from '../flow/definitions.js';
