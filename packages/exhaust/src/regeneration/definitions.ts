import type { AnyCalculation } from '@wallflow/calculation';
import { catalystExothermCalculation } from './catalyst-exotherm/definition.js';
import { regenerationFuelPenaltyCalculation } from './fuel-penalty/definition.js';
import { regenerationHeatCalculation } from './heat/definition.js';
import { oilDilutionCalculation } from './oil-dilution/definition.js';
import { regenerationPermissionCalculation } from './permission/definition.js';
import { regenerationAxialCalculation } from './simulation/axial-definition.js';
import { regenerationLumpedCalculation } from './simulation/lumped-definition.js';

export const regenerationCalculations: readonly AnyCalculation[] = [
  regenerationPermissionCalculation,
  regenerationHeatCalculation,
  catalystExothermCalculation,
  regenerationFuelPenaltyCalculation,
  oilDilutionCalculation,
  regenerationLumpedCalculation,
  regenerationAxialCalculation,
];
