/** Parts of water per part of concentrate from a share of concentrate by volume. */
export function partsFromVolumeShare(share: number): number {
  return (1 - share) / share;
}

export interface MassShareInput {
  /** Share of concentrate by mass. */
  readonly massShare: number;
  /** Densities, kg/m³. */
  readonly concentrateDensity: number;
  readonly waterDensity: number;
}

/** Parts of water per part of concentrate by volume from a share by mass: each mass over its density. */
export function partsFromMassShare({ massShare, concentrateDensity, waterDensity }: MassShareInput): number {
  return ((1 - massShare) / waterDensity) * (concentrateDensity / massShare);
}

/** Share by mass of a mix of one part of concentrate and `parts` of water by volume. */
export function massShareFromParts(parts: number, concentrateDensity: number, waterDensity: number): number {
  return concentrateDensity / (concentrateDensity + parts * waterDensity);
}
