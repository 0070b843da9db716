import * as wf from '@wallflow/calculation';
import { acceleration, area, density, differentialPressure, fraction, length, volume } from '@wallflow/units';
import { cautions } from '../../cautions.js';
import { filterGeometryCalculation } from '../../filter/filter-geometry/definition.js';
import { geometryInputs } from '../../filter/inputs.js';
import { resolveGeometry } from '../../filter/resolve.js';
import { siBrochure } from '../../sources.js';
import { sameGeometry } from '../same-geometry.js';
import { jurinLaw, massBalance, waterDensity20 } from '../sources.js';
import { capillaryHeight, wallPoreVolume } from './kernel.js';

const volumeOutput = (symbol: string, label: string) =>
  wf.quantityOutput(volume, { symbol, label, digits: 3, units: ['mL', 'L', 'floz_US'] });
const volumeInput = (symbol: string, label: string, range: string, example: string) =>
  wf.quantity(volume, { symbol, label, range, example, units: ['mL', 'L', 'floz_US'] });

export const heldLiquidCalculation = wf.defineCalculation({
  id: 'held-liquid',
  subject: 'cleaning',
  title: 'Liquid that the filter still holds',
  purpose: 'How much liquid stays in the filter after it has drained, and why does it not simply run out?',
  keywords: 'drain, held, wet, pores, capillary, drying, DPF',
  method: 'pore volume of the walls: without a measurement, the least that stays',
  inputs: {
    ...geometryInputs,
    wallPorosity: wf.quantity(fraction, {
      symbol: '\\varepsilon',
      label: 'Porosity of the clean wall',
      range: '25 <= x <= 80 %',
      usual: ['42 %', '65 %', 'wall-flow filters are made in this range'],
      default: ['48 %', 'cordierite of a published heavy-duty filter'],
    }),
    poreDiameter: wf.quantity(length, {
      symbol: 'd_p',
      label: 'Mean pore diameter',
      range: '2 <= x <= 100 um',
      usual: ['10 um', '30 um', 'wall-flow filters are made in this range'],
      units: ['um', 'mm'],
      default: ['15 um', 'middle of 10 to 30 µm'],
    }),
    ...wf.together({
      pouredVolume: volumeInput('V_1', 'Liquid poured in, cleaner and rinse', '0 < V <= 200 L', '5.8 L'),
      drainedVolume: volumeInput('V_2', 'Liquid collected', '0 <= V <= 200 L', '4.7 L'),
    }),
  },
  example: { filterDiameter: '190.5 mm', filterLength: '203.2 mm', pouredVolume: '5.8 L', drainedVolume: '4.7 L' },
  intermediates: {
    faceArea: wf.quantityOutput(area, { symbol: 'A', label: 'Face area', digits: 3, units: ['cm2', 'in2'] }),
    openFace: wf.quantityOutput(fraction, { symbol: 'x_o', label: 'Open part of the face', digits: 4, units: ['%'] }),
    openArea: wf.quantityOutput(area, { symbol: 'A_o', label: 'Open area, inlet and outlet channels', digits: 3, units: ['cm2', 'in2'] }),
    capillaryHeight: wf.quantityOutput(length, {
      symbol: 'h',
      label: 'Height to which the pores hold water',
      digits: 2,
      units: ['m', 'mm', 'in'],
    }),
  },
  outputs: {
    wallPoreVolume: volumeOutput('V_p', 'Liquid that the walls soak up'),
    wetWallPressure: wf.quantityOutput(differentialPressure, {
      symbol: '\\Delta p_c',
      label: 'Pressure drop that blows a soaked pore free',
      description: 'Below it no gas passes that pore, which is why a wet filter reads high.',
      digits: 2,
      units: ['mbar', 'kPa', 'hPa', 'psi'],
    }),
    channelVolume: wf.optional(volumeOutput('V_k', 'Liquid still in the channels, pipes and housing')),
    drainState: wf.choiceOutput({
      label: 'Is it drained?',
      options: {
        walls: 'drained: no more than the walls hold',
        channels: 'not drained: more than the walls can hold; turn it and let it run out',
        'not-measured': 'not measured: the liquid collected is not known, so this is the least',
      },
    }),
    heldVolume: volumeOutput('V_h', 'Liquid that stays in the filter after draining'),
  },
  constants: {
    capillaryConstant: wf.constant(area, 14.86e-6, {
      symbol: 'a^2',
      label: 'Capillary constant of water at 20 °C, 2σ/(ρg)',
      source: jurinLaw,
    }),
    waterDensity: wf.constant(density, 998.2, { symbol: '\\rho_w', label: 'Density of water at 20 °C', source: waterDensity20 }),
    gravity: wf.constant(acceleration, 9.80665, { symbol: 'g', label: 'Standard gravity', source: siBrochure }),
  },
  answer: 'heldVolume',
  steps: [
    wf.nested('faceArea', filterGeometryCalculation, sameGeometry, 'frontalArea'),
    wf.nested('openFace', filterGeometryCalculation, sameGeometry, 'openFrontalArea'),
    wf.formula('openArea', 'openFace * faceArea'),
    wf.formula('wallPoreVolume', '(faceArea - openArea) * filterLength * wallPorosity'),
    wf.formula('capillaryHeight', '2 * capillaryConstant / poreDiameter', jurinLaw),
    wf.formula('wetWallPressure', 'waterDensity * gravity * capillaryHeight', jurinLaw),
    wf.formula('channelVolume', 'max(0, pouredVolume - drainedVolume - wallPoreVolume)', massBalance),
    wf.verdict(
      'drainState',
      {
        'not-measured': 'not known(drainedVolume)',
        channels: 'pouredVolume - drainedVolume > wallPoreVolume',
        walls: 'otherwise',
      },
      massBalance,
    ),
    wf.cases('heldVolume', { 'known(drainedVolume)': 'pouredVolume - drainedVolume', otherwise: 'wallPoreVolume' }, massBalance),
  ],
  assumptions: {
    soaked_walls: 'The walls are soaked through: pores this small lift water far higher than a filter is tall, so they do not drain.',
    water: 'Water wets the walls fully; cleaner with less surface tension is held less firmly, oil and soot repel it.',
  },
  limits: {
    mat_and_pipes: 'The mat round the body and bends of the pipe hold liquid too; only measuring the liquid, or a scale, shows it.',
  },
  cautions: [cautions.waste, cautions.caustic, cautions.makerFirst],
  compute(input, { constants, method }) {
    const geometry = resolveGeometry(input);
    if (wf.isRefusal(geometry)) return geometry;
    const { pouredVolume, drainedVolume } = input;
    if (pouredVolume !== undefined && drainedVolume !== undefined && drainedVolume > pouredVolume) {
      return wf.inconsistentInputs('more liquid came out than went in', ['drainedVolume'], ['pouredVolume']);
    }
    const { inletCount, inletWidth, outletCount, outletWidth } = geometry.channels;
    const openArea = inletCount * inletWidth ** 2 + outletCount * outletWidth ** 2;
    if (openArea >= geometry.frontalArea) {
      return wf.inconsistentInputs(
        'inlet and outlet channels together are larger than the face, so no wall is left between them: check cell density, wall and width ratio',
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
      openFace: openArea / geometry.frontalArea,
      capillaryHeight: height,
      wallPoreVolume: pores,
      wetWallPressure: constants.waterDensity * constants.gravity * height,
      channelVolume: balance === undefined ? undefined : Math.max(0, balance - pores),
      drainState: balance === undefined ? 'not-measured' : balance > pores ? 'channels' : 'walls',
      heldVolume: balance ?? pores,
    };
  },
  advise: ({ drainState }) => [
    ...(drainState === 'channels'
      ? ([{ tone: 'do', text: 'Let it drain longer before heating: what runs out need not be evaporated.' }] as const)
      : []),
    {
      tone: 'do-not',
      text: 'Do not measure the pressure drop on a wet filter: soaked pores let no gas through until they are blown free.',
    },
  ],
});
