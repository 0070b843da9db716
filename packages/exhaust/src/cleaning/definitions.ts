import type { AnyCalculation } from '@wallflow/calculation';

export const cleaningCalculations: readonly AnyCalculation[] = [];
