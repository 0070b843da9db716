/**
 * Kernels of flows: pure functions on SI numbers, without validation and without units.
 *
 * @module
 */
export {
  type CarbonBalance,
  type CarbonBalanceInput,
  type CarbonReadings,
  carbonBalance,
  carbonBalanceMolarFlow,
} from './carbon-balance/kernel.js';
export {
  type AirPerStrokeInput,
  airMassFlowAtLambda,
  airMassFlowOfStrokes,
  exhaustMassFlow,
  fuelMassFlowAtLambda,
  fuelShareAtNoLoad,
  lambdaOfFlows,
  stoichiometricAirFuelRatioOfDiesel,
} from './exhaust-mass-flow/kernel.js';
export { type ActualVolumeFlowInput, actualVolumeFlow } from './exhaust-volume-flow/kernel.js';
export { type PipeVelocityInput, pipeArea, pipeReynoldsNumber, pipeVelocity, soundSpeed } from './pipe-flow/kernel.js';
export { residenceTime } from './residence-time/kernel.js';
export { spaceVelocity } from './space-velocity/kernel.js';
export {
  type SpeedDensityInput,
  type SweptVolumeFlowInput,
  speedDensityAirMassFlow,
  speedDensityAirMolarFlow,
  sweptVolumeFlow,
} from './speed-density/kernel.js';
export {
  type ActualFlowInput,
  molarFlowOfMass,
  molarFlowOfVolume,
  normalTemperature,
  referencePressure,
  standardVolumeFlowOfMoles,
} from './standard-volume-flow/kernel.js';
