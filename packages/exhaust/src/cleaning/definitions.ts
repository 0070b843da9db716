import type { AnyCalculation } from '@wallflow/calculation';
import { blendTwoStrengthsCalculation } from './blend/definition.js';
import { dilutionCalculation } from './dilution/definition.js';
import { dilutionAdjustCalculation } from './dilution-adjust/definition.js';
import { cleaningVolumesCalculation } from './volumes/definition.js';

export const cleaningCalculations: readonly AnyCalculation[] = [
  cleaningVolumesCalculation,
  dilutionCalculation,
  dilutionAdjustCalculation,
  blendTwoStrengthsCalculation,
];
