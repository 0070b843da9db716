import type { AnyCalculation } from '@wallflow/calculation';
import { opacityConversionCalculation } from './opacity-conversion/definition.js';

export const smokeCalculations: readonly AnyCalculation[] = [opacityConversionCalculation];
