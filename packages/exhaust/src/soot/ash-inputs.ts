import { formula, inconsistentInputs, quantity, quantityOutput, type Refusal } from '@wallflow/calculation';
import { cellDensity, density, fraction, length, massConcentration, volume } from '@wallflow/units';
import { squareCells } from './sources.js';

/** How densely ash packs: one density for the room it takes and for the drop that its layer makes. */
export const ashDensityInput = (symbol: string, label: string) =>
  quantity(density, {
    symbol,
    label,
    range: '0.1 <= x <= 1.5 kg/L',
    usual: ['0.2 kg/L', '1 kg/L', 'ash in filters packs to 0.2 to 0.5 kg/L, poured and pressed in a tube to 0.4 to 1 kg/L'],
    default: ['0.4 kg/L', 'published together with the permeability of the layer; 0.2 to 1 kg/L are found'],
    units: ['kg/L', 'kg/m3', 'g/cm3'],
  });

/** A soot load limit that somebody states. */
export const sootLimitInput = (label: string) =>
  quantity(massConcentration, {
    symbol: "m'_{s,max}",
    label,
    range: '0.5 <= x <= 12 g/L',
    usual: [
      '2 g/L',
      '6 g/L',
      { below: 'a filter may hold more', above: 'the published limit is 6 g/L; enter more only from the vehicle maker' },
    ],
    default: ['6 g/L', 'the only limit with a published source'],
    units: ['g/L'],
  });

/** The filter whose channels hold ash, and how densely ash packs. */
export const ashFilterInputs = {
  filterVolume: quantity(volume, {
    symbol: 'V',
    label: 'Filter volume',
    range: '0.1 <= x <= 200 L',
    example: '5.79 L',
    units: ['L', 'm3'],
  }),
  channelLength: quantity(length, {
    symbol: 'L',
    label: 'Depth of a clean inlet channel',
    description: 'Filter length less the plug at the outlet face.',
    range: '30 <= x <= 600 mm',
    usual: ['80 mm', '400 mm', 'common filters have channels of 80 to 400 mm'],
    example: '195 mm',
    units: ['mm', 'in'],
  }),
  cellDensity: quantity(cellDensity, {
    symbol: '\\sigma',
    label: 'Cell density',
    range: '50 <= x <= 600 cpsi',
    usual: ['100 cpsi', '350 cpsi', 'common wall-flow filters have 100 to 350 cells per square inch'],
    example: '200 cpsi',
  }),
  wallThickness: quantity(length, {
    symbol: 'w_s',
    label: 'Wall thickness',
    range: '0.05 <= x <= 1 mm',
    usual: ['0.15 mm', '0.45 mm', 'common wall-flow filters have walls of 0.15 to 0.45 mm'],
    example: '0.305 mm',
    units: ['mm', 'mil'],
  }),
  ashPackingDensity: ashDensityInput('\\rho_a', 'Packing density of the ash'),
};

/** How the open inlet share follows from the cells. */
export const openInlet = {
  intermediates: {
    channelWidth: quantityOutput(length, { symbol: '\\alpha', label: 'Clear width of a channel', digits: 5, units: ['mm'] }),
    inletOpen: quantityOutput(fraction, {
      symbol: '\\varepsilon_{in}',
      label: 'Open inlet share of the cross-section',
      digits: 4,
      units: ['%'],
    }),
  },
  steps: [
    formula('channelWidth', '1 / sqrt(cellDensity) - wallThickness', squareCells),
    formula('inletOpen', 'channelWidth ^ 2 * cellDensity / 2', squareCells, 'Eq. A3', 'Every second channel is an inlet.'),
  ],
} as const;

/** Clear channel width in m of square cells, or why there is none. */
export function channelWidthOf(input: { readonly cellDensity: number; readonly wallThickness: number }): number | Refusal {
  const width = 1 / Math.sqrt(input.cellDensity) - input.wallThickness;
  return width > 0
    ? width
    : inconsistentInputs('the wall is thicker than the distance between the walls', ['wallThickness'], ['cellDensity']);
}
