import type { AnyCalculation } from '@wallflow/calculation';

export const calculations: readonly AnyCalculation[] = [];
