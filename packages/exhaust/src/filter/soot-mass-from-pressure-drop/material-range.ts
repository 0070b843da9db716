import { type ConstantValues, constant, optional, quantity } from '@wallflow/calculation';
import { density, fraction, permeability, ratio } from '@wallflow/units';
import { konstandopoulos2000 } from '../../sources.js';
import type { DeepBedMaterial } from '../deep-bed-pressure-drop/kernel.js';
import { sootMaterialInputs, wallInputs } from '../inputs.js';
import { acicularCeramicStudy, deepBedFit, deng2017, yao2023 } from '../sources.js';

/** Material that is taken when none is given, and the published values that bound it. */
export const materialConstants = {
  usualWall: constant(permeability, 3e-13, {
    symbol: 'k_{0,u}',
    label: 'Usual permeability of a bare wall',
    source: acicularCeramicStudy,
  }),
  tightestWall: constant(permeability, 2.4e-13, {
    symbol: 'k_{0,-}',
    label: 'Least permeable published bare wall',
    source: konstandopoulos2000,
  }),
  mostOpenWall: constant(permeability, 1e-12, { symbol: 'k_{0,+}', label: 'Most permeable published bare wall', source: deng2017 }),
  usualSootPermeability: constant(permeability, 2.4e-14, {
    symbol: 'k_{s,u}',
    label: 'Usual permeability of a soot cake',
    source: konstandopoulos2000,
  }),
  tightestSoot: constant(permeability, 1.45e-14, {
    symbol: 'k_{s,-}',
    label: 'Least permeable published soot cake',
    source: yao2023,
  }),
  mostOpenSoot: constant(permeability, 7e-14, {
    symbol: 'k_{s,+}',
    label: 'Most permeable published soot cake',
    source: deng2017,
  }),
  usualSootDensity: constant(density, 95, {
    symbol: '\\rho_{s,u}',
    label: 'Usual packing density of a soot cake',
    source: konstandopoulos2000,
  }),
  lightestSoot: constant(density, 91, {
    symbol: '\\rho_{s,-}',
    label: 'Least packing density published for a soot cake (heavy-duty)',
    source: konstandopoulos2000,
  }),
  densestSoot: constant(density, 121.6, {
    symbol: '\\rho_{s,+}',
    label: 'Greatest packing density published for a soot cake (silicon carbide)',
    source: yao2023,
  }),
  closingPorosity: constant(fraction, 0.5, {
    symbol: '\\varepsilon_-',
    label: 'Porosity of the published wall that soot closed most',
    source: konstandopoulos2000,
  }),
  closingPercolation: constant(ratio, 0.884, { symbol: '\\psi_-', label: 'Percolation factor of that wall', source: deepBedFit }),
  closingSootDensity: constant(density, 8, {
    symbol: '\\rho_{w,-}',
    label: 'Least packing density published for soot inside a wall',
    source: konstandopoulos2000,
  }),
  modelShortfall: constant(fraction, 0.15, {
    symbol: 'e_-',
    label: 'Part of a rise by soot by which a measured curve lay above the closed form',
    source: konstandopoulos2000,
  }),
  modelExcess: constant(fraction, 0.05, {
    symbol: 'e_+',
    label: 'Part of a rise by soot by which a measured curve lay below it',
    source: konstandopoulos2000,
  }),
};

/** The same inputs as elsewhere, but without a default: what is left out makes a range. */
export const materialInputs = {
  wallPermeability: optional(
    quantity(permeability, {
      symbol: 'k_0',
      label: 'Permeability of the clean wall',
      description:
        'From a measurement of this filter when it was surely clean. Leave blank to take 3 × 10⁻¹³ m²; published bare walls from 2.4 × 10⁻¹³ to 10⁻¹² m² then widen the range of the result.',
      range: '1e-15 <= x <= 1e-10 m2',
      usual: [
        '1e-13 m2',
        '1e-12 m2',
        {
          below: 'published bare walls begin at 2.4 × 10⁻¹³ m²; a coated wall can be lower',
          above: 'published bare walls end near 10⁻¹² m²',
        },
      ],
      example: '3e-13 m2',
    }),
  ),
  forchheimerCoefficient: wallInputs.forchheimerCoefficient,
  entranceExitCoefficient: wallInputs.entranceExitCoefficient,
  sootPermeability: optional(
    quantity(permeability, {
      symbol: 'k_s',
      label: 'Permeability of the soot cake',
      description:
        'Leave blank to take 2.4 × 10⁻¹⁴ m²; the published values from 1.45 × 10⁻¹⁴ to 7 × 10⁻¹⁴ m² then make the range of the result.',
      range: '1e-16 <= x <= 1e-11 m2',
      usual: ['1e-14 m2', '1e-13 m2', 'published values run from 1.45 × 10⁻¹⁴ to 7 × 10⁻¹⁴ m²'],
      example: '2.4e-14 m2',
    }),
  ),
  sootPackingDensity: optional(
    quantity(density, {
      symbol: '\\rho_s',
      label: 'Packing density of the soot cake',
      description: 'Leave blank to take 95 kg/m³; the published values from 91 to 122 kg/m³ then go into the range of the result.',
      range: '5 <= x <= 1000 kg/m3',
      usual: ['60 kg/m3', '130 kg/m3', 'published values run from 91 to 122 kg/m³'],
      example: '95 kg/m3',
    }),
  ),
  sootPrimaryDiameter: sootMaterialInputs.sootPrimaryDiameter,
  sootPermeabilityTemperature: sootMaterialInputs.sootPermeabilityTemperature,
} as const;

export interface Material {
  readonly wallPermeability: number;
  readonly sootPermeability: number;
  readonly sootPackingDensity: number;
}

type Given = { readonly [Key in keyof Material]?: number | undefined };

/** The material as given or usual, and the two ends that explain a drop with the least and with the most soot. */
export function materialRange(
  { wallPermeability, sootPermeability, sootPackingDensity }: Given,
  constants: ConstantValues<typeof materialConstants>,
): { readonly usual: Material; readonly leastSoot: Material; readonly mostSoot: Material } {
  const material = (wall: number, soot: number, packing: number) => ({
    wallPermeability: wallPermeability ?? wall,
    sootPermeability: sootPermeability ?? soot,
    sootPackingDensity: sootPackingDensity ?? packing,
  });
  return {
    usual: material(constants.usualWall, constants.usualSootPermeability, constants.usualSootDensity),
    leastSoot: material(constants.tightestWall, constants.tightestSoot, constants.lightestSoot),
    mostSoot: material(constants.mostOpenWall, constants.mostOpenSoot, constants.densestSoot),
  };
}

/**
 * The wall that a little soot closes most of all that were published, and that no ash keeps it out of: what came into the wall
 * before the ash did is still there. With it a drop is explained by the least soot.
 */
export function closedBySoot<M extends DeepBedMaterial>(
  material: M,
  constants: Pick<ConstantValues<typeof materialConstants>, 'closingPorosity' | 'closingPercolation' | 'closingSootDensity'>,
): M {
  return {
    ...material,
    porosity: constants.closingPorosity,
    percolationFactor: constants.closingPercolation,
    wallSootDensity: constants.closingSootDensity,
    coveringThickness: Number.POSITIVE_INFINITY,
  };
}
