import type { AnyCalculation } from '@wallflow/calculation';
import { dilutionCalculation } from './dilution/definition.js';
import { cleaningVolumesCalculation } from './volumes/definition.js';

export const cleaningCalculations: readonly AnyCalculation[] = [cleaningVolumesCalculation, dilutionCalculation];
