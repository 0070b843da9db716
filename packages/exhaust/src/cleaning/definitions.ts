import type { AnyCalculation } from '@wallflow/calculation';
import { cleanedFilterAcceptanceCalculation } from './acceptance/definition.js';
import { cleaningBatchPlanCalculation } from './batch-plan/definition.js';
import { blendTwoStrengthsCalculation } from './blend/definition.js';
import { cleanOrReplaceCalculation } from './clean-or-replace/definition.js';
import { diluteWithContractionCalculation } from './dilute-with-contraction/definition.js';
import { dilutionCalculation } from './dilution/definition.js';
import { dilutionAdjustCalculation } from './dilution-adjust/definition.js';
import { dryingCalculation } from './drying/definition.js';
import { heldLiquidCalculation } from './held-liquid/definition.js';
import { mixWithContractionCalculation } from './mix-with-contraction/definition.js';
import { neutralisationCalculation } from './neutralisation/definition.js';
import { cleaningPassPlanCalculation } from './pass-plan/definition.js';
import { pneumaticAirCalculation } from './pneumatic-air/definition.js';
import { rinseDilutionCalculation } from './rinse/definition.js';
import { thermalBakeCalculation } from './thermal-bake/definition.js';
import { cleaningVolumesCalculation } from './volumes/definition.js';
import { filterWeighingCalculation } from './weighing/definition.js';

/** All of them, in the order of use. */
export const cleaningCalculations: readonly AnyCalculation[] = [
  cleaningVolumesCalculation,
  dilutionCalculation,
  dilutionAdjustCalculation,
  blendTwoStrengthsCalculation,
  mixWithContractionCalculation,
  diluteWithContractionCalculation,
  rinseDilutionCalculation,
  cleaningPassPlanCalculation,
  heldLiquidCalculation,
  dryingCalculation,
  cleaningBatchPlanCalculation,
  filterWeighingCalculation,
  cleanedFilterAcceptanceCalculation,
  thermalBakeCalculation,
  pneumaticAirCalculation,
  neutralisationCalculation,
  cleanOrReplaceCalculation,
];

export {
  blendTwoStrengthsCalculation,
  cleanedFilterAcceptanceCalculation,
  cleaningBatchPlanCalculation,
  cleaningPassPlanCalculation,
  cleaningVolumesCalculation,
  cleanOrReplaceCalculation,
  diluteWithContractionCalculation,
  dilutionAdjustCalculation,
  dilutionCalculation,
  dryingCalculation,
  filterWeighingCalculation,
  heldLiquidCalculation,
  mixWithContractionCalculation,
  neutralisationCalculation,
  pneumaticAirCalculation,
  rinseDilutionCalculation,
  thermalBakeCalculation,
};
