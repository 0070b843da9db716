import { type FilterLoad, type LoadedChannels, loadChannels } from '../channel-deposits/kernel.js';
import { type FilterFlow, squareChannelFriction } from '../clean-pressure-drop/kernel.js';
import { type FilterChannels, filtrationArea } from '../filter-geometry/kernel.js';
import { type FilterMaterial, type LoadedDropParts, loadedDropParts } from '../loaded-pressure-drop/kernel.js';
import { type DeepBedState, type DeepBedWall, deepBedState } from './kernel-unit-collector.js';

export interface DeepBedMaterial extends FilterMaterial, Omit<DeepBedWall, 'openShare'> {
  /** Thickness of ash at which no soot reaches the wall any more, m. */
  readonly coveringThickness: number;
}

export interface DeepBedDrop extends DeepBedState {
  /** Part of the wall's surface that the ash leaves open to soot, and the wall behind it, m³. */
  readonly openShare: number;
  readonly wallVolume: number;
  /** Soot in the cake, kg, and the channels with it. */
  readonly cakeSootMass: number;
  readonly loaded: LoadedChannels;
  readonly parts: LoadedDropParts;
}

/**
 * Drop of a filter whose soot first fills the wall and then forms a cake on it (two layers). Undefined when the cake does
 * not fit into the channels.
 */
export function deepBedDrop(
  channels: FilterChannels,
  load: FilterLoad,
  flow: FilterFlow,
  material: DeepBedMaterial,
  friction = squareChannelFriction,
): DeepBedDrop | undefined {
  const ashed = loadChannels(channels, { ...load, sootMass: 0 });
  if (ashed === undefined) return undefined;
  const openShare = Math.max(0, 1 - ashed.ashThickness / material.coveringThickness);
  const wallVolume = filtrationArea(ashed.channels) * channels.wallThickness;
  const state = deepBedState(load.sootMass, wallVolume, { ...material, openShare });
  const cakeSootMass = load.sootMass - state.wallSootMass;
  const loaded = loadChannels(channels, { ...load, sootMass: cakeSootMass });
  if (loaded === undefined) return undefined;
  const wall = { ...material, wallPermeability: material.wallPermeability * state.permeabilityRatio };
  return { ...state, openShare, wallVolume, cakeSootMass, loaded, parts: loadedDropParts(loaded, flow, wall, friction) };
}
