import { type AnyCalculation, createRegistry } from '@wallflow/calculation';
import { calculations as exhaust } from '@wallflow/exhaust/calculations';
import { calculations as workshop } from '@wallflow/workshop';

/** Every calculation that the project publishes. */
export const registry = createRegistry(exhaust, workshop);
export const allCalculations: readonly AnyCalculation[] = registry.all;
