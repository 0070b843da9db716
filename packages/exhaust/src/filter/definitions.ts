import type { AnyCalculation } from '@wallflow/calculation';

export const filterCalculations: readonly AnyCalculation[] = [];
