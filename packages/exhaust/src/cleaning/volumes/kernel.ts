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
