import { findRoot } from '@wallflow/numerics';
import { type FilterLoad, fillingSootMass, loadChannels } from '../channel-deposits/kernel.js';
import { type FilterFlow, squareChannelFriction, totalDrop } from '../clean-pressure-drop/kernel.js';
import type { FilterChannels } from '../filter-geometry/kernel.js';
import { type FilterMaterial, loadedDropParts } from '../loaded-pressure-drop/kernel.js';

/** Drop as a function of the soot mass in kg, in Pa; undefined where the soot does not fit. */
export type DropOfSoot = (sootMass: number) => number | undefined;

export type SootMassResult =
  | { readonly status: 'found'; readonly sootMass: number; readonly dropWithoutSoot: number }
  /** The filter with its ash alone reads more than was measured. */
  | { readonly status: 'below_clean'; readonly dropWithoutSoot: number }
  /** The ash alone fills the channels. */
  | { readonly status: 'no_room' }
  | { readonly status: 'not_found' };

/**
 * Soot mass at which a drop model gives the measured drop. The models rise steadily with soot and grow without bound
 * towards full channels, so that there is one solution or none.
 *
 * @param fullMass - soot that fills the channels, kg
 */
export function sootMassForDrop(pressureDrop: number, dropOf: DropOfSoot, fullMass: number): SootMassResult {
  const dropWithoutSoot = fullMass > 0 ? dropOf(0) : undefined;
  if (dropWithoutSoot === undefined) return { status: 'no_room' };
  if (pressureDrop < dropWithoutSoot) return { status: 'below_clean', dropWithoutSoot };
  let upper = 0.5;
  // Close in on full channels until the model reads more than was measured.
  while ((dropOf(upper * fullMass) ?? Infinity) < pressureDrop) {
    upper = (1 + upper) / 2;
    if (1 - upper < 1e-12) return { status: 'not_found' };
  }
  const top = dropOf(upper * fullMass) === undefined ? undefined : upper * fullMass;
  if (top === undefined) return { status: 'not_found' };
  const root = findRoot((mass) => (dropOf(mass) ?? Number.NaN) - pressureDrop, 0, top);
  return root.status === 'converged' ? { status: 'found', sootMass: root.root, dropWithoutSoot } : { status: 'not_found' };
}

/** As {@link sootMassForDrop}, with the closed form for even wall flow (Konstandopoulos 2000 Eq. 1). */
export function sootMassFromClosedForm(
  pressureDrop: number,
  channels: FilterChannels,
  flow: FilterFlow,
  material: FilterMaterial,
  load: FilterLoad,
  friction = squareChannelFriction,
): SootMassResult {
  const dropOf: DropOfSoot = (sootMass) => {
    const loaded = loadChannels(channels, { ...load, sootMass });
    return loaded && totalDrop(loadedDropParts(loaded, flow, material, friction));
  };
  return sootMassForDrop(pressureDrop, dropOf, fillingSootMass(channels, load));
}
