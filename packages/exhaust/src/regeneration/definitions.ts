import type { AnyCalculation } from '@wallflow/calculation';
import { regenerationPermissionCalculation } from './permission/definition.js';
import { regenerationAxialCalculation } from './simulation/axial-definition.js';
import { regenerationLumpedCalculation } from './simulation/lumped-definition.js';

export const regenerationCalculations: readonly AnyCalculation[] = [
  regenerationPermissionCalculation,
  regenerationLumpedCalculation,
  regenerationAxialCalculation,
];
