import type { AnyCalculation } from '@wallflow/calculation';
import { ammoniaStorageCalculation } from './ammonia-storage/definition.js';
import { depositClearingCalculation } from './deposit-clearing/definition.js';
import { depositRiskCalculation } from './deposit-risk/definition.js';
import { dosingFactorCheckCalculation } from './dosing-factor-check/definition.js';
import { dosingTestCalculation } from './dosing-test/definition.js';
import { dryWetCorrectionCalculation } from './dry-wet-correction/definition.js';
import { effectiveRatioCalculation } from './effective-ratio/definition.js';
import { faultCountdownCalculation } from './fault-countdown/definition.js';
import { labReportCalculation } from './lab-report/definition.js';
import { noxConversionCalculation } from './nox-conversion/definition.js';
import { noxHumidityCorrectionCalculation } from './nox-humidity-correction/definition.js';
import { noxMassFlowCalculation } from './nox-mass-flow/definition.js';
import { noxSplitCalculation } from './nox-split/definition.js';
import { reductantConcentrationCalculation } from './reductant-concentration/definition.js';
import { reductantDemandCalculation } from './reductant-demand/definition.js';
import { reductantDilutionCalculation } from './reductant-dilution/definition.js';
import { reductantFreezingCalculation } from './reductant-freezing/definition.js';
import { reductantRangeCalculation } from './reductant-range/definition.js';
import { reductantStorageLifeCalculation } from './reductant-storage-life/definition.js';
import { reductantThawCalculation } from './reductant-thaw/definition.js';
import { removedWaterCalculation } from './removed-water/definition.js';
import { sampleComparisonCalculation } from './sample-comparison/definition.js';
import { scrConversionCalculation } from './scr-conversion/definition.js';
import { sensorCrossCheckCalculation } from './sensor-cross-check/definition.js';

/** All of them, in the order of use. */
export const reductantCalculations: readonly AnyCalculation[] = [
  noxMassFlowCalculation,
  dryWetCorrectionCalculation,
  removedWaterCalculation,
  noxHumidityCorrectionCalculation,
  noxSplitCalculation,
  noxConversionCalculation,
  sensorCrossCheckCalculation,
  reductantDemandCalculation,
  effectiveRatioCalculation,
  reductantRangeCalculation,
  dosingTestCalculation,
  dosingFactorCheckCalculation,
  reductantConcentrationCalculation,
  labReportCalculation,
  sampleComparisonCalculation,
  reductantDilutionCalculation,
  reductantThawCalculation,
  reductantFreezingCalculation,
  reductantStorageLifeCalculation,
  depositRiskCalculation,
  depositClearingCalculation,
  scrConversionCalculation,
  ammoniaStorageCalculation,
  faultCountdownCalculation,
];

export {
  ammoniaStorageCalculation,
  depositClearingCalculation,
  depositRiskCalculation,
  dosingFactorCheckCalculation,
  dosingTestCalculation,
  dryWetCorrectionCalculation,
  effectiveRatioCalculation,
  faultCountdownCalculation,
  labReportCalculation,
  noxConversionCalculation,
  noxHumidityCorrectionCalculation,
  noxMassFlowCalculation,
  noxSplitCalculation,
  reductantConcentrationCalculation,
  reductantDemandCalculation,
  reductantDilutionCalculation,
  reductantFreezingCalculation,
  reductantRangeCalculation,
  reductantStorageLifeCalculation,
  reductantThawCalculation,
  removedWaterCalculation,
  sampleComparisonCalculation,
  scrConversionCalculation,
  sensorCrossCheckCalculation,
};
