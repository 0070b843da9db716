import { choiceOutput, defineCalculation, inconsistentInputs, list, optional, quantity, quantityOutput } from '@wallflow/calculation';
import { fraction, length, mass, massConcentration } from '@wallflow/units';
import * as z from 'zod';
import { cautions } from '../../cautions.js';
import { konstandopoulos2000 } from '../../sources.js';
import { inletOpenFraction, plugAsh } from '../ash-distribution/kernel.js';
import { ashFilterInputs, channelWidthOf } from '../ash-inputs.js';
import { ashGeometry, ashPractice } from '../sources.js';
import { depthStatistics } from './kernel.js';

export const ashRodDepthCalculation = defineCalculation({
  id: 'ash-rod-depth',
  version: '1.1.0',
  subject: 'soot',
  title: 'Ash from a rod in the channels',
  purpose: 'How much ash plugs the ends of the channels, by the depth that a rod reaches?',
  usedBy: ['technician', 'trainer'],
  keywords: ['rod test', 'channel depth', 'ash plug', 'cleaning check'],
  method: 'mean missing depth times open inlet area and packing density',
  inputs: z.strictObject({
    ...ashFilterInputs,
    depths: list(
      z.strictObject({
        depth: quantity(length, {
          symbol: 'd',
          label: 'Depth reached',
          min: '0 mm',
          max: '600 mm',
          usual: ['0 mm', '400 mm'],
          usualReason: { above: 'longer than the channels of common filters' },
          example: '185 mm',
          units: ['mm', 'in'],
        }),
      }),
      {
        label: 'Depths reached, from the inlet face',
        description: 'Stiff stainless rod of 0.8 mm; five to nine places over the face.',
        min: 1,
        max: 100,
        example: [{ depth: '187 mm' }, { depth: '184 mm' }, { depth: '182 mm' }, { depth: '185 mm' }, { depth: '186 mm' }],
      },
    ),
  }),
  intermediates: {
    meanDepth: quantityOutput(length, { symbol: '\\bar d', label: 'Mean depth', digits: 4, units: ['mm'] }),
    deviation: optional(quantityOutput(length, { symbol: 's_d', label: 'Standard deviation of the depths', digits: 2, units: ['mm'] })),
    inletOpen: quantityOutput(fraction, {
      symbol: '\\varepsilon_{in}',
      label: 'Open inlet share of the cross-section',
      digits: 4,
      units: ['%'],
    }),
  },
  outputs: {
    plugLength: quantityOutput(length, { symbol: 'L_p', label: 'Mean length of the plug', digits: 3, units: ['mm'] }),
    plugShare: quantityOutput(fraction, { symbol: 'x_p', label: 'Share of the channel depth that is lost', digits: 3, units: ['%'] }),
    ash: quantityOutput(mass, { symbol: 'm_a', label: 'Ash in the plugs', digits: 3, units: ['g', 'kg'] }),
    ashUncertainty: optional(
      quantityOutput(mass, { symbol: 'u(m_a)', label: 'Standard uncertainty by the scatter of the depths', digits: 2, units: ['g'] }),
    ),
    ashLoad: quantityOutput(massConcentration, { symbol: "m'_a", label: 'Ash load of the plugs', digits: 3, units: ['g/L'] }),
    verdict: choiceOutput({
      label: 'Depth against a clean channel',
      options: { clean: 'at least 95 % free: as a cleaned filter should be', plugged: 'less than 95 % free: ash is left' },
    }),
  },
  constants: {},
  steps: [
    { gives: 'meanDepth', text: 'Mean of the depths.' },
    { gives: 'deviation', text: 'Sample standard deviation.' },
    {
      gives: 'inletOpen',
      tex: '[[inletOpen]] = \\frac{\\alpha^2\\,[[cellDensity]]}{2},\\quad\\alpha=\\frac{1}{\\sqrt{\\sigma}}-w_s',
      source: 'konstandopoulos2000',
      locator: 'Eq. A3',
    },
    { gives: 'plugLength', tex: '[[plugLength]] = [[channelLength]]-[[meanDepth]]', source: 'ashGeometry' },
    { gives: 'plugShare', tex: '[[plugShare]] = \\frac{[[plugLength]]}{[[channelLength]]}' },
    { gives: 'ashLoad', tex: '[[ashLoad]] = \\frac{[[ash]]}{[[filterVolume]]}' },
    { gives: 'verdict', text: 'Mean depth at least 95 % of a clean channel.', source: 'ashPractice' },
    { gives: 'ash', tex: '[[ash]] = [[plugShare]]\\,[[ashDensity]]\\,[[filterVolume]]\\,[[inletOpen]]', source: 'ashGeometry' },
  ],
  assumptions: [
    { code: 'sample_stands_for_all', text: 'The channels probed stand for all; the volume is that of the channels of full depth.' },
    { code: 'dense_plug', text: 'What stops the rod is a plug without gaps; a bridge would count as too much ash.' },
  ],
  limits: [{ code: 'layer_not_seen', text: 'Ash on the walls is not seen: the filter holds more ash than the plugs.' }],
  cautions: [cautions.ashDust, { code: 'rod_damage', text: 'Push gently: a rod breaks plugs and walls of a filter.' }],
  sources: { ashGeometry, konstandopoulos2000, ashPractice },
  compute(input) {
    const channelWidth = channelWidthOf(input);
    if (typeof channelWidth !== 'number') return channelWidth;
    const deep = input.depths.findIndex(({ depth }) => depth > input.channelLength * (1 + 1e-9));
    if (deep >= 0)
      return inconsistentInputs('a depth is larger than the depth of a clean channel', ['depths', deep, 'depth'], ['channelLength']);
    const channels = { ...input, channelWidth };
    const { mean, deviation, uncertainty } = depthStatistics(input.depths.map(({ depth }) => depth));
    const plugLength = Math.max(0, input.channelLength - mean);
    const share = plugLength / input.channelLength;
    const ash = plugAsh(share, input.ashDensity, channels);
    const scattered = input.depths.length > 1;
    return {
      meanDepth: mean,
      deviation: scattered ? deviation : undefined,
      inletOpen: inletOpenFraction(channels),
      plugLength,
      plugShare: share,
      ash,
      ashUncertainty: scattered ? plugAsh(uncertainty / input.channelLength, input.ashDensity, channels) : undefined,
      ashLoad: ash / input.filterVolume,
      verdict: share <= 0.05 ? 'clean' : 'plugged',
    };
  },
});
