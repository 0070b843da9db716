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

/** Volume of water in m³ that brings a part down to a mass fraction: m_w = m (w₁/w₂ − 1). */
export function waterToWeaken(density: MixtureDensity, part: LiquidPart, massFraction: number): number {
  return (part.volume * density(part.massFraction) * (part.massFraction / massFraction - 1)) / density(0);
}
