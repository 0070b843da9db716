/**
 * Kernels of the gas: pure functions on SI numbers, without validation and without units.
 *
 * @module
 */
export { absoluteFromGauge, gaugeFromAbsolute } from './absolute-pressure/kernel.js';
export {
  carbonMassFraction,
  dieselFuel,
  type FuelFormula,
  fuelMassPerCarbon,
  oxygenDemand,
  stoichiometricAirFuelRatio,
  stoichiometricAirFuelRatioRegulation49,
} from './air-fuel-ratio/kernel.js';
export {
  airPerCarbon,
  dryBasis,
  type ExhaustCompositionInput,
  exhaustComposition,
  exhaustMolesPerFuelMass,
  exhaustPerCarbon,
  waterPerDryAirOfHumidity,
} from './composition/kernel.js';
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
export {
  enthalpyReferenceTemperature,
  heatCapacityRatio,
  molarHeatCapacityOfMixture,
  sensibleEnthalpyOfMixture,
  specificEnthalpyOfMixture,
  specificHeatCapacityOfMixture,
} from './heat-capacity/kernel.js';
export { type NasaPolynomial, nasaEnthalpy, nasaHeatCapacity, nasaPolynomials } from './heat-capacity/nasa.js';
export { dewPointHardy, humidityRatio, molarMassOfMoistAir, vapourPressureBuck, vapourPressureGoff } from './humidity/kernel.js';
export {
  type ExhaustMoles,
  exhaustMolesByLambda,
  type LambdaFromGasInput,
  lambdaFromCarbonDioxide,
  lambdaFromOxygen,
} from './lambda-from-gas/kernel.js';
export { type MeanFreePathInput, meanFreePath } from './mean-free-path/kernel.js';
export {
  atomicMass,
  dryAir,
  type ExhaustSpecies,
  exhaustSpecies,
  moistAir,
  molarMassOf,
  molarMassOfMixture,
  moleMean,
  type PerSpecies,
  perExhaustSpecies,
} from './species.js';
export {
  type AtmosphereConstants,
  geopotentialAltitude,
  standardAltitude,
  standardAtmosphere1976,
  standardDensity,
  standardPressure,
  standardTemperature,
} from './standard-atmosphere/kernel.js';
export {
  diluteAirConductivity,
  diluteCarbonDioxideConductivity,
  diluteConductivities,
  diluteConductivity,
  diluteWaterConductivity,
} from './thermal-conductivity/dilute-gas.js';
export { airConductivityStandardAtmosphere, exhaustConductivity } from './thermal-conductivity/kernel.js';
export {
  diluteArgon,
  diluteCarbonDioxideViscosity,
  diluteNitrogen,
  diluteOxygen,
  diluteViscosities,
  diluteWaterViscosity,
} from './viscosity-of-mixture/dilute-gas.js';
export { exhaustViscosity, mixByWilkeFactors, type ViscosityModel, wilkeFactor, wilkeViscosity } from './viscosity-of-mixture/kernel.js';
export { sutherlandRows, sutherlandViscosities } from './viscosity-of-mixture/sutherland-rows.js';
