import * as wf from '@wallflow/calculation';
import { massFraction, refractiveIndex, temperature } from '@wallflow/units';
import { cautions } from '../../cautions.js';
import { concentrationFromIndex, indexPerUrea } from '../reductant-concentration/kernel.js';
import { refractiveIndexAt20 } from '../solution/refractive-index.js';
import { itmoIndex, pace1986 } from '../solution/sources.js';
import { indexSlopeFormula, solutionDensity } from '../solution/working.js';
import { iso22241Part1 } from '../sources.js';
import { compareSamples } from './kernel.js';

const places = {
  container: 'container it was filled from',
  top: 'top of the tank',
  middle: 'middle of the tank',
  bottom: 'bottom of the tank',
  line: 'line to the injector',
} as const;

const urea = (symbol: string, label: string, digits: number) => wf.quantityOutput(massFraction, { symbol, label, digits, units: ['%'] });
const index = (symbol: string, label: string) => wf.quantityOutput(refractiveIndex, { symbol, label, digits: 5, leastDigits: 5 });
const practice = wf.commonPractice('Samples from the top, the middle and the bottom of the tank are compared');

export const sampleComparisonCalculation = wf.defineCalculation({
  id: 'sample-comparison',
  subject: 'reductant',
  title: 'Samples of reductant compared',
  purpose: 'Is the fluid the same at the top, at the bottom and in the container, or has something been added or settled?',
  keywords: 'sample, stratified, refractometer, contamination, DEF, AUS 32, SCR',
  method: 'difference of the urea content read with one instrument',
  inputs: {
    samples: wf.list(
      {
        place: wf.choice({ label: 'Taken from', options: places, example: 'top' }),
        ...wf.oneOf(
          {
            refractometerPercent: wf.quantity(massFraction, {
              symbol: 'w_r',
              label: 'Refractometer for reductant, per cent of urea',
              description: 'For one that compensates for temperature enter 20 °C.',
              range: '0 <= x <= 50 %',
              usual: ['20 %', '40 %', 'reductant reads near 32.5 %'],
              example: '30.1 %',
              units: ['%'],
            }),
            refractiveIndex: wf.quantity(refractiveIndex, {
              symbol: 'n',
              label: 'Refractive index',
              range: '1.325 <= x <= 1.42',
              usual: ['1.36', '1.40', 'reductant reads near 1.383'],
              example: '1.3788',
            }),
          },
          { prefer: 'refractiveIndex' },
        ),
        fluidTemperature: wf.quantity(temperature, {
          symbol: 'T',
          label: 'Temperature of the sample',
          range: '-5 <= x <= 45 °C',
          usual: ['10 °C', '30 °C', 'the shift to 20 °C is a straight line'],
          example: '20 °C',
          units: ['degC'],
        }),
      },
      {
        label: 'Samples',
        description: 'Two or more, read with the same instrument.',
        min: 2,
        max: 6,
        example: [
          { place: 'top', refractometerPercent: '30.1 %', fluidTemperature: '20 °C' },
          { place: 'bottom', refractometerPercent: '30.3 %', fluidTemperature: '20 °C' },
          { place: 'container', refractometerPercent: '32.4 %', fluidTemperature: '20 °C' },
        ],
      },
    ),
    indexRepeatability: wf.quantity(refractiveIndex, {
      symbol: 'u_n',
      label: 'Repeatability of the refractometer (±)',
      range: '0.00001 <= x <= 0.01',
      default: ['0.0002', 'repeat readings of a hand refractometer; common practice, no source'],
    }),
    allowedUreaDifference: wf.quantity(massFraction, {
      symbol: 'd',
      label: 'Difference that does not matter',
      range: '0 <= x <= 10 %',
      units: ['%'],
      default: ['0.5 %', 'a third of the window of ISO 22241-1; common practice, no source'],
    }),
  },
  intermediates: {
    strongest: urea('w_{max}', 'Strongest sample', 3),
    weakest: urea('w_{min}', 'Weakest sample', 3),
    strongestUncertainty: urea('u_{max}', 'Uncertainty of the strongest sample', 2),
    weakestUncertainty: urea('u_{min}', 'Uncertainty of the weakest sample', 2),
    ureaDifferenceUncertainty: urea('u', 'Uncertainty of the difference', 2),
  },
  outputs: {
    samplesRead: wf.tableOutput({
      label: 'Samples',
      columns: {
        place: wf.choiceOutput({ label: 'Taken from', options: places }),
        indexRead: index('n_T', 'Index as read'),
        indexAt20: index('n_{20}', 'Index at 20 °C'),
        ureaFraction: urea('w', 'Urea in the fluid, by mass', 3),
        ureaUncertainty: urea('u_w', 'Uncertainty', 2),
      },
    }),
    ureaDifference: urea('\\Delta w', 'Difference between the strongest and the weakest', 2),
    verdict: wf.choiceOutput({
      label: 'Verdict',
      options: {
        same: 'the same fluid everywhere',
        differ: 'the samples differ',
        undecided: 'not clear: the difference is as large as its uncertainty',
      },
    }),
  },
  constants: { referenceTemperature: solutionDensity.constants.referenceTemperature },
  answer: 'verdict',
  steps: [
    wf.rows(
      'samplesRead',
      {
        indexAt20: `indexRead + ${indexSlopeFormula('ureaFraction')} * (samples.fluidTemperature - referenceTemperature)`,
        ureaUncertainty: 'sqrt(indexRepeatability ^ 2 + (0.4e-4 * (samples.fluidTemperature - referenceTemperature)) ^ 2) / 0.165',
      },
      pace1986,
      undefined,
      'Urea content of each sample from its index at 20 °C, as on the page of one reading.',
    ),
    wf.formula('strongest', 'max(samplesRead.ureaFraction)'),
    wf.formula('weakest', 'min(samplesRead.ureaFraction)'),
    wf.formula('ureaDifference', 'strongest - weakest'),
    wf.fromTable('strongestUncertainty', ['strongest'], undefined, undefined, 'Uncertainty of that sample, in the table of samples.'),
    wf.fromTable('weakestUncertainty', ['weakest'], undefined, undefined, 'Uncertainty of that sample, in the table of samples.'),
    wf.formula('ureaDifferenceUncertainty', 'sqrt(strongestUncertainty ^ 2 + weakestUncertainty ^ 2)'),
    wf.verdict(
      'verdict',
      {
        differ: 'ureaDifference - ureaDifferenceUncertainty > allowedUreaDifference',
        same: 'ureaDifference + ureaDifferenceUncertainty <= allowedUreaDifference',
        undecided: 'otherwise',
      },
      practice,
    ),
  ],
  assumptions: { one_instrument: 'One instrument read all samples, so that its error drops out of the difference.' },
  limits: { index_only: 'Fuel and oil float as a film: look at the top sample as well as reading it.' },
  cautions: [cautions.waste],
  dimensional: 'empirical relations in molarity and index',
  sources: [itmoIndex, iso22241Part1],
  compute(input) {
    const read = input.samples.map(({ place, refractiveIndex: typed, refractometerPercent, fluidTemperature }) => {
      const indexRead = typed ?? refractiveIndexAt20(wf.known(refractometerPercent));
      return { place, indexRead, ...concentrationFromIndex(indexRead, fluidTemperature, input.indexRepeatability) };
    });
    const bad = read.findIndex((sample) => sample.ureaFraction < -0.01 || sample.ureaFraction > 0.53);
    if (bad >= 0) return wf.noSolution('this index is not that of urea in water', ['samples', bad, 'refractiveIndex']);
    // What reads a little below water holds no urea.
    const estimates = read.map(({ ureaFraction, uncertainty }) => ({
      ureaFraction: Math.max(0, ureaFraction),
      uncertainty: uncertainty / indexPerUrea,
    }));
    const { strongest, weakest, spread, uncertainty, verdict } = compareSamples(estimates, input.allowedUreaDifference);
    return {
      samplesRead: read.map(({ place, indexRead, at20 }, row) => {
        const { ureaFraction, uncertainty: ureaUncertainty } = wf.known(estimates[row]);
        return { place, indexRead, indexAt20: at20, ureaFraction, ureaUncertainty };
      }),
      strongest: strongest.ureaFraction,
      weakest: weakest.ureaFraction,
      strongestUncertainty: strongest.uncertainty,
      weakestUncertainty: weakest.uncertainty,
      ureaDifference: spread,
      ureaDifferenceUncertainty: uncertainty,
      verdict,
    };
  },
  advise: ({ verdict }) =>
    verdict === 'differ'
      ? [
          {
            tone: 'do',
            text: 'Weaker at the top: water was added, or the fluid was not mixed after a refill. Weaker everywhere than in the container: find out what was filled.',
          },
          { tone: 'do', text: 'Drain, flush by the vehicle maker’s procedure and refill with fluid of known quality.' },
        ]
      : [],
});
