/**
 * Kernels of soot and ash: pure functions on SI numbers, without validation and without units.
 *
 * @module
 */
export { deviationFromOthers, type Estimate, weightedMean } from './ash-consistency/kernel.js';
export { type AshChannels, inletOpenFraction, layerFill, layerThickness, plugAsh, plugShare } from './ash-distribution/kernel.js';
export { type AshRateInput, ashFromAdditive, ashFromOil, ashShare, distanceToAshLimit } from './ash-rate/kernel.js';
export { depthStatistics } from './ash-rod-depth/kernel.js';
export { equilibriumSootMass, nitrogenDioxidePerCarbon, type SootBalance, type SootBalanceInput, sootBalance } from './balance/kernel.js';
export { type BalanceTemperatureInput, balanceTemperature } from './balance-temperature/kernel.js';
export { type DrivenState, type DrivingStretch, drivePattern, patternMap, peakMass, settledSootMass } from './driving-pattern/kernel.js';
export { capturedSoot, type SootRateGiven, sootFlowFrom } from './engine-out/kernel.js';
export { type SootLoadGiven, type SootLoadReference, sootLoadFrom, sootLoadIn, squareCellFiltrationArea } from './load/kernel.js';
export { preventingStretch, type ReachedTrigger, reachTrigger } from './next-regeneration/kernel.js';
export {
  molarMassOfCarbon,
  type OxidationConditions,
  type OxidationLaw,
  oxidationRateConstant,
  type SootKinetics,
  sootOxidationRate,
} from './oxidation/kernel.js';
export {
  bai2016,
  bai2016NitrogenDioxide,
  bai2016Oxygen,
  bissettShadman1985,
  bissettShadman1985Oxygen,
  kineticsSpread,
  konstandopoulos2008Oxygen,
  uncoated2008,
} from './oxidation/kernel-sets.js';
export { firstOrderOfSurfaceLaw, type SurfaceLaw } from './oxidation/kernel-surface-law.js';
