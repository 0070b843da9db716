import { inconsistentInputs, known, type Refusal, say } from '@wallflow/calculation';
import { gasDensity } from '../gas/density/kernel.js';
import { sutherlandViscosity } from '../gas/dynamic-viscosity/kernel.js';
import { meanFreePath } from '../gas/mean-free-path/kernel.js';
import type { FilterConstantValues } from './constants.js';
import { type FilterChannels, type FilterLayout, filterChannels, touchingWidthRatio } from './filter-geometry/kernel.js';
import { slipCorrectedPermeability } from './slip-correction/kernel.js';

export interface GeometryValues {
  readonly cellDensity: number;
  readonly wallThickness: number;
  readonly filterDiameter?: number | undefined;
  readonly filterVolume?: number | undefined;
  readonly filterLength: number;
  readonly plugLength: number;
  readonly layout: FilterLayout;
  readonly inletWidthRatio: number;
}

export interface ResolvedGeometry {
  readonly frontalArea: number;
  readonly filterVolume: number;
  readonly channels: FilterChannels;
}

/** Size and channels from the inputs, or why they do not fit together. */
export function resolveGeometry(input: GeometryValues): ResolvedGeometry | Refusal {
  const { filterDiameter, filterVolume, filterLength } = input;
  const fromDiameter = filterDiameter === undefined ? undefined : (Math.PI / 4) * filterDiameter ** 2 * filterLength;
  const given = known(filterVolume ?? fromDiameter);
  if (fromDiameter !== undefined && Math.abs(fromDiameter / given - 1) > 0.05) {
    return inconsistentInputs(
      'Diameter and length contradict the volume. Enter either the diameter or the volume; for an oval filter, the volume.',
      ['filterDiameter'],
      ['filterVolume'],
    );
  }
  if (input.layout === 'three-to-one' && input.inletWidthRatio !== 1) {
    return inconsistentInputs(
      'With three inlet cells for each outlet cell only equal cells are described.',
      ['layout'],
      ['inletWidthRatio'],
    );
  }
  if (!(input.filterLength > 2 * input.plugLength)) {
    return inconsistentInputs('The two plugs are longer than the filter.', ['plugLength'], ['filterLength']);
  }
  const touching = touchingCells(input);
  if (touching !== undefined) return touching;
  const frontalArea = given / filterLength;
  const channels = filterChannels({ ...input, frontalArea });
  if (channels === undefined) {
    return inconsistentInputs('The walls are as thick as the cells are wide: nothing is left open.', ['wallThickness'], ['cellDensity']);
  }
  return { frontalArea, filterVolume: given, channels };
}

/** Why square cells of such unequal widths do not fit side by side, or undefined when they do. */
function touchingCells({ cellDensity, wallThickness, inletWidthRatio: ratio }: GeometryValues): Refusal | undefined {
  const greatest = touchingWidthRatio(cellDensity, wallThickness);
  if (Math.max(ratio, 1 / ratio) < greatest) return undefined;
  // Rounded to the side that is possible.
  const limit = ratio > 1 ? Math.ceil(100 * greatest - 1) / 100 : Math.floor(100 / greatest + 1) / 100;
  const text =
    ratio > 1
      ? say`Inlet cells that wide run into each other at their corners. With this cell density and wall the ratio can be at most ${limit}.`
      : say`Outlet cells that wide run into each other at their corners. With this cell density and wall the ratio must be at least ${limit}.`;
  return inconsistentInputs(text, ['inletWidthRatio'], ['wallThickness'], ['cellDensity']);
}

interface GasValues {
  readonly gasTemperature: number;
  readonly gasViscosity?: number | undefined;
}

/** The viscosity given, or that of air at the temperature. */
export function resolveViscosity(
  { gasViscosity, gasTemperature }: GasValues,
  constants: Omit<FilterConstantValues, 'gasConstant' | 'airMolarMass'>,
): number {
  return gasViscosity ?? sutherlandViscosity(gasTemperature, constants);
}

interface DensityValues {
  readonly gasTemperature: number;
  readonly gasPressure: number;
  readonly gasDensity?: number | undefined;
}

/** The density given, or that of air at the temperature and pressure. */
export function resolveDensity(
  input: DensityValues,
  { gasConstant, airMolarMass }: Pick<FilterConstantValues, 'gasConstant' | 'airMolarMass'>,
): number {
  const air = { temperature: input.gasTemperature, pressure: input.gasPressure, molarMass: airMolarMass };
  return input.gasDensity ?? gasDensity(air, gasConstant);
}

interface SootPermeabilityValues {
  readonly sootPermeability: number;
  readonly sootPrimaryDiameter?: number | undefined;
  /** Counts, and is there, with the diameter of the primary particles. */
  readonly sootPermeabilityTemperature?: number | undefined;
  readonly gasTemperature: number;
  readonly gasPressure: number;
}

/** The cake's permeability as given, or corrected for gas slip when the size of the primary particles is known. */
export function resolveSootPermeability(
  input: SootPermeabilityValues,
  viscosity: number,
  constants: FilterConstantValues & { readonly slipReferencePressure: number },
): number {
  if (input.sootPrimaryDiameter === undefined) return input.sootPermeability;
  const path = (pathViscosity: number, pressure: number, temperature: number) =>
    meanFreePath({ viscosity: pathViscosity, pressure, temperature }, constants.airMolarMass, constants.gasConstant);
  const found = known(input.sootPermeabilityTemperature);
  const knownPath = path(sutherlandViscosity(found, constants), constants.slipReferencePressure, found);
  const newPath = path(viscosity, input.gasPressure, input.gasTemperature);
  return slipCorrectedPermeability(input.sootPermeability, input.sootPrimaryDiameter, knownPath, newPath);
}
