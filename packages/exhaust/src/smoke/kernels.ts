/**
 * Kernels of smoke: pure functions on SI numbers, without validation and without units.
 *
 * @module
 */
export { type LeakAreaInput, type LeakShareInput, leakArea, leakShare } from './filter-leak-area/kernel.js';
export {
  type FreeAccelerationProcedure,
  type FreeAccelerationResult,
  freeAcceleration,
  type SmokeVerdict,
  type SmokeVerdictInput,
  smokeVerdict,
} from './free-acceleration/kernel.js';
export { limitByGasFlow, nominalGasFlow, smokeLimitByGasFlow } from './limit-by-gas-flow/kernel.js';
export { absorptionFromOpacity, opacityFromAbsorption } from './opacity-conversion/kernel.js';
export { type ParticleVerdict, particleNumberFlow, particleVerdict } from './particle-number-idle/kernel.js';
export { type ParticleRule, type ParticleRuleId, particleRules } from './particle-number-idle/limits.js';
export { type RoadworthinessRule, type RulePlace, roadworthinessRules } from './roadworthiness-rules/rules.js';
export {
  monthIndex,
  type SmokeLimitQuery,
  type SmokeLimitRow,
  type SmokeRegime,
  smokeLimitFor,
  smokeLimits,
} from './smoke-limit/limits.js';
export { freshAirFor, type RoomAirInput, roomFractionAfter, steadyRoomFraction } from './workplace-air/kernel.js';
export { elementalCarbonLimit, type WorkplaceGas, type WorkplaceLimit, workplaceLimits } from './workplace-air/limits.js';
