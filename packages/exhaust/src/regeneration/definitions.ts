import type { AnyCalculation } from '@wallflow/calculation';
import { catalystExothermCalculation } from './catalyst-exotherm/definition.js';
import { regenerationFuelPenaltyCalculation } from './fuel-penalty/definition.js';
import { regenerationHeatCalculation } from './heat/definition.js';
import { oilDilutionCalculation } from './oil-dilution/definition.js';
import { peakTemperatureMapCalculation } from './peak-map/definition.js';
import { regenerationPermissionCalculation } from './permission/definition.js';
import { regenerationQualityCalculation } from './quality/definition.js';
import { runawayIndexCalculation } from './runaway-index/definition.js';
import { regenerationAxialCalculation } from './simulation/axial-definition.js';
import { regenerationLumpedCalculation } from './simulation/lumped-definition.js';
import { regenerationTripsCalculation } from './trips/definition.js';
import { regenerationWatchCalculation } from './watch/definition.js';
import { weightedEmissionCalculation } from './weighted-emission/definition.js';

/** All of them, in the order of use. */
export const regenerationCalculations: readonly AnyCalculation[] = [
  regenerationPermissionCalculation,
  regenerationWatchCalculation,
  regenerationQualityCalculation,
  regenerationHeatCalculation,
  catalystExothermCalculation,
  regenerationFuelPenaltyCalculation,
  oilDilutionCalculation,
  regenerationTripsCalculation,
  regenerationLumpedCalculation,
  regenerationAxialCalculation,
  runawayIndexCalculation,
  peakTemperatureMapCalculation,
  weightedEmissionCalculation,
];

export {
  catalystExothermCalculation,
  oilDilutionCalculation,
  peakTemperatureMapCalculation,
  regenerationAxialCalculation,
  regenerationFuelPenaltyCalculation,
  regenerationHeatCalculation,
  regenerationLumpedCalculation,
  regenerationPermissionCalculation,
  regenerationQualityCalculation,
  regenerationTripsCalculation,
  regenerationWatchCalculation,
  runawayIndexCalculation,
  weightedEmissionCalculation,
};
