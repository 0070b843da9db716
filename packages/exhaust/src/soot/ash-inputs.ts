import { inconsistentInputs, quantity, quantityWithDefault, type Refusal } from '@wallflow/calculation';
import { cellDensity, density, length, volume } from '@wallflow/units';

/** How densely ash packs: one density for the room it takes and for the drop that its layer makes. */
export const ashDensityInput = (symbol: string, label: string) =>
  quantityWithDefault(density, {
    symbol,
    label,
    min: '0.1 kg/L',
    max: '1.5 kg/L',
    usual: ['0.2 kg/L', '1 kg/L'],
    usualReason: 'ash in filters packs to 0.2 to 0.5 kg/L, poured and pressed in a tube to 0.4 to 1 kg/L',
    example: '0.4 kg/L',
    default: '0.4 kg/L',
    defaultReason: 'published together with the permeability of the layer; 0.2 to 1 kg/L are found',
    units: ['kg/L', 'kg/m3', 'g/cm3'],
  });

/** The filter whose channels hold ash, and how densely ash packs. */
export const ashFilterInputs = {
  filterVolume: quantity(volume, {
    symbol: 'V',
    label: 'Filter volume',
    min: '0.1 L',
    max: '200 L',
    example: '5.79 L',
    units: ['L', 'm3'],
  }),
  channelLength: quantity(length, {
    symbol: 'L',
    label: 'Depth of a clean inlet channel',
    description: 'Filter length less the plug at the outlet face.',
    min: '30 mm',
    max: '600 mm',
    usual: ['80 mm', '400 mm'],
    usualReason: 'common filters have channels of 80 to 400 mm',
    example: '195 mm',
    units: ['mm', 'in'],
  }),
  cellDensity: quantity(cellDensity, {
    symbol: '\\sigma',
    label: 'Cell density',
    min: '50 cpsi',
    max: '600 cpsi',
    usual: ['100 cpsi', '350 cpsi'],
    usualReason: 'common wall-flow filters have 100 to 350 cells per square inch',
    example: '200 cpsi',
  }),
  wallThickness: quantity(length, {
    symbol: 'w_s',
    label: 'Wall thickness',
    min: '0.05 mm',
    max: '1 mm',
    usual: ['0.15 mm', '0.45 mm'],
    usualReason: 'common wall-flow filters have walls of 0.15 to 0.45 mm',
    example: '0.305 mm',
    units: ['mm', 'mil'],
  }),
  ashDensity: ashDensityInput('\\rho_a', 'Packing density of the ash'),
};

/** Clear channel width in m of square cells, or why there is none. */
export function channelWidthOf(input: { readonly cellDensity: number; readonly wallThickness: number }): number | Refusal {
  const width = 1 / Math.sqrt(input.cellDensity) - input.wallThickness;
  return width > 0
    ? width
    : inconsistentInputs('the wall is thicker than the distance between the walls', ['wallThickness'], ['cellDensity']);
}
