/**
 * Results and workings in another system of units, and with the signs of another language.
 *
 * @module
 */
export { type Drawing, type Drawn, draw } from './draw.js';
export { type ExplanationOptions, explanationIn } from './explanation-in.js';
export { metric, type UnitSystem, usCustomary } from './system.js';
