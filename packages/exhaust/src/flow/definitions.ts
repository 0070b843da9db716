import type { AnyCalculation } from '@wallflow/calculation';

export const flowCalculations: readonly AnyCalculation[] = [];
