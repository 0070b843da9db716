import type { AnyCalculation } from '@wallflow/calculation';
import { cleaningVolumesCalculation } from './volumes/definition.js';

export const cleaningCalculations: readonly AnyCalculation[] = [cleaningVolumesCalculation];
