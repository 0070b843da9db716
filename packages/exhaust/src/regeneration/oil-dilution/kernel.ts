export interface OilDilutionInput {
  /** Fuel that one regeneration leaves in the oil, in kg. */
  readonly fuelPerEvent: number;
  /** Share of that fuel that is still there at the next regeneration, 0 to 1. */
  readonly kept: number;
}

/** 1 + q + … + q^(n−1) for any n, also not whole. */
function geometric(kept: number, events: number): number {
  if (kept === 0) return Math.min(1, events);
  return kept === 1 ? events : Math.expm1(events * Math.log(kept)) / (kept - 1);
}

/** Fuel in the oil in kg right after a number of regenerations since the oil change. */
export function fuelInOil({ fuelPerEvent, kept }: OilDilutionInput, events: number): number {
  return fuelPerEvent * geometric(kept, events);
}

/** Fuel in the oil in kg that is never exceeded; undefined when nothing evaporates. */
export function settledFuelInOil({ fuelPerEvent, kept }: OilDilutionInput): number | undefined {
  return kept < 1 ? fuelPerEvent / (1 - kept) : undefined;
}

/** Regenerations until the oil holds a mass of fuel in kg; undefined when it never does. */
export function eventsUntil({ fuelPerEvent, kept }: OilDilutionInput, fuel: number): number | undefined {
  if (!(fuelPerEvent > 0)) return undefined;
  if (kept === 1) return fuel / fuelPerEvent;
  const left = 1 - (fuel * (1 - kept)) / fuelPerEvent;
  if (kept === 0) return fuel <= fuelPerEvent ? fuel / fuelPerEvent : undefined;
  return left > 0 ? Math.log(left) / Math.log(kept) : undefined;
}
