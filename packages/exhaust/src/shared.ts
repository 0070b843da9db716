/**
 * What definitions of this package share with those of the workshop: inputs of a filter, constants, cautions and sources. Of use
 * to whoever writes calculations beside ours; unlike the rest it may change from one version to the next.
 *
 * @module
 */
export { cautions } from './cautions.js';
export { filterConstants, viscosityConstants } from './filter/constants.js';
export { geometryInputs, wallInputs } from './filter/inputs.js';
export { resolveGeometry } from './filter/resolve.js';
export { allowedZeroInput } from './filter/sensor-inputs.js';
export * as sharedSources from './sources.js';
export { sutherlandFormula } from './vocabulary/constants.js';
