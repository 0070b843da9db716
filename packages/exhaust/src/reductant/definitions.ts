import type { AnyCalculation } from '@wallflow/calculation';

export const reductantCalculations: readonly AnyCalculation[] = [];
