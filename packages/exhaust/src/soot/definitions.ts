import type { AnyCalculation } from '@wallflow/calculation';
import { sootLoadCalculation } from './load/definition.js';

export const sootCalculations: readonly AnyCalculation[] = [sootLoadCalculation];
