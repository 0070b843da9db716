import {
  choiceOutput,
  constant,
  defineCalculation,
  inconsistentInputs,
  isRefusal,
  missingInputs,
  optional,
  quantity,
  quantityOutput,
  quantityWithDefault,
} from '@wallflow/calculation';
import { acceleration, area, density, differentialPressure, fraction, length, volume } from '@wallflow/units';
import * as z from 'zod';
import { cautions } from '../../cautions.js';
import { geometryInputs } from '../../filter/inputs.js';
import { resolveGeometry } from '../../filter/resolve.js';
import { konstandopoulos2000, siBrochure } from '../../sources.js';
import { jurinLaw, massBalance, waterDensity20 } from '../sources.js';
import { capillaryHeight, wallPoreVolume } from './kernel.js';

const volumeOutput = (symbol: string, label: string) => quantityOutput(volume, { symbol, label, digits: 3, units: ['mL', 'L', 'floz_US'] });
const volumeInput = (symbol: string, label: string, min: 'min' | 'above', example: string) =>
  quantity(volume, { symbol, label, [min]: '0 mL', max: '200 L', example, units: ['mL', 'L', 'floz_US'] });

export const heldLiquidCalculation = defineCalculation({
  id: 'held-liquid',
  version: '1.1.0',
  subject: 'cleaning',
  title: 'Liquid that the filter still holds',
  purpose: 'How much liquid stays in the filter after it has drained, and why can it not just run out?',
  usedBy: ['technician', 'trainer', 'developer'],
  keywords: ['drain', 'held', 'wet', 'pores', 'capillary', 'drying'],
  method: 'pore volume of the walls; not measured: the least that stays',
  inputs: z.strictObject({
    ...geometryInputs,
    wallPorosity: quantityWithDefault(fraction, {
      symbol: '\\varepsilon',
      label: 'Porosity of the wall',
      min: '25 %',
      max: '80 %',
      usual: ['42 %', '65 %'],
      usualReason: 'wall-flow filters are made in this range',
      example: '48 %',
      default: '48 %',
      defaultReason: 'cordierite of a published heavy-duty filter',
    }),
    poreDiameter: quantityWithDefault(length, {
      symbol: 'd_p',
      label: 'Mean pore diameter',
      min: '2 um',
      max: '100 um',
      usual: ['10 um', '30 um'],
      usualReason: 'wall-flow filters are made in this range',
      example: '15 um',
      units: ['um', 'mm'],
      default: '15 um',
      defaultReason: 'middle of 10 to 30 µm',
    }),
    pouredVolume: volumeInput('V_1', 'Liquid that went in, cleaner and rinse', 'above', '3 L').optional(),
    drainedVolume: volumeInput('V_2', 'Liquid that was caught', 'min', '2.4 L').optional(),
  }),
  example: { filterDiameter: '144 mm', pouredVolume: '3 L', drainedVolume: '2.4 L' },
  intermediates: {
    faceArea: quantityOutput(area, { symbol: 'A', label: 'Face area', digits: 3, units: ['cm2', 'in2'] }),
    openArea: quantityOutput(area, { symbol: 'A_o', label: 'Of it open, inlet and outlet channels', digits: 3, units: ['cm2', 'in2'] }),
    capillaryHeight: quantityOutput(length, {
      symbol: 'h',
      label: 'Height to which the pores hold water',
      digits: 2,
      units: ['m', 'mm', 'in'],
    }),
  },
  outputs: {
    wallPoreVolume: volumeOutput('V_p', 'Liquid that the walls soak up'),
    wetWallPressure: quantityOutput(differentialPressure, {
      symbol: '\\Delta p_c',
      label: 'Drop that it takes to blow a soaked pore free',
      description: 'Below it no gas passes that pore: why a wet filter reads high.',
      digits: 2,
      units: ['mbar', 'kPa', 'hPa', 'psi'],
    }),
    channelVolume: optional(volumeOutput('V_k', 'Liquid that still stands in channels, pipes and can')),
    state: choiceOutput({
      label: 'State',
      options: {
        walls: 'drained: no more than the walls hold',
        channels: 'not drained: more than the walls can hold; turn it, open it, let it run',
        'not-measured': 'not measured: what was caught is not known, so this is the least',
      },
    }),
    heldVolume: volumeOutput('V_h', 'Liquid to dry off'),
  },
  constants: {
    capillaryConstant: constant(area, 14.86e-6, {
      symbol: 'a^2',
      label: 'Capillary constant of water at 20 °C, 2σ/(ρg)',
      source: 'jurinLaw',
    }),
    waterDensity: constant(density, 998.2, { symbol: '\\rho_w', label: 'Density of water at 20 °C', source: 'waterDensity20' }),
    gravity: constant(acceleration, 9.80665, { symbol: 'g', label: 'Standard acceleration of free fall', source: 'siBrochure' }),
  },
  steps: [
    { gives: 'faceArea', text: 'From the diameter, or volume over length: [[faceArea]].' },
    {
      gives: 'openArea',
      text: 'Width squared times number, inlet and outlet channels: [[openArea]].',
      source: 'konstandopoulos2000',
      locator: 'Eq. A3',
    },
    { gives: 'wallPoreVolume', tex: '[[wallPoreVolume]] = \\left([[faceArea]]-[[openArea]]\\right)[[filterLength]]\\,[[wallPorosity]]' },
    { gives: 'capillaryHeight', tex: '[[capillaryHeight]] = \\frac{2\\,[[capillaryConstant]]}{[[poreDiameter]]}', source: 'jurinLaw' },
    { gives: 'wetWallPressure', tex: '[[wetWallPressure]] = [[waterDensity]]\\,[[gravity]]\\,[[capillaryHeight]]', source: 'jurinLaw' },
    {
      gives: 'channelVolume',
      text: 'What went in less what was caught, less the pores of the walls: [[channelVolume]].',
      source: 'massBalance',
    },
    { gives: 'state', text: 'Balance of the liquid against the pores of the walls.', source: 'massBalance' },
    { gives: 'heldVolume', text: 'By the balance, or the pores alone if it was not measured: [[heldVolume]].', source: 'massBalance' },
  ],
  assumptions: [
    {
      code: 'soaked_walls',
      text: 'The walls are soaked through: pores this small lift water far higher than a filter is tall, so they do not drain.',
    },
    { code: 'water', text: 'Water wets the walls fully; cleaner with less surface tension is held less firmly, oil and soot repel it.' },
  ],
  limits: [
    { code: 'mat_and_pipes', text: 'The mat round the body and bends of the pipe hold liquid too; only the balance or a scale shows it.' },
  ],
  cautions: [cautions.waste, cautions.caustic, cautions.makerFirst],
  sources: { massBalance, jurinLaw, konstandopoulos2000, waterDensity20, siBrochure },
  compute(input, { constants, method }) {
    const geometry = resolveGeometry(input);
    if (isRefusal(geometry)) return geometry;
    const { pouredVolume, drainedVolume } = input;
    if (drainedVolume !== undefined && pouredVolume === undefined) return missingInputs('pouredVolume');
    if (pouredVolume !== undefined && drainedVolume !== undefined && drainedVolume > pouredVolume) {
      return inconsistentInputs('more came out than went in', ['drainedVolume'], ['pouredVolume']);
    }
    const { inletCount, inletWidth, outletCount, outletWidth } = geometry.channels;
    const openArea = inletCount * inletWidth ** 2 + outletCount * outletWidth ** 2;
    if (openArea >= geometry.frontalArea) {
      return inconsistentInputs(
        'inlet and outlet channels together are larger than the face: no wall is left between them; check cells, wall and width ratio',
        ['inletWidthRatio'],
        ['wallThickness'],
        ['cellDensity'],
      );
    }
    const pores = wallPoreVolume(geometry.frontalArea, openArea, input.filterLength, input.wallPorosity);
    const balance = pouredVolume === undefined || drainedVolume === undefined ? undefined : pouredVolume - drainedVolume;
    if (balance !== undefined) method('balance of the liquid');
    const height = capillaryHeight(input.poreDiameter, constants.capillaryConstant);
    return {
      faceArea: geometry.frontalArea,
      openArea,
      capillaryHeight: height,
      wallPoreVolume: pores,
      wetWallPressure: constants.waterDensity * constants.gravity * height,
      channelVolume: balance === undefined ? undefined : Math.max(0, balance - pores),
      state: balance === undefined ? 'not-measured' : balance > pores ? 'channels' : 'walls',
      heldVolume: balance ?? pores,
    };
  },
  advise: ({ state }) => [
    ...(state === 'channels'
      ? ([{ tone: 'do', text: 'Let it drain on before heating: what runs out need not be evaporated.' }] as const)
      : []),
    { tone: 'do-not', text: 'Do not read the drop on a wet filter: soaked pores let no gas through until they are blown free.' },
  ],
});
