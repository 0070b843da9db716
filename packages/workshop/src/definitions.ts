import type { AnyCalculation } from '@wallflow/calculation';
import { beforeAfterCalculation } from './before-after/definition.js';
import { filterConditionCalculation } from './filter-condition/definition.js';
import { resetAdviceCalculation } from './reset-advice/definition.js';

/** Every calculation of the workshop subject. */
export const calculations: readonly AnyCalculation[] = [filterConditionCalculation, beforeAfterCalculation, resetAdviceCalculation];

export { beforeAfterCalculation, filterConditionCalculation, resetAdviceCalculation };
