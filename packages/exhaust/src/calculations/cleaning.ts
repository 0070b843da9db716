/**
 * The cleaning calculations, each with its own types.
 *
 * @module
 */
export * from '../cleaning/definitions.js';
