import type { LoadedChannels } from '../channel-deposits/kernel.js';
import { type FilterFlow, squareChannelFriction } from '../clean-pressure-drop/kernel.js';
import { wallFlowArea } from '../filter-geometry/kernel.js';
import { type FilterMaterial, layerResistance } from '../loaded-pressure-drop/kernel.js';
import type { WallFlowEquation } from './kernel-equation.js';

/** The equation's numbers and the viscous wall drop at even flow in Pa that scales them. */
export function wallFlowEquation(
  { channels, ashFill, widthOnAsh, sootFill, widthInCake }: LoadedChannels,
  { volumeFlow, viscosity, density }: FilterFlow,
  material: FilterMaterial,
  friction = squareChannelFriction,
): { equation: WallFlowEquation; wallScale: number } {
  const { inletWidth, outletWidth, wallThickness, wallWidth, openLength, inletCount, outletCount } = channels;
  const meanWallVelocity = volumeFlow / wallFlowArea(channels);
  const layers =
    layerResistance(channels, widthOnAsh, sootFill, material.sootPermeability) +
    layerResistance(channels, inletWidth, ashFill, material.ashPermeability);
  // The layers see the velocity at the inlet face, which is lower where the inlet channel is the wider one.
  const resistance = wallThickness / material.wallPermeability + (layers * wallWidth) / inletWidth;
  const wallScale = viscosity * meanWallVelocity * resistance;
  const frictionScale = (width: number, count: number) =>
    (friction * viscosity * volumeFlow * openLength) / (count * width ** 4 * wallScale);
  const inertiaScale = (width: number, count: number) => (2 * density * (volumeFlow / (count * width ** 2)) ** 2) / wallScale;
  const equation = {
    inletFriction: frictionScale(widthInCake, inletCount),
    outletFriction: frictionScale(outletWidth, outletCount),
    inletInertia: inertiaScale(widthInCake, inletCount),
    outletInertia: inertiaScale(outletWidth, outletCount),
    wallInertia: (material.forchheimerCoefficient * density * meanWallVelocity ** 2 * wallThickness) / wallScale,
  };
  return { equation, wallScale };
}
