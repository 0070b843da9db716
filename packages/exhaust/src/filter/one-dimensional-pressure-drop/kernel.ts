import type { LoadedChannels } from '../channel-deposits/kernel.js';
import { type FilterFlow, squareChannelFriction } from '../clean-pressure-drop/kernel.js';
import { wallFlowArea } from '../filter-geometry/kernel.js';
import { ashPlugFriction, type FilterMaterial } from '../loaded-pressure-drop/kernel.js';
import { wallFlowEquation } from './kernel-coefficients.js';
import { outletIntegrals, sampleEvenly } from './kernel-sample.js';
import { solveWallFlow } from './kernel-solve.js';

/** One place along the channels. */
export interface ChannelProfilePoint {
  /** Distance from the inlet, m. */
  readonly position: number;
  /** Velocity in the inlet and in the outlet channel, m/s. */
  readonly inletVelocity: number;
  readonly outletVelocity: number;
  /** Pressure in them above that at the end of the outlet channel, Pa. */
  readonly inletPressure: number;
  readonly outletPressure: number;
  /** Velocity through the wall, m/s. */
  readonly wallVelocity: number;
}

export interface ChannelProfile {
  readonly status: 'converged' | 'not_converged';
  /** From the inlet channel's entrance to the outlet channel's end, Pa. */
  readonly channelDrop: number;
  /** Entrance and exit losses, Pa. */
  readonly contractionDrop: number;
  readonly expansionDrop: number;
  readonly points: readonly ChannelProfilePoint[];
}

/**
 * Velocity, pressure and wall flow along the channels by the two-channel model with inertia, for one density
 * (Bissett 1984; momentum d(p + ρ u²)/dz = -F μ u/α²). Deposits are even along the channel.
 *
 * @param rows - places along the channels, evenly spaced
 */
export function channelProfile(
  loaded: LoadedChannels,
  flow: FilterFlow,
  material: FilterMaterial,
  rows = 21,
  friction = squareChannelFriction,
): ChannelProfile {
  const { channels, widthInCake } = loaded;
  const { inletWidth, outletWidth, inletCount, outletCount } = channels;
  const { equation, wallScale } = wallFlowEquation(loaded, flow, material, friction);
  const { status, mesh } = solveWallFlow(equation);
  const speed = (count: number, width: number) => flow.volumeFlow / (count * width ** 2);
  const plugDrop = ashPlugFriction(loaded, flow, friction);
  const meanWallVelocity = flow.volumeFlow / wallFlowArea(channels);
  const points = sampleEvenly(equation, mesh, outletIntegrals(mesh), rows).map(({ x, q, v, outletIntegral }) => {
    const momentum = (equation.outletInertia / 2) * q * (2 - q);
    const outletPressure = plugDrop + wallScale * (equation.outletFriction * outletIntegral + momentum);
    return {
      position: x * channels.openLength,
      inletVelocity: q * speed(inletCount, widthInCake),
      outletVelocity: (1 - q) * speed(outletCount, outletWidth),
      inletPressure: outletPressure + wallScale * (v + equation.wallInertia * v * Math.abs(v)),
      outletPressure,
      wallVelocity: v * meanWallVelocity,
    };
  });
  const head = (count: number, width: number) => (flow.density * speed(count, width) ** 2) / 2;
  return {
    status,
    channelDrop: points[0]!.inletPressure,
    contractionDrop: (material.entranceExitCoefficient / 3) * head(inletCount, inletWidth),
    expansionDrop: ((2 * material.entranceExitCoefficient) / 3) * head(outletCount, outletWidth),
    points,
  };
}
