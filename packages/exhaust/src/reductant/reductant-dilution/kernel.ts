/** Mass fraction of urea after mixing masses in kg: mass fractions mix linearly by mass. */
export function mixedUreaFraction(parts: readonly { readonly mass: number; readonly fraction: number }[]): number {
  const total = parts.reduce((sum, part) => sum + part.mass, 0);
  return parts.reduce((sum, part) => sum + part.mass * part.fraction, 0) / total;
}

/** Mass of water in kg that brings a mass of solution in kg from one fraction of urea down to another. */
export function waterToReach(mass: number, from: number, to: number): number {
  return mass * (from / to - 1);
}
