/** Heat that reductant takes from a wall, per kg, in J/kg. */
export interface SprayHeatInput {
  readonly ureaFraction: number;
  /** Temperature of the spray where it lands, K. */
  readonly sprayTemperature: number;
}

export interface SprayHeatProperties {
  /** J/(kg·K) of the liquid. */
  readonly heatCapacity: number;
  /** Boiling temperature of water in K and its heat of evaporation in J/kg. */
  readonly boilingTemperature: number;
  readonly evaporation: number;
  /** J per kg of urea to split it into ammonia and isocyanic acid. */
  readonly thermolysis: number;
}

/** Warming to boiling, evaporating the water and splitting the urea. */
export function sprayHeat({ ureaFraction, sprayTemperature }: SprayHeatInput, properties: SprayHeatProperties): number {
  const warming = properties.heatCapacity * Math.max(0, properties.boilingTemperature - sprayTemperature);
  return warming + (1 - ureaFraction) * properties.evaporation + ureaFraction * properties.thermolysis;
}

/** Nusselt number of turbulent gas in a pipe that it warms: 0.023 Re^0.8 Pr^0.3 (Dittus and Boelter). */
export function dittusBoelter(reynolds: number, prandtl: number): number {
  return 0.023 * reynolds ** 0.8 * prandtl ** 0.3;
}

export interface WallTemperatureInput {
  readonly gasTemperature: number;
  /** Heat that the spray takes, W. */
  readonly heat: number;
  /** W/(m²·K) */
  readonly heatTransfer: number;
  /** m² */
  readonly area: number;
}

/** Temperature in K of a wall that gives to the spray what it takes from the gas. */
export function wettedWallTemperature({ gasTemperature, heat, heatTransfer, area }: WallTemperatureInput): number {
  return gasTemperature - heat / (heatTransfer * area);
}
