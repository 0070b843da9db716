export interface ReductantRangeInput {
  /** Fluid in the tank and fluid that cannot be drawn, in m³. */
  readonly fluidVolume: number;
  readonly unusableVolume: number;
  /** Consumption in m³ per m. */
  readonly consumption: number;
}

/** Distance in m until the fluid that can be drawn is used up; 0 if it already is. */
export function reductantRange({ fluidVolume, unusableVolume, consumption }: ReductantRangeInput): number {
  return Math.max(0, fluidVolume - unusableVolume) / consumption;
}
