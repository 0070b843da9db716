/**
 * The smoke calculations, each with its own types.
 *
 * @module
 */
export * from '../smoke/definitions.js';
