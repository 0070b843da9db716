/**
 * Kernels of cleaning: pure functions on SI numbers, without validation and without units.
 *
 * @module
 */
export {
  type AcceptanceVerdict,
  acceptanceVerdict,
  coefficientOfVariation,
  figureAgainstLimits,
  type TestLimits,
  type TestResult,
  testOfPlaces,
} from './acceptance/kernel.js';
export { alligation, amountToAdd, type BlendPart, blendedLiquid } from './blend/kernel.js';
export {
  type CleanOrReplace,
  type CleanOrReplaceInput,
  type CostPerDistance,
  cleanOrReplace,
} from './clean-or-replace/kernel.js';
export { normalBelow, type UncertainLife, type UsefulLife, usefulFilterLives } from './clean-or-replace/useful-life.js';
export { type MassShareInput, massShareFromParts, partsFromMassShare, partsFromVolumeShare } from './dilution/kernel.js';
export { boilingPoint, dryingPower, evaporationHeatAt, heatToDry, steamVolume, type WaterProperties } from './drying/kernel.js';
export { capillaryHeight, wallPoreVolume } from './held-liquid/kernel.js';
export { ethanolWaterDensity } from './mixing/ethanol-density.js';
export {
  type ContractedMix,
  type LiquidPart,
  type MixtureDensity,
  massFractionOf,
  mixWithContraction,
  volumeFractionOf,
  weaken,
} from './mixing/kernel.js';
export { type AlkaliInput, acidMass, alkaliToNeutralise, freeAlkali, protonsGiven } from './neutralisation/kernel.js';
export { fitPasses, gainBetween, type PassFit, type PassGain, type PassReading, type UncertainDrop } from './pass-plan/fit.js';
export { type CleanLimits, type PassVerdict, type PassVerdictInput, passVerdict } from './pass-plan/verdict.js';
export {
  type AirBudget,
  type CompressorVerdict,
  compressorVerdict,
  criticalPressureRatio,
  type NozzleGas,
  type NozzleInput,
  nozzleMassFlow,
} from './pneumatic-air/kernel.js';
export { type RinseInput, rinsesToReach, shareAfterRinse, shareAfterRinses } from './rinse/kernel.js';
export {
  type BakeInput,
  type BakePoint,
  type BakeStage,
  type BakeVerdict,
  type BakeVerdictInput,
  bakeSchedule,
  bakeVerdict,
  burnOffPeak,
  oxygenForSoot,
} from './thermal-bake/kernel.js';
export { type CleaningVolumes, type CleaningVolumesInput, cleaningVolumes } from './volumes/kernel.js';
export {
  type AirLiftInput,
  airLift,
  dryMass,
  dryMassUncertainty,
  massRecovery,
  type Recovery,
  type RecoveryInput,
  type WeighedMass,
} from './weighing/kernel.js';
export { type RecoveryVerdict, recoveryVerdict, type SootVerdict, sootVerdict } from './weighing/verdict.js';
