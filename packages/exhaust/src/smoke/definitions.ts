import type { AnyCalculation } from '@wallflow/calculation';
import { filterLeakAreaCalculation } from './filter-leak-area/definition.js';
import { freeAccelerationCalculation } from './free-acceleration/definition.js';
import { opacityConversionCalculation } from './opacity-conversion/definition.js';
import { particleNumberIdleCalculation } from './particle-number-idle/definition.js';
import { smokeLimitCalculation } from './smoke-limit/definition.js';

export const smokeCalculations: readonly AnyCalculation[] = [
  opacityConversionCalculation,
  freeAccelerationCalculation,
  smokeLimitCalculation,
  particleNumberIdleCalculation,
  filterLeakAreaCalculation,
];
