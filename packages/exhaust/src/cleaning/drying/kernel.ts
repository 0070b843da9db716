export interface WaterProperties {
  /** Specific heat of liquid water, J/(kg·K). */
  readonly liquidHeat: number;
  /** Heat of evaporation at the boiling point, J/kg. */
  readonly evaporationHeat: number;
  /** K. */
  readonly boilingTemperature: number;
}

/** Heat in J to warm water to the boil and evaporate it. */
export function heatToDry(waterMass: number, startTemperature: number, water: WaterProperties): number {
  return waterMass * (water.liquidHeat * (water.boilingTemperature - startTemperature) + water.evaporationHeat);
}

/** Heat in W that a gas gives up between two temperatures in K. */
export function dryingPower(massFlow: number, specificHeat: number, inlet: number, outlet: number): number {
  return massFlow * specificHeat * (inlet - outlet);
}

/** Volume of steam in m³ as an ideal gas; at 100 °C that is 1.7 % too much. */
export function steamVolume(waterMass: number, temperature: number, pressure: number, gasConstant: number, molarMass: number): number {
  return (waterMass * gasConstant * temperature) / (molarMass * pressure);
}
