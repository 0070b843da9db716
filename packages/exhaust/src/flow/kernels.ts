/** Kernels of this subject: pure functions on SI numbers. */
export {
  airMassFlowAtLambda,
  exhaustMassFlow,
  fuelMassFlowAtLambda,
  fuelShareAtNoLoad,
  lambdaOfFlows,
  stoichiometricAirFuelRatioOfDiesel,
} from './exhaust-mass-flow/kernel.js';
export { type ActualVolumeFlowInput, actualVolumeFlow } from './exhaust-volume-flow/kernel.js';
export {
  type SpeedDensityInput,
  type SweptVolumeFlowInput,
  speedDensityAirMassFlow,
  speedDensityAirMolarFlow,
  sweptVolumeFlow,
} from './speed-density/kernel.js';
