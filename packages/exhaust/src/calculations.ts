/**
 * Calculations: each a definition with checked inputs, working, sources, cautions and examples.
 *
 * @module
 */
import { type AnyCalculation, createRegistry, type Registry } from '@wallflow/calculation';
import { cleaningCalculations } from './cleaning/definitions.js';
import { filterCalculations } from './filter/definitions.js';
import { flowCalculations } from './flow/definitions.js';
import { gasCalculations } from './gas/definitions.js';
import { reductantCalculations } from './reductant/definitions.js';
import { regenerationCalculations } from './regeneration/definitions.js';
import { smokeCalculations } from './smoke/definitions.js';
import { sootCalculations } from './soot/definitions.js';

/** Every calculation of this package, in the order of the subjects. */
export const calculations: readonly AnyCalculation[] = [
  ...gasCalculations,
  ...flowCalculations,
  ...filterCalculations,
  ...sootCalculations,
  ...regenerationCalculations,
  ...reductantCalculations,
  ...smokeCalculations,
  ...cleaningCalculations,
];

/** The same by id and subject. */
export const registry: Registry = createRegistry(calculations);

export { cautions } from './cautions.js';
export { filterConstants, viscosityConstants } from './filter/constants.js';
export { geometryInputs, wallInputs } from './filter/inputs.js';
export { resolveGeometry } from './filter/resolve.js';
export { allowedZeroInput } from './filter/sensor-inputs.js';
export * as sharedSources from './sources.js';
