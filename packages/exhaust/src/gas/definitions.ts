import type { AnyCalculation } from '@wallflow/calculation';
import { gasDensityCalculation } from './density/definition.js';
import { dynamicViscosityCalculation } from './dynamic-viscosity/definition.js';

export const gasCalculations: readonly AnyCalculation[] = [gasDensityCalculation, dynamicViscosityCalculation];
