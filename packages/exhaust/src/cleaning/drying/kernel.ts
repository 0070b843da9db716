import { findRoot } from '@wallflow/numerics';
import { vapourPressureGoff } from '../../gas/humidity/kernel.js';

export interface WaterProperties {
  /** Specific heat of liquid water, J/(kg·K). */
  readonly liquidHeat: number;
  /** Heat of evaporation at the boiling point, J/kg. */
  readonly evaporationHeat: number;
  /** K. */
  readonly boilingTemperature: number;
}

/** K: wider than the boiling points from 60 to 200 kPa, and where the vapour pressure of Goff stays within 0.1 % of steam tables. */
const boilingRange = [333.15, 403.15] as const;

/** Boiling point in K of water at an absolute pressure in Pa, 20 to 270 kPa: where its vapour pressure (Goff) is that pressure. */
export function boilingPoint(pressure: number): number {
  return findRoot((temperature) => vapourPressureGoff(temperature) / pressure - 1, ...boilingRange).root;
}

/** Heat of evaporation in J/kg at a boiling point, on a straight line through a known value, falling by so much per kelvin. */
export function evaporationHeatAt(
  boiling: number,
  known: { readonly temperature: number; readonly heat: number; readonly fall: number },
): number {
  return known.heat - known.fall * (boiling - known.temperature);
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
