/**
 * Calculations: each a definition with checked inputs, working, sources, cautions and examples. By name each has its own types;
 * the list and the registry hold them without, for programs that choose one at run time.
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
export const registry: Registry = /* @__PURE__ */ createRegistry(calculations);

export * from './cleaning/definitions.js';
export * from './filter/definitions.js';
export * from './flow/definitions.js';
export * from './gas/definitions.js';
export * from './reductant/definitions.js';
export * from './regeneration/definitions.js';
export * from './smoke/definitions.js';
export * from './soot/definitions.js';
