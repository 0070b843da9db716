import type { LoadedChannels } from '../channel-deposits/kernel.js';
import {
  type CleanDropParts,
  cleanDropParts,
  type FilterFlow,
  squareChannelFriction,
  type WallProperties,
} from '../clean-pressure-drop/kernel.js';
import { type FilterChannels, filtrationArea } from '../filter-geometry/kernel.js';

export interface FilterMaterial extends WallProperties {
  /** Darcy permeability of the soot cake, m². */
  readonly sootPermeability: number;
  /** Darcy permeability of the ash layer, m². */
  readonly ashPermeability: number;
}

/** The parts of the drop of a loaded filter, Pa. */
export interface LoadedDropParts extends CleanDropParts {
  readonly sootDrop: number;
  readonly ashDrop: number;
}

/**
 * Drop over μ and wall velocity of a layer that fills a part of a square of a width, 1/m: Konstandopoulos 2000 Eq. A12, and a
 * flat layer where not all four walls filter.
 */
export function layerResistance(channels: FilterChannels, outer: number, filled: number, permeability: number): number {
  const { filteringSides, inletWidth } = channels;
  if (filteringSides === 4) return (inletWidth * Math.log(1 / (1 - filled))) / (4 * permeability);
  return (outer ** 2 * filled) / (filteringSides * inletWidth * permeability);
}

/** Friction of the whole flow in the outlet channels beside the ash plugs, Pa. */
export function ashPlugFriction({ channels, ashPlugLength }: LoadedChannels, flow: FilterFlow, friction = squareChannelFriction): number {
  return (friction * flow.viscosity * flow.volumeFlow * ashPlugLength) / (channels.outletCount * channels.outletWidth ** 4);
}

/**
 * Drop of a filter with a soot cake on an ash layer in its parts, Konstandopoulos 2000 Eqs 1 and A8 to A15. What an ash
 * plug takes from the filtering length, the outlet channels pass with all of the flow.
 */
export function loadedDropParts(
  loaded: LoadedChannels,
  flow: FilterFlow,
  material: FilterMaterial,
  friction = squareChannelFriction,
): LoadedDropParts {
  const { channels, ashFill, widthOnAsh, sootFill, widthInCake } = loaded;
  const clean = cleanDropParts(channels, flow, material, widthInCake, friction);
  const viscousVelocity = (flow.viscosity * flow.volumeFlow) / filtrationArea(channels);
  return {
    ...clean,
    outletChannelDrop: clean.outletChannelDrop + ashPlugFriction(loaded, flow, friction),
    sootDrop: viscousVelocity * layerResistance(channels, widthOnAsh, sootFill, material.sootPermeability),
    ashDrop: viscousVelocity * layerResistance(channels, channels.inletWidth, ashFill, material.ashPermeability),
  };
}
