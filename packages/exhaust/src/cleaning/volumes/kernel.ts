export interface CleaningVolumesInput {
  /** Open volume of the inlet channels, m³. */
  readonly inletVolume: number;
  /** Liquid per pass as a share of that volume. */
  readonly fillShare: number;
  readonly passes: number;
  /** Parts of water to one part of concentrate. */
  readonly dilutionRatio: number;
}

export interface CleaningVolumes {
  /** All in m³. */
  readonly volumePerPass: number;
  readonly mixVolume: number;
  readonly concentrateVolume: number;
  readonly waterVolume: number;
}

/** Volumes of a cleaning mix that is 1:n by parts; volumes are taken as additive. */
export function cleaningVolumes({ inletVolume, fillShare, passes, dilutionRatio }: CleaningVolumesInput): CleaningVolumes {
  const volumePerPass = inletVolume * fillShare;
  const mixVolume = volumePerPass * passes;
  const concentrateVolume = mixVolume / (1 + dilutionRatio);
  return { volumePerPass, mixVolume, concentrateVolume, waterVolume: mixVolume - concentrateVolume };
}

export interface Bottle {
  /** Mix that the concentrate at hand makes, m³. */
  readonly mixAtHand: number;
  /** Whole passes of the planned size. */
  readonly passesAtHand: number;
  /** Mix per pass in m³, and the share of the open inlet volume that it fills, if all is shared among the passes. */
  readonly mixPerPassAtHand: number;
  readonly fillAtHand: number;
  readonly bottle: 'enough' | 'thin' | 'short';
}

/** Least fill of a pass that common practice knows, as a share of the open inlet volume. */
const leastFill = 0.3;

/** How far a volume of concentrate in m³ goes: for all passes, for all with less in each, or for fewer. */
export function bottleFor(concentrate: number, needed: CleaningVolumes, input: CleaningVolumesInput): Bottle {
  const mixAtHand = concentrate * (1 + input.dilutionRatio);
  const mixPerPassAtHand = mixAtHand / input.passes;
  const fillAtHand = mixPerPassAtHand / input.inletVolume;
  return {
    mixAtHand,
    passesAtHand: Math.floor(mixAtHand / needed.volumePerPass),
    mixPerPassAtHand,
    fillAtHand,
    bottle: mixAtHand >= needed.mixVolume ? 'enough' : fillAtHand >= leastFill ? 'thin' : 'short',
  };
}
