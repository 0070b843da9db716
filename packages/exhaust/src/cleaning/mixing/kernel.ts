import { findRoot } from '@wallflow/numerics';

/** Density of a mixture in kg/m³ from the mass fraction of its active substance. */
export type MixtureDensity = (massFraction: number) => number;

/** Volume fraction of the pure substance before mixing: φ = w ρ(w)/ρ(1), the way a strength by volume is defined (OIML R 22). */
export function volumeFractionOf(density: MixtureDensity, massFraction: number): number {
  return (massFraction * density(massFraction)) / density(1);
}

/** Undoes `volumeFractionOf`. */
export function massFractionOf(density: MixtureDensity, volumeFraction: number): number {
  if (volumeFraction <= 0 || volumeFraction >= 1) return volumeFraction <= 0 ? 0 : 1;
  return findRoot((massFraction) => volumeFractionOf(density, massFraction) - volumeFraction, 0, 1).root;
}

/** A part of a mix by volume. */
export interface LiquidPart {
  /** m³. */
  readonly volume: number;
  /** Mass fraction of the active substance. */
  readonly massFraction: number;
}

export interface ContractedMix {
  /** kg. */
  readonly mass: number;
  readonly massFraction: number;
  /** What the mix really fills, m³. */
  readonly volume: number;
  /** Sum of the volumes of the parts, m³. */
  readonly additiveVolume: number;
}

/** Mix parts by mass, the only thing that adds up, and find the volume from the density of the mix. */
export function mixWithContraction(density: MixtureDensity, parts: readonly LiquidPart[]): ContractedMix {
  const masses = parts.map((part) => part.volume * density(part.massFraction));
  const mass = masses.reduce((sum, one) => sum + one, 0);
  const active = parts.reduce((sum, part, index) => sum + (masses[index] ?? 0) * part.massFraction, 0);
  const massFraction = mass === 0 ? 0 : active / mass;
  return {
    mass,
    massFraction,
    volume: mass / density(massFraction),
    additiveVolume: parts.reduce((sum, part) => sum + part.volume, 0),
  };
}

export interface Weakened {
  /** Mass of the mix and of the water in it, kg. */
  readonly mass: number;
  readonly waterMass: number;
  /** m³. */
  readonly waterVolume: number;
}

/** Water that brings a part down to a mass fraction: its active substance stays, m₁ w₁ = m₂ w₂. */
export function weaken(density: MixtureDensity, part: LiquidPart, massFraction: number): Weakened {
  const start = part.volume * density(part.massFraction);
  const mass = (start * part.massFraction) / massFraction;
  return { mass, waterMass: mass - start, waterVolume: (mass - start) / density(0) };
}
