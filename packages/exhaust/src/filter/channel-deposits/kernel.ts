import type { FilterChannels } from '../filter-geometry/kernel.js';

/** What has collected in the inlet channels. */
export interface FilterLoad {
  /** Soot in the whole filter, kg. */
  readonly sootMass: number;
  /** Ash in the whole filter, kg. */
  readonly ashMass: number;
  /** Part of the ash that lies as a plug at the channel end; the rest is a layer on the walls. */
  readonly ashPlugShare: number;
  /** Packing density of the soot cake, kg/m³. */
  readonly sootPackingDensity: number;
  /** Packing density of the ash, kg/m³. */
  readonly ashPackingDensity: number;
}

/** The inlet channels with their deposits. */
export interface LoadedChannels {
  /** The same channels, as short as the ash plug leaves them. */
  readonly channels: FilterChannels;
  /** Length of the ash plug, m. */
  readonly ashPlugLength: number;
  /** Width of the square with the area that the ash layer leaves open, m. */
  readonly widthOnAsh: number;
  /** The same inside the soot cake, m. */
  readonly widthInCake: number;
  /** Part of the channel's open cross-section that the ash layer fills, and part of what is left that the soot cake fills. */
  readonly ashFill: number;
  readonly sootFill: number;
  /** Thickness of the ash layer on a filtering wall, m. */
  readonly ashThickness: number;
  /** Thickness of the soot cake on it, m. */
  readonly sootThickness: number;
}

/** Part of the channels' cross-section, a square of a width, that a mass fills: Konstandopoulos 2000 Eq. A9. */
function filledPart(width: number, mass: number, density: number, { inletCount, openLength }: FilterChannels): number {
  return mass / (density * inletCount * openLength * width ** 2);
}

/** Thickness of a layer that fills a part of a square: Konstandopoulos 2000 Eq. A10, written so that a thin one keeps its digits. */
function thickness(channels: FilterChannels, width: number, filled: number): number {
  // On four walls the layer narrows towards the middle; on fewer it lies flat.
  if (channels.filteringSides === 4) return (width * filled) / (2 * (1 + Math.sqrt(1 - filled)));
  return (width ** 2 * filled) / (channels.filteringSides * channels.inletWidth);
}

/**
 * Ash plug, ash layer, soot cake, each even along the channel. Undefined when they do not fit into the inlet channels.
 */
export function loadChannels(channels: FilterChannels, load: FilterLoad): LoadedChannels | undefined {
  const { inletWidth, inletCount } = channels;
  const ashPlugLength = (load.ashPlugShare * load.ashMass) / (load.ashPackingDensity * inletCount * inletWidth ** 2);
  const shortened = { ...channels, openLength: channels.openLength - ashPlugLength };
  if (!(shortened.openLength > 0)) return undefined;
  const ashFill = filledPart(inletWidth, (1 - load.ashPlugShare) * load.ashMass, load.ashPackingDensity, shortened);
  const widthOnAsh = inletWidth * Math.sqrt(1 - ashFill);
  const sootFill = filledPart(widthOnAsh, load.sootMass, load.sootPackingDensity, shortened);
  const widthInCake = widthOnAsh * Math.sqrt(1 - sootFill);
  const ashThickness = thickness(shortened, inletWidth, ashFill);
  const sootThickness = thickness(shortened, widthOnAsh, sootFill);
  // Opposite layers meet in the middle of the channel.
  if (!(widthInCake > 0 && ashThickness + sootThickness < inletWidth / 2)) return undefined;
  return { channels: shortened, ashPlugLength, ashFill, sootFill, widthOnAsh, widthInCake, ashThickness, sootThickness };
}

/** Soot mass that would fill the inlet channels, kg; a drop is not defined from there on. */
export function fillingSootMass(channels: FilterChannels, load: FilterLoad): number {
  const empty = loadChannels(channels, { ...load, sootMass: 0 });
  if (empty === undefined) return 0;
  const { filteringSides, inletWidth, inletCount, openLength } = empty.channels;
  // Flat layers meet before the channel's whole area is full.
  const flat = filteringSides * inletWidth * (inletWidth / 2 - empty.ashThickness);
  const area = filteringSides === 4 ? empty.widthOnAsh ** 2 : Math.min(empty.widthOnAsh ** 2, flat);
  return area * inletCount * openLength * load.sootPackingDensity;
}
