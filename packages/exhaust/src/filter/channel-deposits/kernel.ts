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
  /** Thickness of the ash layer on a filtering wall, m. */
  readonly ashThickness: number;
  /** Thickness of the soot cake on it, m. */
  readonly sootThickness: number;
}

/** Width of the square that is left after a mass has settled along a channel: Konstandopoulos 2000 Eqs A9 and A10. */
function widthAfter(width: number, mass: number, density: number, { inletCount, openLength }: FilterChannels): number {
  return Math.sqrt(width ** 2 - mass / (inletCount * openLength * density));
}

function thickness(channels: FilterChannels, outer: number, inner: number): number {
  // On four walls the layer narrows towards the middle; on fewer it lies flat.
  if (channels.filteringSides === 4) return (outer - inner) / 2;
  return (outer ** 2 - inner ** 2) / (channels.filteringSides * channels.inletWidth);
}

/**
 * Ash plug, ash layer, soot cake, each even along the channel. Undefined when they do not fit into the inlet channels.
 */
export function loadChannels(channels: FilterChannels, load: FilterLoad): LoadedChannels | undefined {
  const { inletWidth, inletCount } = channels;
  const ashPlugLength = (load.ashPlugShare * load.ashMass) / (load.ashPackingDensity * inletCount * inletWidth ** 2);
  const shortened = { ...channels, openLength: channels.openLength - ashPlugLength };
  if (!(shortened.openLength > 0)) return undefined;
  const widthOnAsh = widthAfter(inletWidth, (1 - load.ashPlugShare) * load.ashMass, load.ashPackingDensity, shortened);
  const widthInCake = widthAfter(widthOnAsh, load.sootMass, load.sootPackingDensity, shortened);
  const ashThickness = thickness(shortened, inletWidth, widthOnAsh);
  const sootThickness = thickness(shortened, widthOnAsh, widthInCake);
  // Opposite layers meet in the middle of the channel.
  if (!(widthInCake > 0 && ashThickness + sootThickness < inletWidth / 2)) return undefined;
  return { channels: shortened, ashPlugLength, widthOnAsh, widthInCake, ashThickness, sootThickness };
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
