import type { AnyCalculation } from '@wallflow/calculation';
import { regenerationPermissionCalculation } from './permission/definition.js';

export const regenerationCalculations: readonly AnyCalculation[] = [regenerationPermissionCalculation];
