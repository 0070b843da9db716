import * as wf from '@wallflow/calculation';
import { fraction, length, mass, massConcentration, ratio } from '@wallflow/units';
import { cautions } from '../../cautions.js';
import { konstandopoulos2000 } from '../../sources.js';
import { ashDensityInput, ashFilterInputs, channelWidthOf, openInlet, sootLimitInput } from '../ash-inputs.js';
import { limitBounds, limitMaterial, limitRefusal } from '../limit-bound.js';
import { ashGeometry, ashPractice, ashReview2019 } from '../sources.js';
import { inletOpenFraction, layerFill, layerThickness, plugShare } from './kernel.js';

export const ashDistributionCalculation = wf.defineCalculation({
  id: 'ash-distribution',
  subject: 'soot',
  title: 'Room that ash takes: end plug, layer, soot capacity',
  purpose: 'How long is the plug, how thick is the layer that this ash makes, and how much soot may the filter still hold?',
  keywords: 'ash plug, ash layer, effective volume, soot capacity, DPF',
  method: 'volume of the ash in square inlet channels',
  inputs: {
    ashMass: wf.quantity(mass, {
      symbol: 'm_a',
      label: 'Ash in the filter',
      range: '0 g <= x <= 10 kg',
      usual: ['0 g', '600 g', { above: 'even truck filters seldom hold more' }],
      example: '70 g',
      units: ['g', 'kg'],
    }),
    plugPart: wf.quantity(fraction, {
      symbol: 'f_p',
      label: 'Part of the ash in end plugs',
      range: '0 <= x <= 100 %',
      example: '60 %',
      default: ['70 %', 'driving with regular regenerations carries most ash to the end; common practice, no source'],
    }),
    ...ashFilterInputs,
    ashLayerPackingDensity: ashDensityInput('\\rho_l', 'Packing density of the ash layer'),
    sootLimit: sootLimitInput('Soot load limit'),
    substrate: limitMaterial,
  },
  intermediates: {
    ...openInlet.intermediates,
    ashLoad: wf.quantityOutput(massConcentration, { symbol: "m'_a", label: 'Ash load', digits: 4, units: ['g/L'] }),
    layerFill: wf.quantityOutput(fraction, {
      symbol: 'x_v',
      label: 'Share of the free channels filled by the layer',
      digits: 4,
      units: ['%'],
    }),
  },
  outputs: {
    plugShare: wf.quantityOutput(fraction, {
      symbol: 'x_p',
      label: 'Share of the channel depth taken by the plug',
      digits: 3,
      units: ['%'],
    }),
    plugLength: wf.quantityOutput(length, { symbol: 'L_p', label: 'Length of the ash plug', digits: 3, units: ['mm'] }),
    layerThickness: wf.quantityOutput(length, { symbol: 'w_a', label: 'Thickness of the ash layer', digits: 3, units: ['um', 'mm'] }),
    layerShare: wf.quantityOutput(fraction, { symbol: 'x_w', label: 'Layer thickness ÷ channel width', digits: 3, units: ['%'] }),
    sootCapacity: wf.quantityOutput(mass, { symbol: 'm_{s,max}', label: 'Soot that the filter may still hold', digits: 3, units: ['g'] }),
    loadFactor: wf.quantityOutput(ratio, {
      symbol: 'F',
      label: 'Real soot load ÷ soot load counted on the whole volume',
      digits: 3,
      units: ['1'],
    }),
  },
  answer: 'sootCapacity',
  constants: limitBounds,
  steps: [
    ...openInlet.steps,
    wf.formula('ashLoad', 'ashMass / filterVolume'),
    wf.formula('plugShare', 'plugPart * ashMass / (ashPackingDensity * filterVolume * inletOpen)', ashGeometry),
    wf.formula('plugLength', 'plugShare * channelLength'),
    wf.formula(
      'layerFill',
      '(1 - plugPart) * ashMass / (ashLayerPackingDensity * filterVolume * inletOpen * (1 - plugShare))',
      ashGeometry,
      undefined,
      'The rest of the ash, on the depth that the plug leaves free.',
    ),
    wf.formula(
      'layerThickness',
      'channelWidth * layerFill / (2 * (1 + sqrt(1 - layerFill)))',
      konstandopoulos2000,
      'Eq. A10',
      'The same as α (1 − √(1 − x)) / 2, written so that a thin layer keeps its digits.',
    ),
    wf.formula('layerShare', 'layerThickness / channelWidth', ashReview2019),
    wf.formula('loadFactor', '1 / (1 - plugShare)', ashGeometry),
    wf.formula('sootCapacity', 'sootLimit * filterVolume * (1 - plugShare)', ashGeometry),
  ],
  assumptions: {
    even_channels: 'All inlet channels hold the same ash; the plug is solid and the layer is even.',
    limit_per_volume: 'The soot limit per litre applies to the volume that gas still reaches; no soot gets past the plug.',
  },
  limits: {
    bridges: 'Ash can bridge a channel half-way along: then less ash takes more volume. A rod finds such a bridge.',
    thin_layer: 'A layer of up to 11 % of the channel width hardly changes the pressure drop by itself.',
  },
  cautions: [cautions.ashDust, cautions.makerFirst],
  sources: [ashPractice],
  compute(input, { constants }) {
    const refusal = limitRefusal(input.sootLimit, 'sootLimit', input.substrate, constants);
    if (refusal !== undefined) return refusal;
    const channelWidth = channelWidthOf(input);
    if (typeof channelWidth !== 'number') return channelWidth;
    const channels = { ...input, channelWidth };
    const { ashMass, plugPart, ashLayerPackingDensity } = input;
    const share = plugShare(plugPart * ashMass, input.ashPackingDensity, channels);
    if (share >= 1) return wf.noSolution('this ash does not fit as a plug into the channels at this packing density', ['ashMass']);
    const layer = [(1 - plugPart) * ashMass, ashLayerPackingDensity, 1 - share, channels] as const;
    const thickness = layerThickness(...layer);
    if (thickness === undefined)
      return wf.noSolution('this ash does not fit as a layer into the channels at this packing density', ['ashMass']);
    return {
      channelWidth,
      layerFill: layerFill(...layer),
      inletOpen: inletOpenFraction(channels),
      ashLoad: ashMass / input.filterVolume,
      plugShare: share,
      plugLength: share * input.channelLength,
      layerThickness: thickness,
      layerShare: thickness / channelWidth,
      sootCapacity: input.sootLimit * input.filterVolume * (1 - share),
      loadFactor: 1 / (1 - share),
    };
  },
  advise({ plugShare: taken }) {
    if (taken < 0.05) return [];
    return [
      {
        tone: 'note',
        text: 'Work out the soot load on the volume that is left: a control unit that uses the whole volume starts a regeneration with too much soot.',
      },
    ];
  },
});
