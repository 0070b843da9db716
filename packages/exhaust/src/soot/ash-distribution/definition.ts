import { defineCalculation, noSolution, quantity, quantityOutput, quantityWithDefault } from '@wallflow/calculation';
import { fraction, length, mass, massConcentration, ratio } from '@wallflow/units';
import * as z from 'zod';
import { cautions } from '../../cautions.js';
import { konstandopoulos2000 } from '../../sources.js';
import { ashDensityInput, ashFilterInputs, channelWidthOf } from '../ash-inputs.js';
import { ashGeometry, ashPractice, ashReview2019 } from '../sources.js';
import { inletOpenFraction, layerThickness, plugShare } from './kernel.js';

export const ashDistributionCalculation = defineCalculation({
  id: 'ash-distribution',
  version: '1.1.0',
  subject: 'soot',
  title: 'What ash takes of a filter: end plug, layer, soot capacity',
  purpose: 'How long is the plug and how thick the layer that this ash makes, and how much soot may the filter still hold?',
  usedBy: ['technician', 'trainer', 'developer'],
  keywords: ['ash plug', 'ash layer', 'effective volume', 'soot capacity'],
  method: 'volume of the ash in square inlet channels',
  inputs: z.strictObject({
    ash: quantity(mass, {
      symbol: 'm_a',
      label: 'Ash in the filter',
      min: '0 g',
      max: '10 kg',
      usual: ['0 g', '600 g'],
      usualReason: { above: 'even truck filters seldom hold more' },
      example: '70 g',
      units: ['g', 'kg'],
    }),
    plugPart: quantityWithDefault(fraction, {
      symbol: 'f_p',
      label: 'Part of the ash that lies as a plug at the channel ends',
      min: '0 %',
      max: '100 %',
      example: '60 %',
      default: '70 %',
      defaultReason: 'driving with regular regenerations carries most ash to the end; common practice, no source',
    }),
    ...ashFilterInputs,
    layerDensity: ashDensityInput('\\rho_l', 'Packing density of the ash layer on the walls'),
    sootLimit: quantityWithDefault(massConcentration, {
      symbol: "m'_{s,max}",
      label: 'Soot load limit of the clean filter',
      min: '0.5 g/L',
      max: '20 g/L',
      example: '6 g/L',
      default: '6 g/L',
      defaultReason: 'the only limit with a published source',
      units: ['g/L'],
    }),
  }),
  intermediates: {
    inletOpen: quantityOutput(fraction, {
      symbol: '\\varepsilon_{in}',
      label: 'Open inlet share of the cross-section',
      digits: 4,
      units: ['%'],
    }),
    ashLoad: quantityOutput(massConcentration, { symbol: "m'_a", label: 'Ash load', digits: 4, units: ['g/L'] }),
  },
  outputs: {
    plugShare: quantityOutput(fraction, { symbol: 'x_p', label: 'Share of the channel depth taken by the plug', digits: 3, units: ['%'] }),
    plugLength: quantityOutput(length, { symbol: 'L_p', label: 'Length of the plug', digits: 3, units: ['mm'] }),
    layerThickness: quantityOutput(length, { symbol: 'w_a', label: 'Thickness of the layer', digits: 3, units: ['um', 'mm'] }),
    layerShare: quantityOutput(fraction, { symbol: 'x_w', label: 'Layer over channel width', digits: 3, units: ['%'] }),
    sootCapacity: quantityOutput(mass, { symbol: 'm_{s,max}', label: 'Soot that the filter may still hold', digits: 3, units: ['g'] }),
    loadFactor: quantityOutput(ratio, {
      symbol: 'F',
      label: 'Real soot load over one counted on the whole volume',
      digits: 3,
      units: ['1'],
    }),
  },
  constants: {},
  steps: [
    {
      gives: 'inletOpen',
      tex: '[[inletOpen]] = \\frac{\\alpha^2\\,[[cellDensity]]}{2},\\quad\\alpha=\\frac{1}{\\sqrt{\\sigma}}-w_s',
      source: 'konstandopoulos2000',
      locator: 'Eq. A3',
    },
    { gives: 'ashLoad', tex: '[[ashLoad]] = \\frac{[[ash]]}{[[filterVolume]]}' },
    {
      gives: 'plugShare',
      tex: '[[plugShare]] = \\frac{[[plugPart]]\\,[[ash]]}{[[ashDensity]]\\,[[filterVolume]]\\,[[inletOpen]]}',
      source: 'ashGeometry',
    },
    { gives: 'plugLength', tex: '[[plugLength]] = [[plugShare]]\\,[[channelLength]]' },
    {
      gives: 'layerThickness',
      text: 'Layer of the other part on the free depth: (α − √(α² − V_layer/(N L)))/2.',
      source: 'konstandopoulos2000',
      locator: 'Eq. A10',
    },
    { gives: 'layerShare', text: 'Layer thickness over clear channel width.', source: 'ashReview2019' },
    { gives: 'loadFactor', tex: '[[loadFactor]] = \\frac{1}{1-[[plugShare]]}', source: 'ashGeometry' },
    {
      gives: 'sootCapacity',
      tex: '[[sootCapacity]] = [[sootLimit]]\\,[[filterVolume]]\\left(1-[[plugShare]]\\right)',
      source: 'ashGeometry',
    },
  ],
  assumptions: [
    { code: 'even_channels', text: 'All inlet channels hold the same ash, the plug without gaps and the layer even.' },
    { code: 'limit_per_volume', text: 'The soot limit per litre holds for the volume that is still fed; behind a plug no soot comes.' },
  ],
  limits: [
    { code: 'bridges', text: 'Ash can bridge a channel half-way: then less ash takes more volume. A rod finds it.' },
    { code: 'thin_layer', text: 'A layer of up to 11 % of the channel width hardly changes the pressure drop by itself.' },
  ],
  cautions: [cautions.ashDust, cautions.makerFirst],
  sources: { ashGeometry, konstandopoulos2000, ashReview2019, ashPractice },
  compute(input) {
    const channelWidth = channelWidthOf(input);
    if (typeof channelWidth !== 'number') return channelWidth;
    const channels = { ...input, channelWidth };
    const share = plugShare(input.plugPart * input.ash, input.ashDensity, channels);
    if (share >= 1) return noSolution('this ash does not fit as a plug into the channels at this packing density', ['ash']);
    const thickness = layerThickness((1 - input.plugPart) * input.ash, input.layerDensity, 1 - share, channels);
    if (thickness === undefined) return noSolution('this ash does not fit as a layer into the channels at this packing density', ['ash']);
    return {
      inletOpen: inletOpenFraction(channels),
      ashLoad: input.ash / input.filterVolume,
      plugShare: share,
      plugLength: share * input.channelLength,
      layerThickness: thickness,
      layerShare: thickness / channels.channelWidth,
      sootCapacity: input.sootLimit * input.filterVolume * (1 - share),
      loadFactor: 1 / (1 - share),
    };
  },
  advise({ plugShare: taken }) {
    if (taken < 0.05) return [];
    return [
      {
        tone: 'note',
        text: 'Count soot on the volume that is left: a control unit that takes the whole volume starts a regeneration at too much soot.',
      },
    ];
  },
});
