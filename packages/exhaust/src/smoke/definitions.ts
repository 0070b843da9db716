import type { AnyCalculation } from '@wallflow/calculation';
import { ashWasteClassCalculation } from './ash-waste-class/definition.js';
import { filterLeakAreaCalculation } from './filter-leak-area/definition.js';
import { freeAccelerationCalculation } from './free-acceleration/definition.js';
import { limitByGasFlowCalculation } from './limit-by-gas-flow/definition.js';
import { opacityConversionCalculation } from './opacity-conversion/definition.js';
import { particleNumberIdleCalculation } from './particle-number-idle/definition.js';
import { roadworthinessRulesCalculation } from './roadworthiness-rules/definition.js';
import { smokeLimitCalculation } from './smoke-limit/definition.js';
import { workplaceAirCalculation } from './workplace-air/definition.js';

/** All of them, in the order of use. */
export const smokeCalculations: readonly AnyCalculation[] = [
  opacityConversionCalculation,
  freeAccelerationCalculation,
  smokeLimitCalculation,
  limitByGasFlowCalculation,
  particleNumberIdleCalculation,
  filterLeakAreaCalculation,
  roadworthinessRulesCalculation,
  workplaceAirCalculation,
  ashWasteClassCalculation,
];

export {
  ashWasteClassCalculation,
  filterLeakAreaCalculation,
  freeAccelerationCalculation,
  limitByGasFlowCalculation,
  opacityConversionCalculation,
  particleNumberIdleCalculation,
  roadworthinessRulesCalculation,
  smokeLimitCalculation,
  workplaceAirCalculation,
};
