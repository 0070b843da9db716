/** Constants of the US Standard Atmosphere 1976 below 11 km; ISO 2533 has the same lowest layer. */
export interface AtmosphereConstants {
  /** K. */
  readonly seaLevelTemperature: number;
  /** Pa. */
  readonly seaLevelPressure: number;
  /** Fall of temperature over the whole layer in K. */
  readonly layerTemperatureDrop: number;
  /** Height of the layer in geopotential m. */
  readonly layerHeight: number;
  /** m/s². */
  readonly gravity: number;
  /** kg/mol. */
  readonly molarMass: number;
  /** J/(mol·K); the value of 1976, not the one of today. */
  readonly gasConstant: number;
  /** m. */
  readonly earthRadius: number;
}

export const standardAtmosphere1976: AtmosphereConstants = {
  seaLevelTemperature: 288.15,
  seaLevelPressure: 101325,
  layerTemperatureDrop: 71.5,
  layerHeight: 11000,
  gravity: 9.80665,
  molarMass: 0.0289644,
  gasConstant: 8.31432,
  earthRadius: 6356766,
};

/** Ratio of specific heats of air in the standard atmosphere. */
export const standardAirHeatCapacityRatio = 1.4;

/** Geopotential altitude in m of a geometric one, US Standard Atmosphere 1976, Eq. 18. */
export function geopotentialAltitude(geometric: number, atmosphere = standardAtmosphere1976): number {
  return (atmosphere.earthRadius * geometric) / (atmosphere.earthRadius + geometric);
}

/** Temperature in K at a geopotential altitude in m, Eq. 23. */
export function standardTemperature(geopotential: number, atmosphere = standardAtmosphere1976): number {
  return atmosphere.seaLevelTemperature - (geopotential / atmosphere.layerHeight) * atmosphere.layerTemperatureDrop;
}

/** Pressure in Pa at a geopotential altitude in m, Eq. 33a. */
export function standardPressure(geopotential: number, atmosphere = standardAtmosphere1976): number {
  const { seaLevelPressure, seaLevelTemperature, gravity, molarMass, gasConstant, layerHeight, layerTemperatureDrop } = atmosphere;
  const exponent = (gravity * molarMass * layerHeight) / (gasConstant * layerTemperatureDrop);
  return seaLevelPressure * (standardTemperature(geopotential, atmosphere) / seaLevelTemperature) ** exponent;
}

/** Density in kg/m³ at a geopotential altitude in m, Eq. 42. */
export function standardDensity(geopotential: number, atmosphere = standardAtmosphere1976): number {
  return (
    (standardPressure(geopotential, atmosphere) * atmosphere.molarMass) /
    (atmosphere.gasConstant * standardTemperature(geopotential, atmosphere))
  );
}

/** Geopotential altitude in m at which the standard atmosphere has a pressure in Pa. */
export function standardAltitude(pressure: number, atmosphere = standardAtmosphere1976): number {
  const { seaLevelPressure, seaLevelTemperature, gravity, molarMass, gasConstant, layerHeight, layerTemperatureDrop } = atmosphere;
  const exponent = (gasConstant * layerTemperatureDrop) / (gravity * molarMass * layerHeight);
  return ((seaLevelTemperature * layerHeight) / layerTemperatureDrop) * (1 - (pressure / seaLevelPressure) ** exponent);
}
