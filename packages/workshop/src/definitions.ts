import type { AnyCalculation } from '@wallflow/calculation';
import { beforeAfterCalculation } from './before-after/definition.js';
import { filterConditionCalculation } from './filter-condition/definition.js';

/** Every calculation of the workshop subject. */
export const calculations: readonly AnyCalculation[] = [filterConditionCalculation, beforeAfterCalculation];

export { beforeAfterCalculation, filterConditionCalculation };
