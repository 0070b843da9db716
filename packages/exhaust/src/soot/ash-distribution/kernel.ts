/** Inlet channels of a filter of square cells. */
export interface AshChannels {
  /** Filter volume in m³. */
  readonly filterVolume: number;
  /** Depth of a clean inlet channel in m. */
  readonly channelLength: number;
  /** Clear width of a channel in m. */
  readonly channelWidth: number;
  /** Cells per area in 1/m², inlet and outlet together. */
  readonly cellDensity: number;
}

/** Share of the filter's cross-section that is open inlet channel: α² σ / 2. */
export function inletOpenFraction({ channelWidth, cellDensity }: AshChannels): number {
  return (channelWidth ** 2 * cellDensity) / 2;
}

/** Share of the channel depth that an end plug of ash takes; above 1 it does not fit. */
export function plugShare(ash: number, density: number, channels: AshChannels): number {
  return ash / (density * channels.filterVolume * inletOpenFraction(channels));
}

/** Ash in kg of an end plug that takes a share of the channel depth. */
export function plugAsh(share: number, density: number, channels: AshChannels): number {
  return share * density * channels.filterVolume * inletOpenFraction(channels);
}

/** Share of the inlet channels over the free part of the depth that an even layer of ash fills; from 1 it does not fit. */
export function layerFill(ash: number, density: number, freeShare: number, channels: AshChannels): number {
  return ash / (density * channels.filterVolume * inletOpenFraction(channels) * freeShare);
}

/**
 * Thickness in m of an even layer of ash on the walls of the inlet channels over the part of the depth that is free of the
 * plug: volume of a channel's layer 4 w (α − w) L (Konstandopoulos et al. 2000, Eqs A9 and A10). Undefined when it does not fit.
 */
export function layerThickness(ash: number, density: number, freeShare: number, channels: AshChannels): number | undefined {
  if (ash === 0) return 0;
  const { channelWidth } = channels;
  const filled = layerFill(ash, density, freeShare, channels);
  if (!(filled < 1)) return undefined;
  // (α − √(α² − α² f)) / 2 without loss of digits for a thin layer.
  return (channelWidth * filled) / (2 * (1 + Math.sqrt(1 - filled)));
}
