export interface OilDilutionInput {
  /** Fuel that one regeneration leaves in the oil, in kg. */
  readonly fuelPerEvent: number;
  /** Share of the fuel in the oil that evaporates until the next regeneration, 0 to 1. */
  readonly evaporated: number;
}

/** Fuel in the oil in kg right after a number of regenerations since the oil change, also one that is not whole. */
export function fuelInOil({ fuelPerEvent, evaporated }: OilDilutionInput, events: number): number {
  if (evaporated < Number.EPSILON) return fuelPerEvent * events;
  if (evaporated === 1) return fuelPerEvent * Math.min(1, events);
  // f (1 − q^n)/(1 − q) with q = 1 − e.
  return (-fuelPerEvent * Math.expm1(events * Math.log1p(-evaporated))) / evaporated;
}

/** Fuel in the oil in kg that is never exceeded; undefined when nothing evaporates. */
export function settledFuelInOil({ fuelPerEvent, evaporated }: OilDilutionInput): number | undefined {
  const settled = fuelPerEvent / evaporated;
  return Number.isFinite(settled) ? settled : undefined;
}

/** Regenerations until the oil holds a mass of fuel in kg; undefined when it never does. */
export function eventsUntil({ fuelPerEvent, evaporated }: OilDilutionInput, fuel: number): number | undefined {
  if (!(fuelPerEvent > 0)) return undefined;
  if (evaporated < Number.EPSILON) return fuel / fuelPerEvent;
  if (evaporated === 1) return fuel <= fuelPerEvent ? fuel / fuelPerEvent : undefined;
  const share = (fuel * evaporated) / fuelPerEvent;
  return share < 1 ? Math.log1p(-share) / Math.log1p(-evaporated) : undefined;
}
