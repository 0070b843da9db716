import {
  type CleanDropParts,
  cleanDropParts,
  type FilterFlow,
  squareChannelFriction,
  totalDrop,
  type WallProperties,
} from '../clean-pressure-drop/kernel.js';
import type { FilterChannels } from '../filter-geometry/kernel.js';

export interface WallPermeabilityResult {
  /** m²; undefined when channels and losses alone make the measured drop. */
  readonly wallPermeability: number | undefined;
  /** Part of the drop that is not the wall's Darcy part, Pa. */
  readonly otherDrop: number;
  /** Its parts, Pa. */
  readonly otherParts: Omit<CleanDropParts, 'wallDrop'>;
}

/** Wall permeability from the drop of a clean filter: Konstandopoulos 2000 Eq. A4 solved for k. */
export function wallPermeabilityFromDrop(
  pressureDrop: number,
  channels: FilterChannels,
  flow: FilterFlow,
  wall: Omit<WallProperties, 'wallPermeability'>,
  friction = squareChannelFriction,
): WallPermeabilityResult {
  // With a permeability of 1 the wall part is the product that the permeability divides.
  const parts = cleanDropParts(channels, flow, { ...wall, wallPermeability: 1 }, channels.inletWidth, friction);
  const { wallDrop, ...otherParts } = parts;
  const otherDrop = totalDrop({ ...parts, wallDrop: 0 });
  const left = pressureDrop - otherDrop;
  return { wallPermeability: left > 0 ? wallDrop / left : undefined, otherDrop, otherParts };
}
