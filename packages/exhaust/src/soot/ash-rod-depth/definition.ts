import * as wf from '@wallflow/calculation';
import { fraction, length, mass, massConcentration } from '@wallflow/units';
import { cautions } from '../../cautions.js';
import { inletOpenFraction, plugAsh } from '../ash-distribution/kernel.js';
import { ashFilterInputs, channelWidthOf, openInlet } from '../ash-inputs.js';
import { ashGeometry, ashPractice, weightedMean } from '../sources.js';
import { depthStatistics } from './kernel.js';

export const ashRodDepthCalculation = wf.defineCalculation({
  id: 'ash-rod-depth',
  subject: 'soot',
  title: 'Ash from a rod in the channels',
  purpose: 'How much ash plugs the ends of the channels, by the depth that a rod reaches?',
  keywords: 'rod test, channel depth, ash plug, cleaning check, DPF',
  method: 'mean missing depth times open inlet area and packing density',
  inputs: {
    ...ashFilterInputs,
    depths: wf.list(
      {
        depth: wf.quantity(length, {
          symbol: 'd',
          label: 'Depth reached',
          range: '0 <= x <= 600 mm',
          usual: ['0 mm', '400 mm', { above: 'longer than the channels of common filters' }],
          example: '185 mm',
          units: ['mm', 'in'],
        }),
      },
      {
        label: 'Rod depths from the inlet face',
        description: 'Stiff stainless rod of 0.8 mm; five to nine places over the face.',
        min: 1,
        max: 100,
        example: [{ depth: '187 mm' }, { depth: '184 mm' }, { depth: '182 mm' }, { depth: '185 mm' }, { depth: '186 mm' }],
      },
    ),
  },
  intermediates: {
    ...openInlet.intermediates,
    meanDepth: wf.quantityOutput(length, { symbol: '\\bar d', label: 'Mean depth', digits: 4, units: ['mm'] }),
    depthDeviation: wf.optional(
      wf.quantityOutput(length, { symbol: 's_d', label: 'Standard deviation of the depths', digits: 2, units: ['mm'] }),
    ),
  },
  outputs: {
    plugLength: wf.quantityOutput(length, { symbol: 'L_p', label: 'Length of the ash plug', digits: 3, units: ['mm'] }),
    plugShare: wf.quantityOutput(fraction, {
      symbol: 'x_p',
      label: 'Share of the channel depth taken by the plug',
      digits: 3,
      units: ['%'],
    }),
    plugAshMass: wf.quantityOutput(mass, { symbol: 'm_a', label: 'Ash in the plugs', digits: 3, units: ['g', 'kg'] }),
    plugAshUncertainty: wf.optional(
      wf.quantityOutput(mass, {
        symbol: 'u(m_a)',
        label: 'Standard uncertainty of that ash from the scatter of the depths',
        digits: 2,
        units: ['g'],
      }),
    ),
    plugAshLoad: wf.quantityOutput(massConcentration, { symbol: "m'_a", label: 'Ash load of the plugs', digits: 3, units: ['g/L'] }),
    verdict: wf.choiceOutput({
      label: 'Depth against a clean channel',
      options: { clean: 'at least 95 % free: as a cleaned filter should be', plugged: 'less than 95 % free: ash is left' },
    }),
  },
  answer: 'plugAshMass',
  steps: [
    ...openInlet.steps,
    wf.formula('meanDepth', 'mean(depths.depth)'),
    wf.formula('depthDeviation', 'deviation(depths.depth)'),
    wf.formula('plugLength', 'max(0, channelLength - meanDepth)', ashGeometry),
    wf.formula('plugShare', 'plugLength / channelLength'),
    wf.formula('plugAshMass', 'plugShare * ashPackingDensity * filterVolume * inletOpen', ashGeometry),
    wf.formula(
      'plugAshUncertainty',
      'depthDeviation / sqrt(count(depths.depth)) / channelLength * ashPackingDensity * filterVolume * inletOpen',
      weightedMean,
      'standard deviation of the mean',
    ),
    wf.formula('plugAshLoad', 'plugAshMass / filterVolume'),
    wf.verdict('verdict', { clean: 'plugShare <= 0.05', plugged: 'otherwise' }, ashPractice),
  ],
  assumptions: {
    sample_stands_for_all: 'The channels probed are typical of all, and all have the full depth.',
    dense_plug: 'What stops the rod is a solid plug; a bridge of ash across the channel would be counted as too much ash.',
  },
  limits: { layer_not_seen: 'The rod does not find ash on the walls: the filter holds more ash than the plugs.' },
  cautions: [cautions.ashDust, { code: 'rod_damage', text: 'Push gently: the rod can break the walls of the filter.' }],
  compute(input) {
    const channelWidth = channelWidthOf(input);
    if (typeof channelWidth !== 'number') return channelWidth;
    const deep = input.depths.findIndex(({ depth }) => depth > input.channelLength * (1 + 1e-9));
    if (deep >= 0)
      return wf.inconsistentInputs('a depth is larger than the depth of a clean channel', ['depths', deep, 'depth'], ['channelLength']);
    const channels = { ...input, channelWidth };
    const { mean, deviation, uncertainty } = depthStatistics(input.depths.map(({ depth }) => depth));
    const plugLength = Math.max(0, input.channelLength - mean);
    const share = plugLength / input.channelLength;
    const plugAshMass = plugAsh(share, input.ashPackingDensity, channels);
    const scattered = input.depths.length > 1;
    return {
      channelWidth,
      meanDepth: mean,
      depthDeviation: scattered ? deviation : undefined,
      inletOpen: inletOpenFraction(channels),
      plugLength,
      plugShare: share,
      plugAshMass,
      plugAshUncertainty: scattered ? plugAsh(uncertainty / input.channelLength, input.ashPackingDensity, channels) : undefined,
      plugAshLoad: plugAshMass / input.filterVolume,
      verdict: share <= 0.05 ? 'clean' : 'plugged',
    };
  },
});
