/**
 * Kernels of reductant and NOx: pure functions on SI numbers, without validation and without units.
 *
 * @module
 */
export { type StorageInput, storedAmmonia } from './ammonia-storage/kernel.js';
export {
  molarMassOfAmmonia,
  molarMassOfNitricOxide,
  molarMassOfNitrogenDioxide,
  molarMassOfUrea,
  molarMassOfWater,
  standardReductantDensity,
  standardUreaFraction,
} from './constants.js';
export {
  dittusBoelter,
  type SprayHeatInput,
  type SprayHeatProperties,
  sprayHeat,
  type WallTemperatureInput,
  wettedWallTemperature,
} from './deposit-risk/kernel.js';
export { type DepositClass, type DepositClassId, depositClassAt, depositClasses } from './deposits/classes.js';
export { type DepositKind, type DepositKindId, depositKinds } from './deposits/kinds.js';
export { type DosingFactorVerdict, dosedOverWanted, dosingFactorVerdict } from './dosing-factor-check/kernel.js';
export {
  type DosingQuantityInput,
  type DosingQuantityVerdict,
  dosingQuantityVerdict,
  orificeLoss,
  scaleOrificeFlow,
} from './dosing-test/kernel.js';
export {
  type DryWetFromCarbonInput,
  type DryWetInput,
  dryWetByWaterBalance,
  dryWetDirective,
  dryWetFromCarbon,
  dryWetR49,
  dryWetR49WithCooler,
  residualWaterFactor,
} from './dry-wet-correction/kernel.js';
export {
  type EffectiveRatioInput,
  type EffectiveRatioVerdict,
  effectiveAmmoniaRatio,
  effectiveRatioVerdict,
} from './effective-ratio/kernel.js';
export { type CountdownResult, type CountdownState, faultCountdown } from './fault-countdown/kernel.js';
export {
  type CountdownStage,
  type CountdownStageName,
  type FaultClass,
  type LawProfile,
  type LawProfileId,
  lawProfiles,
} from './fault-countdown/profiles.js';
export { type LabFinding, type LabVerdict, labFinding, labVerdict } from './lab-report/kernel.js';
export { type LabLimit, type LabProperty, labLimits, labProperties } from './lab-report/limits.js';
export {
  type AmmoniaBalance,
  ammoniaBalance,
  apparentConversion,
  type ConversionReadings,
  conversionWithAmmonia,
} from './nox-conversion/kernel.js';
export {
  type HumidityEdition,
  type HumidityFactorInput,
  noxHumidityFactor,
  waterMoleFraction,
} from './nox-humidity-correction/kernel.js';
export {
  type NoxCoefficientEdition,
  type NoxMassFlowInput,
  type NoxMassRatioInput,
  noxMassFlow,
  noxMassRatio,
  printedNoxCoefficient,
} from './nox-mass-flow/kernel.js';
export { type MassConcentrationInput, massConcentrationOf, type NoxMolarMasses, trueMassShare } from './nox-split/kernel.js';
export {
  concentrationFromDensity,
  concentrationFromIndex,
  iso22241Limits,
  type QualityVerdict,
  qualityVerdict,
  type ReadingAt20,
} from './reductant-concentration/kernel.js';
export { ammoniaFromReductant, type ReductantMassFlowInput, reductantMassFlow } from './reductant-demand/kernel.js';
export { ammoniaPerNox, reactionShares } from './reductant-demand/stoichiometry.js';
export { mixedUreaFraction, waterToReach } from './reductant-dilution/kernel.js';
export { type FreezingInput, timeToFirstIce, timeToFreezeThrough } from './reductant-freezing/kernel.js';
export { type ReductantRangeInput, reductantRange } from './reductant-range/kernel.js';
export { type StoragePeriod, type StorageRow, storageLife, storageLifeAt, usedStorageLife } from './reductant-storage-life/kernel.js';
export { type FreezingProperties, standardReductantFreezing, type ThawHeat, type ThawInput, thawHeat } from './reductant-thaw/kernel.js';
export { removedWaterCorrection } from './removed-water/kernel.js';
export { compareSamples, type SampleComparison, type SampleEstimate, type SampleVerdict } from './sample-comparison/kernel.js';
export { type ScrPlugFlowInput, type ScrPlugFlowResult, scrPlugFlow } from './scr-model/plug-flow.js';
export { type Arrhenius, ammoniaCoverage, arrhenius, noxRate, type ScrModel, teachingScrModel } from './scr-model/teaching-model.js';
export { allowedSensorDifference, type SensorVerdict, type SensorVerdictInput, sensorVerdict } from './sensor-cross-check/kernel.js';
export { densitySlope, ureaFractionFromDensityAt20, ureaSolutionDensity, ureaSolutionDensityAt20 } from './solution/density.js';
export {
  indexSlope,
  molarityFromIndexDifference,
  refractiveIndexAt20,
  ureaFractionFromIndexAt20,
  ureaMolarity,
} from './solution/refractive-index.js';
