/**
 * Kernels of regeneration: pure functions on SI numbers, without validation and without units.
 *
 * @module
 */
export { exothermEfficiency, fullExotherm } from './catalyst-exotherm/kernel.js';
export { regenerationFuelPerDistance } from './fuel-penalty/kernel.js';
export { dioxidePerCarbon, fuelForHeat, gasHeatingPower, storedHeat } from './heat/kernel.js';
export { eventsUntil, fuelInOil, type OilDilutionInput, settledFuelInOil } from './oil-dilution/kernel.js';
export { evenlySpacedValues, peakTemperatureMap } from './peak-map/kernel.js';
export {
  type ConditionResult,
  checkAnswer,
  checkSpan,
  type PermissionVerdict,
  permissionVerdict,
  type Span,
  type SpanCheck,
} from './permission/kernel.js';
export {
  cordieriteBands,
  type SootBand,
  type SootBands,
  type Substrate,
  siliconCarbideBands,
  sootBand,
  sootBandsAround,
  sootBandsOf,
} from './permission/kernel-load-band.js';
export { burnExponent, expectedBurnOff, type QualitySample, timeAboveTemperature } from './quality/kernel.js';
export { criticalRise, oxygenRise, type RunawayInput, runawayIndex } from './runaway-index/kernel.js';
export { type HotStart, hotStartPeak } from './runaway-index/kernel-hot-start.js';
export { adiabaticRise, heatOfCarbonToDioxide, heatOfCarbonToMonoxide, sootHeat } from './simulation/kernel-adiabatic.js';
export { AxialBed } from './simulation/kernel-axial.js';
export type { FilterBed, SootCombustion } from './simulation/kernel-bed.js';
export { ChannelGas } from './simulation/kernel-channel-gas.js';
export { type Extreme, fastestRise, peakTemperature } from './simulation/kernel-extremes.js';
export { type FeedPoint, FeedSegment, feedSegments } from './simulation/kernel-feed.js';
export { Oxidant, oxidantSupplyFactor } from './simulation/kernel-oxidant.js';
export { regenerationStateAt, sootLeft, timeToBurn, wallTemperature } from './simulation/kernel-results.js';
export { type AxialRegeneration, type AxialSolution, solveAxialRegeneration } from './simulation/kernel-run.js';
export { dropFeed, type FeedState, feedAt, rampFeed, steadyFeed } from './simulation/kernel-scenario.js';
export {
  channelHeatTransfer,
  channelOxygenTransfer,
  cordieriteHoneycomb,
  oxygenMolarDiffusivity,
  type SubstrateProperties,
  siliconCarbideHoneycomb,
  squareDuctNusselt,
} from './simulation/kernel-substrate.js';
export { chanceOfNone, suitableShare, type TripKind } from './trips/kernel.js';
export { sampleBefore, signalRiseRate, type WatchEvent, type WatchLimits, type WatchRule, type WatchSample } from './watch/kernel.js';
export { watchRegeneration } from './watch/kernel-rules.js';
export { weightedEmission } from './weighted-emission/kernel.js';
