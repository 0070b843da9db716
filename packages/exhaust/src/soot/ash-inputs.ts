import { inconsistentInputs, quantity, quantityWithDefault, type Refusal } from '@wallflow/calculation';
import { cellDensity, density, length, volume } from '@wallflow/units';

/** The filter whose channels hold ash, and how densely ash packs. */
export const ashFilterInputs = {
  filterVolume: quantity(volume, { symbol: 'V', label: 'Filter volume', min: '0.1 L', max: '200 L', example: '3.0 L', units: ['L', 'm3'] }),
  channelLength: quantity(length, {
    symbol: 'L',
    label: 'Depth of a clean inlet channel',
    description: 'Filter length less the plug at the outlet face.',
    min: '30 mm',
    max: '600 mm',
    usual: ['80 mm', '400 mm'],
    usualReason: 'common filters',
    example: '145 mm',
    units: ['mm', 'in'],
  }),
  cellDensity: quantity(cellDensity, {
    symbol: '\\sigma',
    label: 'Cell density',
    min: '50 cpsi',
    max: '600 cpsi',
    usual: ['100 cpsi', '350 cpsi'],
    usualReason: 'common wall-flow filters',
    example: '200 cpsi',
  }),
  wallThickness: quantity(length, {
    symbol: 'w_s',
    label: 'Wall thickness',
    min: '0.05 mm',
    max: '1 mm',
    usual: ['0.15 mm', '0.45 mm'],
    usualReason: 'common wall-flow filters',
    example: '0.305 mm',
    units: ['mm', 'mil'],
  }),
  ashDensity: quantityWithDefault(density, {
    symbol: '\\rho_a',
    label: 'Packing density of the ash',
    min: '0.1 kg/L',
    max: '1.5 kg/L',
    usual: ['0.2 kg/L', '0.4 kg/L'],
    usualReason: 'laboratory work finds 0.2 to 0.4 kg/L; simulations used up to 1',
    example: '0.35 kg/L',
    default: '0.35 kg/L',
    defaultReason: 'within 0.2 to 0.4 kg/L; common practice, no source',
    units: ['kg/L', 'kg/m3', 'g/cm3'],
  }),
};

/** Clear channel width in m of square cells, or why there is none. */
export function channelWidthOf(input: { readonly cellDensity: number; readonly wallThickness: number }): number | Refusal {
  const width = 1 / Math.sqrt(input.cellDensity) - input.wallThickness;
  return width > 0
    ? width
    : inconsistentInputs('the wall is thicker than the distance between the walls', ['wallThickness'], ['cellDensity']);
}
