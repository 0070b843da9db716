import type { AnyCalculation } from '@wallflow/calculation';

export const smokeCalculations: readonly AnyCalculation[] = [];
