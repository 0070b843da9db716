/**
 * Why a usual range ends where it does: one text that is true on both sides of it, or a text for each side. What is said of hot
 * gas is no reason against cold gas. `below` and `above` are of the SI value.
 */
export type UsualReason = string | { readonly below?: string; readonly above?: string };

/** The reason for the side that was passed; undefined where none is given. */
export function reasonOfSide(reason: UsualReason | undefined, side: 'below' | 'above'): string | undefined {
  return typeof reason === 'object' ? reason[side] : reason;
}
