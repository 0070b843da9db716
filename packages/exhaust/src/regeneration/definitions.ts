import type { AnyCalculation } from '@wallflow/calculation';

export const regenerationCalculations: readonly AnyCalculation[] = [];
