/** How the cells of a wall-flow filter are plugged. */
export type FilterLayout = 'alternate' | 'three-to-one';

export interface FilterGeometryInput {
  /** Cells per face area, inlet and outlet cells together, 1/m². */
  readonly cellDensity: number;
  /** Thickness of the wall between two cells, m. */
  readonly wallThickness: number;
  /** Area of the whole face, m². */
  readonly frontalArea: number;
  /** Length of the body with its plugs, m. */
  readonly filterLength: number;
  /** Length of one plug, m; there is one at either end. */
  readonly plugLength: number;
  readonly layout: FilterLayout;
  /** Clear width of an inlet cell over that of an outlet cell; 1 with `three-to-one`. */
  readonly inletWidthRatio: number;
}

/** The channels of a wall-flow filter, as every pressure-drop kernel takes them. */
export interface FilterChannels {
  /** Clear width of an inlet channel, m. */
  readonly inletWidth: number;
  /** Clear width of an outlet channel, m. */
  readonly outletWidth: number;
  /** Wall thickness, m. */
  readonly wallThickness: number;
  /** Width over which gas passes the wall: that of the narrower channel, m. */
  readonly wallWidth: number;
  /** Length over which gas passes the wall, m. */
  readonly openLength: number;
  readonly inletCount: number;
  readonly outletCount: number;
  /** Walls of an inlet channel that have an outlet channel behind them, on average. */
  readonly filteringSides: number;
}

/** Pitch of the cells, m: Konstandopoulos 2000 Eq. A3. */
export function cellPitch(cellDensity: number): number {
  return 1 / Math.sqrt(cellDensity);
}

/**
 * The ratio of the wider to the narrower width at which square cells of one pitch s touch their diagonal neighbours.
 *
 * Cells of one sort stand on a checkerboard, s apart in either direction along the diagonal, so that a width a leaves
 * √2 (s - a) of wall between their corners. With a + b = 2 (s - w) and a = r b, a < s means r < s/(s - 2w). With walls of
 * half a pitch or more no cell gets as wide as the pitch.
 */
export function touchingWidthRatio(cellDensity: number, wallThickness: number): number {
  const pitch = cellPitch(cellDensity);
  return pitch > 2 * wallThickness ? pitch / (pitch - 2 * wallThickness) : Infinity;
}

/** Wall left between the corners of diagonal neighbours of the wider sort, m. */
export function cornerWall(cellDensity: number, { inletWidth, outletWidth }: FilterChannels): number {
  return Math.SQRT2 * (cellPitch(cellDensity) - Math.max(inletWidth, outletWidth));
}

/**
 * Channels of a filter with square cells, Konstandopoulos 2000 Eq. A3: the pitch is 1/√σ, and the clear widths of an
 * inlet and an outlet cell and two walls make two pitches. Undefined when no cell, no open length, or no wall between
 * diagonal neighbours is left.
 *
 * With three inlet cells per outlet cell a quarter of the cells are outlets; each has four inlet neighbours, so that an
 * inlet cell has 4/3 filtering walls on average.
 */
export function filterChannels(input: FilterGeometryInput): FilterChannels | undefined {
  const { cellDensity, wallThickness, frontalArea, filterLength, plugLength, layout, inletWidthRatio } = input;
  const meanWidth = cellPitch(cellDensity) - wallThickness;
  const openLength = filterLength - 2 * plugLength;
  const widerRatio = Math.max(inletWidthRatio, 1 / inletWidthRatio);
  if (!(meanWidth > 0 && openLength > 0 && widerRatio < touchingWidthRatio(cellDensity, wallThickness))) return undefined;
  const outletWidth = (2 * meanWidth) / (1 + inletWidthRatio);
  const outletShare = layout === 'alternate' ? 1 / 2 : 1 / 4;
  const cells = frontalArea * cellDensity;
  const inletWidth = inletWidthRatio * outletWidth;
  return {
    inletWidth,
    outletWidth,
    wallThickness,
    wallWidth: Math.min(inletWidth, outletWidth),
    openLength,
    inletCount: cells * (1 - outletShare),
    outletCount: cells * outletShare,
    filteringSides: (4 * outletShare) / (1 - outletShare),
  };
}

/** Wall area that soot settles on, the inlet side of the filtering walls, m². */
export function filtrationArea({ filteringSides, inletWidth, openLength, inletCount }: FilterChannels): number {
  return filteringSides * inletWidth * openLength * inletCount;
}

/**
 * Area over which gas passes the wall, m²: as the filtration area, with the width of the narrower channel. With cells up to
 * 1.4 times as wide a two-dimensional solution of Darcy's law passes 3 to 6 % more than that, relative to equal cells.
 */
export function wallFlowArea({ filteringSides, wallWidth, openLength, inletCount }: FilterChannels): number {
  return filteringSides * wallWidth * openLength * inletCount;
}

/** Volume of the empty inlet channels, m³. */
export function inletVoidVolume({ inletWidth, openLength, inletCount }: FilterChannels): number {
  return inletWidth ** 2 * openLength * inletCount;
}
