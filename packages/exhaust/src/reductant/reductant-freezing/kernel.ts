import { type FreezingProperties, standardReductantFreezing } from '../reductant-thaw/kernel.js';

export interface FreezingInput {
  /** kg */
  readonly mass: number;
  /** Heat transfer coefficient times outer area in W/K. */
  readonly heatLoss: number;
  /** K */
  readonly startTemperature: number;
  /** K */
  readonly ambientTemperature: number;
}

/** Seconds of cooling until the first ice: Newton's law of cooling, m c/(h A) ln((T − Ta)/(Tf − Ta)). */
export function timeToFirstIce(input: FreezingInput, properties: FreezingProperties = standardReductantFreezing): number {
  const above = input.startTemperature - input.ambientTemperature;
  const left = properties.freezingTemperature - input.ambientTemperature;
  return ((input.mass * properties.liquidHeatCapacity) / input.heatLoss) * Math.log(above / left);
}

/** Seconds from the first ice until all is frozen, at least: the ice itself slows the loss and is left out. */
export function timeToFreezeThrough(input: FreezingInput, properties: FreezingProperties = standardReductantFreezing): number {
  return (input.mass * properties.heatOfFusion) / (input.heatLoss * (properties.freezingTemperature - input.ambientTemperature));
}
