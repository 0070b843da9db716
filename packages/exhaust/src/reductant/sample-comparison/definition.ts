import {
  choice,
  choiceOutput,
  commonPractice,
  defineCalculation,
  inconsistentInputs,
  list,
  noSolution,
  quantity,
  quantityOutput,
  quantityWithDefault,
  tableOutput,
} from '@wallflow/calculation';
import { massFraction, refractiveIndex, temperature } from '@wallflow/units';
import * as z from 'zod';
import { cautions } from '../../cautions.js';
import { concentrationFromIndex, indexPerUrea } from '../reductant-concentration/kernel.js';
import { refractiveIndexAt20 } from '../solution/refractive-index.js';
import { itmoIndex, pace1986 } from '../solution/sources.js';
import { iso22241Part1 } from '../sources.js';
import { compareSamples } from './kernel.js';

const places = {
  container: 'container it was filled from',
  top: 'top of the tank',
  middle: 'middle of the tank',
  bottom: 'bottom of the tank',
  line: 'line to the injector',
} as const;

export const sampleComparisonCalculation = defineCalculation({
  id: 'sample-comparison',
  version: '1.1.0',
  subject: 'reductant',
  title: 'Samples of reductant compared',
  purpose: 'Is the fluid the same at the top, at the bottom and in the container, or has something been added or settled?',
  usedBy: ['technician'],
  keywords: ['sample', 'stratified', 'refractometer', 'contamination'],
  method: 'difference of the urea content read with one instrument',
  inputs: z.strictObject({
    samples: list(
      z.strictObject({
        place: choice({ label: 'Taken from', options: places, example: 'top' }),
        refractiveIndex: quantity(refractiveIndex, {
          symbol: 'n',
          label: 'Refractive index',
          min: '1.325',
          max: '1.42',
          usual: ['1.36', '1.40'],
          usualReason: 'reductant reads near 1.383',
          example: '1.3829',
        }).optional(),
        refractometerPercent: quantity(massFraction, {
          symbol: 'w_r',
          label: 'Refractometer for reductant, per cent of urea',
          description: 'In place of the index. For one that compensates for temperature enter 20 °C.',
          min: '0 %',
          max: '50 %',
          usual: ['20 %', '40 %'],
          usualReason: 'reductant reads near 32.5 %',
          example: '30.1 %',
          units: ['%'],
        }).optional(),
        temperature: quantity(temperature, {
          symbol: 'T',
          label: 'Temperature of the sample',
          min: '-5 °C',
          max: '45 °C',
          usual: ['10 °C', '30 °C'],
          usualReason: 'the shift to 20 °C is a straight line',
          example: '20 °C',
          units: ['degC'],
        }),
      }),
      {
        label: 'Samples',
        description: 'Two or more, read with the same instrument.',
        min: 2,
        max: 6,
        example: [
          { place: 'top', refractometerPercent: '30.1 %', temperature: '20 °C' },
          { place: 'bottom', refractometerPercent: '30.3 %', temperature: '20 °C' },
          { place: 'container', refractometerPercent: '32.4 %', temperature: '20 °C' },
        ],
      },
    ),
    indexUncertainty: quantityWithDefault(refractiveIndex, {
      symbol: 'u_n',
      label: 'How well the refractometer repeats (±)',
      min: '0.00001',
      max: '0.01',
      example: '0.0002',
      default: '0.0002',
      defaultReason: 'repeat readings of a hand refractometer; common practice, no source',
    }),
    allowedDifference: quantityWithDefault(massFraction, {
      symbol: 'd',
      label: 'Difference that does not matter',
      min: '0 %',
      max: '10 %',
      example: '0.5 %',
      units: ['%'],
      default: '0.5 %',
      defaultReason: 'a third of the window of ISO 22241-1; common practice, no source',
    }),
  }),
  intermediates: {
    uncertainty: quantityOutput(massFraction, { symbol: 'u', label: 'Uncertainty of the difference', digits: 2, units: ['%'] }),
  },
  outputs: {
    samplesRead: tableOutput({
      label: 'Samples',
      columns: {
        place: choiceOutput({ label: 'Taken from', options: places }),
        ureaFraction: quantityOutput(massFraction, { symbol: 'w', label: 'Urea, by mass', digits: 3, units: ['%'] }),
      },
    }),
    spread: quantityOutput(massFraction, {
      symbol: '\\Delta w',
      label: 'Difference between the strongest and the weakest',
      digits: 2,
      units: ['%'],
    }),
    verdict: choiceOutput({
      label: 'Verdict',
      options: {
        same: 'the same fluid everywhere',
        differ: 'the samples differ',
        undecided: 'undecided: the difference is as large as its uncertainty',
      },
    }),
  },
  constants: {},
  steps: [
    { gives: 'samplesRead', text: 'Urea content of each sample from its index, shifted to 20 °C.', source: 'pace1986' },
    { gives: 'spread', tex: '[[spread]] = w_{max}-w_{min}' },
    { gives: 'uncertainty', tex: '[[uncertainty]] = \\sqrt{u_{max}^{2}+u_{min}^{2}}' },
    { gives: 'verdict', text: 'The difference with its uncertainty is compared with: [[allowedDifference]].', source: 'practice' },
  ],
  assumptions: [{ code: 'one_instrument', text: 'One instrument read all samples, so that its error drops out of the difference.' }],
  limits: [{ code: 'index_only', text: 'Fuel and oil float as a film: look at the top sample as well as reading it.' }],
  cautions: [cautions.waste],
  sources: {
    pace1986,
    itmoIndex,
    iso22241Part1,
    practice: commonPractice('Samples from the top, the middle and the bottom of the tank are compared'),
  },
  dimensional: 'empirical relations in molarity and index',
  compute(input) {
    const indices = input.samples.map(({ refractiveIndex: index, refractometerPercent: percent }) =>
      percent === undefined ? index : (index ?? refractiveIndexAt20(percent)),
    );
    const unread = indices.indexOf(undefined);
    if (unread >= 0) {
      const paths = ['refractometerPercent', 'refractiveIndex'].map((key) => ['samples', unread, key]);
      return inconsistentInputs('enter either the per cent of a refractometer or the refractive index of each sample', ...paths);
    }
    const read = input.samples.map((sample, index) => ({
      place: sample.place,
      ...concentrationFromIndex(indices[index] ?? 0, sample.temperature, input.indexUncertainty),
    }));
    const bad = read.findIndex((sample) => sample.ureaFraction < -0.01 || sample.ureaFraction > 0.53);
    if (bad >= 0) return noSolution('this index is not that of urea in water', ['samples', bad, 'refractiveIndex']);
    const { spread, uncertainty, verdict } = compareSamples(
      read.map((sample) => ({ ureaFraction: sample.ureaFraction, uncertainty: sample.uncertainty / indexPerUrea })),
      input.allowedDifference,
    );
    return {
      samplesRead: read.map(({ place, ureaFraction }) => ({ place, ureaFraction: Math.max(0, ureaFraction) })),
      spread,
      uncertainty,
      verdict,
    };
  },
  advise: ({ verdict }) =>
    verdict === 'differ'
      ? [
          {
            tone: 'do',
            text: 'Weaker at the top: water was added, or the fluid was not mixed after a refill. Weaker everywhere than in the container: look at what was filled.',
          },
          { tone: 'do', text: 'Drain, flush by the vehicle maker’s procedure and refill with fluid of known quality.' },
        ]
      : [],
});
