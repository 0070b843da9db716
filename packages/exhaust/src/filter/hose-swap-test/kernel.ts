/** What two readings with the hoses as they are and swapped tell, Pa. */
export interface HoseSwap {
  /** The drop itself, the same for either connection. */
  readonly pressureDrop: number;
  /** What the sensor adds, whatever the drop. */
  readonly zeroError: number;
}

/** A sensor that reads d + z as connected and -d + z with its hoses swapped. */
export function separateZero(normalReading: number, swappedReading: number): HoseSwap {
  return { pressureDrop: (normalReading - swappedReading) / 2, zeroError: (normalReading + swappedReading) / 2 };
}
