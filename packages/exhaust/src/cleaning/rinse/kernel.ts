export interface RinseInput {
  /** Liquid that stays behind after draining, m³. */
  readonly heldVolume: number;
  /** Water of one rinse, m³. */
  readonly rinseVolume: number;
}

/** Share of what was dissolved that is left after one rinse that mixes fully and drains to the same held volume. */
export function shareAfterRinse({ heldVolume, rinseVolume }: RinseInput): number {
  return heldVolume / (heldVolume + rinseVolume);
}

/** Share left after a number of equal rinses. */
export function shareAfterRinses(input: RinseInput, rinses: number): number {
  return shareAfterRinse(input) ** rinses;
}

/** Fewest equal rinses that leave no more than a share. */
export function rinsesToReach(input: RinseInput, share: number): number {
  if (share >= 1) return 0;
  const exact = Math.log(share) / Math.log(shareAfterRinse(input));
  // A whole number that rounding lifted a little above itself is still that number.
  return Math.ceil(Math.round(1e9 * exact) / 1e9);
}
