import { freezingTemperature, frozenHeatCapacity, heatOfFusion, liquidHeatCapacity } from '../solution/thermal.js';

export interface FreezingProperties {
  /** K */
  readonly freezingTemperature: number;
  /** J/kg */
  readonly heatOfFusion: number;
  /** J/(kg·K) */
  readonly frozenHeatCapacity: number;
  /** J/(kg·K) */
  readonly liquidHeatCapacity: number;
}

export const standardReductantFreezing: FreezingProperties = { freezingTemperature, heatOfFusion, frozenHeatCapacity, liquidHeatCapacity };

export interface ThawInput {
  /** kg */
  readonly mass: number;
  /** K */
  readonly startTemperature: number;
  /** K */
  readonly endTemperature: number;
}

export interface ThawHeat {
  /** J each: warming the solid, melting it, warming the liquid. */
  readonly solid: number;
  readonly melting: number;
  readonly liquid: number;
}

/** Heat that a mass needs from one temperature to a higher one; zero for the parts that it has behind it. */
export function thawHeat({ mass, startTemperature, endTemperature }: ThawInput, properties = standardReductantFreezing): ThawHeat {
  const melt = properties.freezingTemperature;
  const frozen = startTemperature < melt;
  const thawed = frozen && endTemperature > melt;
  return {
    solid: mass * properties.frozenHeatCapacity * Math.max(0, Math.min(endTemperature, melt) - startTemperature),
    melting: thawed ? mass * properties.heatOfFusion : 0,
    liquid: mass * properties.liquidHeatCapacity * Math.max(0, endTemperature - Math.max(startTemperature, melt)),
  };
}
