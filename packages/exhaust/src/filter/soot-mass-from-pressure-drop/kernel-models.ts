import { type FilterLoad, fillingSootMass, loadChannels } from '../channel-deposits/kernel.js';
import { type FilterFlow, squareChannelFriction, totalDrop } from '../clean-pressure-drop/kernel.js';
import { type DeepBedMaterial, deepBedDrop } from '../deep-bed-pressure-drop/kernel.js';
import { wallSootCapacity } from '../deep-bed-pressure-drop/kernel-unit-collector.js';
import { type FilterChannels, filtrationArea } from '../filter-geometry/kernel.js';
import { type FilterMaterial, loadedDropParts } from '../loaded-pressure-drop/kernel.js';
import { channelProfile } from '../one-dimensional-pressure-drop/kernel.js';
import { type SootMassResult, sootMassForDrop } from './kernel.js';

/** Soot mass from a drop with the closed form for even wall flow (Konstandopoulos 2000 Eq. 1). */
export function sootMassFromClosedForm(
  pressureDrop: number,
  channels: FilterChannels,
  flow: FilterFlow,
  material: FilterMaterial,
  load: FilterLoad,
  friction = squareChannelFriction,
  sootPart = 1,
): SootMassResult {
  const dropOf = (sootMass: number) => {
    const loaded = loadChannels(channels, { ...load, sootMass });
    return loaded && totalDrop(loadedDropParts(loaded, flow, material, friction));
  };
  return sootMassForDrop(pressureDrop, dropOf, fillingSootMass(channels, load), sootPart);
}

/**
 * Part of the soot that fills the channels up to which the one-dimensional model is asked: a tenth of the width is then open. In
 * what is left beyond, a profile takes long or is not found, and no engine gives such a drop.
 */
const fullestProfile = 0.99;

/** Soot mass from a drop with the one-dimensional two-channel model. */
export function sootMassFromOneDimensional(
  pressureDrop: number,
  channels: FilterChannels,
  flow: FilterFlow,
  material: FilterMaterial,
  load: FilterLoad,
  friction = squareChannelFriction,
  sootPart = 1,
): SootMassResult {
  const dropOf = (sootMass: number) => {
    const loaded = loadChannels(channels, { ...load, sootMass });
    const profile = loaded && channelProfile(loaded, flow, material, 2, friction);
    if (profile?.status !== 'converged') return undefined;
    return profile.channelDrop + profile.contractionDrop + profile.expansionDrop;
  };
  return sootMassForDrop(pressureDrop, dropOf, fillingSootMass(channels, load), sootPart, fullestProfile);
}

/** Soot mass from a drop with soot in the wall and in a cake on it. */
export function sootMassFromDeepBed(
  pressureDrop: number,
  channels: FilterChannels,
  flow: FilterFlow,
  material: DeepBedMaterial,
  load: FilterLoad,
  friction = squareChannelFriction,
  sootPart = 1,
): SootMassResult {
  const dropOf = (sootMass: number) => {
    const result = deepBedDrop(channels, { ...load, sootMass }, flow, material, friction);
    return result && totalDrop(result.parts);
  };
  const inWall = wallSootCapacity(filtrationArea(channels) * channels.wallThickness, material);
  return sootMassForDrop(pressureDrop, dropOf, fillingSootMass(channels, load) + inWall, sootPart);
}
