import type { AnyCalculation } from '@wallflow/calculation';
import { gaugeAndAbsolutePressureCalculation } from './absolute-pressure/definition.js';
import { airFuelRatioCalculation } from './air-fuel-ratio/definition.js';
import { exhaustCompositionCalculation } from './composition/definition.js';
import { gasDensityCalculation } from './density/definition.js';
import { dynamicViscosityCalculation } from './dynamic-viscosity/definition.js';
import { exhaustHeatCapacityCalculation } from './heat-capacity/definition.js';
import { intakeAirHumidityCalculation } from './humidity/definition.js';
import { lambdaFromGasCalculation } from './lambda-from-gas/definition.js';
import { meanFreePathCalculation } from './mean-free-path/definition.js';
import { standardAtmosphereCalculation } from './standard-atmosphere/definition.js';
import { thermalConductivityCalculation } from './thermal-conductivity/definition.js';
import { exhaustViscosityCalculation } from './viscosity-of-mixture/definition.js';

/** All of them, in the order of use. */
export const gasCalculations: readonly AnyCalculation[] = [
  gasDensityCalculation,
  dynamicViscosityCalculation,
  exhaustCompositionCalculation,
  lambdaFromGasCalculation,
  airFuelRatioCalculation,
  intakeAirHumidityCalculation,
  exhaustHeatCapacityCalculation,
  exhaustViscosityCalculation,
  thermalConductivityCalculation,
  meanFreePathCalculation,
  standardAtmosphereCalculation,
  gaugeAndAbsolutePressureCalculation,
];

export {
  airFuelRatioCalculation,
  dynamicViscosityCalculation,
  exhaustCompositionCalculation,
  exhaustHeatCapacityCalculation,
  exhaustViscosityCalculation,
  gasDensityCalculation,
  gaugeAndAbsolutePressureCalculation,
  intakeAirHumidityCalculation,
  lambdaFromGasCalculation,
  meanFreePathCalculation,
  standardAtmosphereCalculation,
  thermalConductivityCalculation,
};
