export { molarGasConstant, molarMassOfDryAir } from './constants.js';
export { type GasDensityInput, gasDensity } from './density/kernel.js';
export {
  type DiluteGasConstants,
  diluteAir,
  diluteAirViscosity,
  type SutherlandConstants,
  sutherlandAir,
  sutherlandViscosity,
} from './dynamic-viscosity/kernel.js';
