/** Trips of one kind. */
export interface TripKind {
  /** Duration of one trip in s. */
  readonly duration: number;
  /** How often it is driven, in any common measure. */
  readonly frequency: number;
}

/** How often a trip is driven that lasts at least as long as a regeneration needs, in s; undefined where it is shorter. */
export function suitableTrips({ duration, frequency }: TripKind, needed: number): number | undefined {
  // What is typed in another unit may miss the duration by rounding.
  return duration >= needed * (1 - 1e-9) ? frequency : undefined;
}

/** Share of trips that last at least as long as a regeneration needs, in s; undefined without trips. */
export function suitableShare(trips: readonly TripKind[], needed: number): number | undefined {
  const total = trips.reduce((sum, { frequency }) => sum + frequency, 0);
  const long = trips.reduce((sum, trip) => sum + (suitableTrips(trip, needed) ?? 0), 0);
  return total > 0 ? long / total : undefined;
}

/** Chance that none of a number of trips is long enough, trips taken as coming by chance: (1 − p)^n. */
export function chanceOfNone(share: number, trips: number): number {
  return (1 - share) ** trips;
}
