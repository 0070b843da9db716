import { findRoot } from '@wallflow/numerics';

/** A wall seen as spheres of solid, each in the middle of a cell of gas, that grow by the soot they collect. */
export interface DeepBedWall {
  /** Porosity of the clean wall. */
  readonly porosity: number;
  /** Packing density of the soot inside the wall, kg/m³. */
  readonly wallSootDensity: number;
  /** Part of the cell's diameter at which the growing spheres close the way into the wall. */
  readonly percolationFactor: number;
  /** Part of the wall's surface that an ash layer leaves open to soot. */
  readonly openShare: number;
}

/** Hydrodynamic factor of Kuwabara's cell model, Konstandopoulos 2008 Eqs 11 to 14: permeability = f(ε) d². */
export function kuwabaraFactor(porosity: number): number {
  const solid = 1 - porosity;
  return ((2 / 9) * (2 - 1.8 * Math.cbrt(solid) - porosity - 0.2 * solid ** 2)) / solid;
}

/**
 * Growth of the collectors, as diameter over clean diameter, by a soot mass in kg that has come to a wall of a volume in m³.
 *
 * Of new soot the part 1 - Φ goes into the wall, with Φ = (d² - d0²)/((ψ b)² - d0²) (partition coefficient of
 * Konstandopoulos et al. 2000). With y = d/d0 and Π = ψ/(1-ε)^(1/3) that integrates to
 * m/M = 3 (Π² - 1)/s · [Π artanh(x/Π) - x] between 1 and y, where M = ρ (1-ε) V and s is the open share.
 */
export function collectorGrowth(sootMass: number, wallVolume: number, wall: DeepBedWall): number {
  const limit = wall.percolationFactor / Math.cbrt(1 - wall.porosity);
  if (!(limit > 1) || wall.openShare === 0 || sootMass === 0) return 1;
  const scale = wall.wallSootDensity * (1 - wall.porosity) * wallVolume;
  const primitive = (x: number) => limit * Math.atanh(x / limit) - x;
  const wanted = (sootMass * wall.openShare) / (3 * scale * (limit ** 2 - 1)) + primitive(1);
  // The growth ends where the logarithm can no longer be told from infinity.
  const end = limit * (1 - 1e-15);
  if (primitive(end) <= wanted) return end;
  return findRoot((y) => primitive(y) - wanted, 1, end).root;
}

/** Soot that the wall of a volume in m³ holds when its collectors have grown to the percolation limit, kg. */
export function wallSootCapacity(
  wallVolume: number,
  { porosity, wallSootDensity, percolationFactor }: Omit<DeepBedWall, 'openShare'>,
): number {
  return wallSootDensity * wallVolume * Math.max(0, percolationFactor ** 3 - (1 - porosity));
}

export interface DeepBedState {
  /** Diameter of the collectors over that in the clean wall. */
  readonly collectorGrowth: number;
  /** Soot inside the wall, kg. */
  readonly wallSootMass: number;
  /** Permeability of the wall with its soot over that of the clean wall. */
  readonly permeabilityRatio: number;
}

/** What a growth of the collectors means for the wall: mass of the grown shells, and Kuwabara's permeability. */
export function deepBedState(sootMass: number, wallVolume: number, wall: DeepBedWall): DeepBedState {
  const growth = collectorGrowth(sootMass, wallVolume, wall);
  const solid = 1 - wall.porosity;
  const scale = wall.wallSootDensity * solid * wallVolume;
  return {
    collectorGrowth: growth,
    wallSootMass: Math.min(sootMass, scale * (growth ** 3 - 1)),
    permeabilityRatio: (growth ** 2 * kuwabaraFactor(1 - solid * growth ** 3)) / kuwabaraFactor(wall.porosity),
  };
}
