import type { AnyCalculation } from '@wallflow/calculation';

export const sootCalculations: readonly AnyCalculation[] = [];
