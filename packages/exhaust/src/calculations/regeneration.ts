/**
 * The regeneration calculations, each with its own types.
 *
 * @module
 */
export * from '../regeneration/definitions.js';
