/**
 * The soot calculations, each with its own types.
 *
 * @module
 */
export * from '../soot/definitions.js';
