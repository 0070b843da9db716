/**
 * What a log says beyond its steady stretches: zero, lag and sign, resistance over a drive, regenerations, trend, next service.
 *
 * @packageDocumentation
 */
export { type LagAndSign, lagAndSign } from './analysis/lag.js';
export { fitLineBothErrors, type LineFit, type UncertainPoint } from './analysis/line.js';
export { type Regeneration, RegenerationFinder, type RegenerationRule, usualRegeneration } from './analysis/regeneration.js';
export {
  type DriveResistance,
  driveResistance,
  type FlowBlock,
  FlowBlocks,
  type FlowOptions,
  type ResistanceOptions,
  type ResistanceProblem,
} from './analysis/resistance.js';
export { type ChangePoint, changePoint, nextService, type ServiceForecast, type SmoothedSeries, smoothSeries } from './analysis/trend.js';
export { type SensorZero, sensorZero } from './analysis/zero.js';
