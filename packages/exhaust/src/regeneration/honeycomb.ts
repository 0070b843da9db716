import { cases, choice, constant, optional, quantity, quantityOutput } from '@wallflow/calculation';
import { density, specificHeatCapacity } from '@wallflow/units';
import { cordieriteHoneycomb, siliconCarbideHoneycomb } from './simulation/kernel-substrate.js';
import { honeycombData } from './sources.js';

/** What the heat of a honeycomb depends on, the same in every calculation that heats one. */
export const honeycombInputs = {
  substrate: choice({
    label: 'Filter material',
    options: { 'silicon-carbide': 'silicon carbide', cordierite: 'cordierite' },
    example: 'cordierite',
  }),
  bulkDensity: optional(
    quantity(density, {
      symbol: '\\rho_b',
      label: 'Mass of the honeycomb per filter volume, if weighed',
      description: 'Without the can. Leave blank to use the usual value of the material.',
      range: '0.2 <= x <= 2 kg/L',
      example: '0.45 kg/L',
      units: ['kg/L', 'kg/m3'],
    }),
  ),
  specificHeat: optional(
    quantity(specificHeatCapacity, {
      symbol: 'c_b',
      label: 'Specific heat of the honeycomb, if known',
      range: '500 <= x <= 2000 J/(kg.K)',
      example: '1100 J/(kg.K)',
    }),
  ),
};

const source = honeycombData;

/** Thermal data of the two materials, used where the reader gives none. */
export const honeycombConstants = {
  siliconCarbideDensity: constant(density, siliconCarbideHoneycomb.bulkDensity, {
    symbol: '\\rho_{SiC}',
    label: 'Silicon carbide: mass per filter volume',
    source,
  }),
  siliconCarbideHeat: constant(specificHeatCapacity, siliconCarbideHoneycomb.specificHeat, {
    symbol: 'c_{SiC}',
    label: 'Silicon carbide: specific heat',
    source,
  }),
  cordieriteDensity: constant(density, cordieriteHoneycomb.bulkDensity, {
    symbol: '\\rho_{Co}',
    label: 'Cordierite: mass per filter volume',
    source,
  }),
  cordieriteHeat: constant(specificHeatCapacity, cordieriteHoneycomb.specificHeat, {
    symbol: 'c_{Co}',
    label: 'Cordierite: specific heat',
    source,
  }),
};

export const honeycombIntermediates = {
  honeycombDensity: quantityOutput(density, {
    symbol: '\\rho_h',
    label: 'Mass of the honeycomb per filter volume, as used',
    digits: 3,
    units: ['kg/L', 'kg/m3'],
  }),
  honeycombHeatCapacity: quantityOutput(specificHeatCapacity, {
    symbol: 'c_h',
    label: 'Specific heat of the honeycomb, as used',
    digits: 4,
  }),
};

export const honeycombSteps = [
  cases('honeycombDensity', {
    'known(bulkDensity)': 'bulkDensity',
    "substrate == 'silicon-carbide'": 'siliconCarbideDensity',
    otherwise: 'cordieriteDensity',
  }),
  cases('honeycombHeatCapacity', {
    'known(specificHeat)': 'specificHeat',
    "substrate == 'silicon-carbide'": 'siliconCarbideHeat',
    otherwise: 'cordieriteHeat',
  }),
] as const;

interface HoneycombChoice {
  readonly substrate: 'silicon-carbide' | 'cordierite';
  readonly bulkDensity?: number | undefined;
  readonly specificHeat?: number | undefined;
}

/** Mass per volume and specific heat of the filter: as given, otherwise of its material, and then said so. */
export function honeycombOf(
  { substrate, bulkDensity, specificHeat }: HoneycombChoice,
  constants: { readonly [Key in keyof typeof honeycombConstants]: number },
  assume: (code: string, text: string) => void,
) {
  if (bulkDensity === undefined || specificHeat === undefined) {
    assume('material_data', 'Mass per volume or specific heat of the honeycomb: the usual value of the material is used (from memory).');
  }
  const hard = substrate === 'silicon-carbide';
  return {
    honeycombDensity: bulkDensity ?? (hard ? constants.siliconCarbideDensity : constants.cordieriteDensity),
    honeycombHeatCapacity: specificHeat ?? (hard ? constants.siliconCarbideHeat : constants.cordieriteHeat),
  };
}
