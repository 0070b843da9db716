import { type FilterChannels, wallFlowArea } from '../filter-geometry/kernel.js';

/** Friction factor of a square channel: dp/dx = F μ u / α², F = 2 · 14.227 (Konstandopoulos 2008 Eqs 5 and 6). */
export const squareChannelFriction = 28.454;

/** The gas in the filter. */
export interface FilterFlow {
  /** Actual volume flow at filter temperature and pressure, m³/s. */
  readonly volumeFlow: number;
  /** Dynamic viscosity, Pa·s. */
  readonly viscosity: number;
  /** Density, kg/m³. */
  readonly density: number;
}

export interface WallProperties {
  /** Darcy permeability of the wall, m². */
  readonly wallPermeability: number;
  /** Forchheimer coefficient of the wall, 1/m. */
  readonly forchheimerCoefficient: number;
  /** Contraction and expansion loss together, on the dynamic head in the empty channels. */
  readonly entranceExitCoefficient: number;
}

/** The parts of the drop of a clean filter, Pa. */
export interface CleanDropParts {
  readonly wallDrop: number;
  readonly inletChannelDrop: number;
  readonly outletChannelDrop: number;
  readonly contractionDrop: number;
  readonly expansionDrop: number;
  readonly forchheimerDrop: number;
}

/**
 * Drop of a clean filter in its parts: Konstandopoulos 2000 Eqs A1 and A4, 2008 Eq. 8, written with the wall area and
 * the two channel counts so that unequal cells are covered. The flow through the wall is even along the channel, hence
 * one third of the friction at full velocity in either channel.
 *
 * @param inletWidth - width that deposits leave open in the inlet channels, m; the clear width when clean
 */
export function cleanDropParts(
  channels: FilterChannels,
  { volumeFlow, viscosity, density }: FilterFlow,
  wall: WallProperties,
  inletWidth = channels.inletWidth,
  friction = squareChannelFriction,
): CleanDropParts {
  const { outletWidth, wallThickness, openLength, inletCount, outletCount } = channels;
  const wallVelocity = volumeFlow / wallFlowArea(channels);
  const head = (width: number, count: number) => (density * (volumeFlow / (count * width ** 2)) ** 2) / 2;
  const channelDrop = (width: number, count: number) => (friction * viscosity * volumeFlow * openLength) / (3 * count * width ** 4);
  const loss = wall.entranceExitCoefficient;
  return {
    wallDrop: (viscosity * wallVelocity * wallThickness) / wall.wallPermeability,
    inletChannelDrop: channelDrop(inletWidth, inletCount),
    outletChannelDrop: channelDrop(outletWidth, outletCount),
    // Konstandopoulos 2008 Eqs A.3 to A.9 give the exit two thirds of the loss and the entrance one third.
    contractionDrop: (loss / 3) * head(channels.inletWidth, inletCount),
    expansionDrop: ((2 * loss) / 3) * head(outletWidth, outletCount),
    forchheimerDrop: wall.forchheimerCoefficient * density * wallVelocity ** 2 * wallThickness,
  };
}

/** Sum of the parts of a drop, Pa. */
export function totalDrop(parts: CleanDropParts): number {
  return Object.values(parts).reduce((sum: number, part: number) => sum + part, 0);
}
