/**
 * The filter calculations, each with its own types.
 *
 * @module
 */
export * from '../filter/definitions.js';
