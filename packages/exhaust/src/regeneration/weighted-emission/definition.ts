import * as wf from '@wallflow/calculation';
import { fraction, massPerEnergy, ratio } from '@wallflow/units';
import { weightedEmission } from './kernel.js';

const cfr680: wf.Source = {
  type: 'regulation',
  by: 'US Environmental Protection Agency',
  title: '40 CFR 1065.680, Adjusting emission levels to account for infrequently regenerating aftertreatment devices',
  mark: 'read',
};

const emission = (symbol: string, label: string, example: string) =>
  wf.quantity(massPerEnergy, { symbol, label, range: '0 <= x <= 1000 g/kWh', example, units: ['g/kWh', 'mg/kWh'] });
const adjusted = (symbol: string, label: string) => wf.quantityOutput(massPerEnergy, { symbol, label, units: ['g/kWh', 'mg/kWh'] });

export const weightedEmissionCalculation = wf.defineCalculation({
  id: 'weighted-emission',
  subject: 'regeneration',
  title: 'Mean emission with regenerations counted in',
  purpose: 'What does the engine emit on average, when most tests see no regeneration and a few do?',
  keywords: ['regeneration', 'adjustment factor', 'emission factor', 'infrequent', 'weighted', 'regen', 'DPF'],
  method: 'mean of tests with and without a regeneration, weighted by how often there is one',
  inputs: {
    emissionWithout: emission('e_0', 'Emission without a regeneration', '0.11 g/kWh'),
    emissionDuring: emission('e_r', 'Emission in a test with a regeneration', '0.50 g/kWh'),
    ...wf.oneOf({
      regenerationShare: wf.quantity(fraction, {
        symbol: 'F',
        label: 'Share of tests with a regeneration',
        description: 'From the maker of the engine, or from a long record.',
        range: '0 <= x <= 100 %',
        example: '10 %',
        units: ['%'],
      }),
      testsWith: wf.count({ symbol: 'i_r', label: 'Tests with a regeneration', min: 0, max: 100_000, example: 2 }),
    }),
    ...wf.whenGiven('testsWith', {
      testsWithout: wf.count({ symbol: 'i_0', label: 'Tests without one', min: 0, max: 100_000, example: 17 }),
    }),
  },
  intermediates: {
    shareUsed: wf.quantityOutput(fraction, { symbol: 'F_u', label: 'Share of tests that counts', units: ['%'] }),
  },
  outputs: {
    averageEmission: adjusted('e_a', 'Mean emission'),
    upwardAdjustment: adjusted('\\Delta e_u', 'To add to a test without a regeneration'),
    downwardAdjustment: adjusted('\\Delta e_d', 'To take off a test with a regeneration'),
    averageOverWithout: wf.optional(
      wf.quantityOutput(ratio, { symbol: 'K', label: 'Mean emission ÷ emission without a regeneration', digits: 3 }),
    ),
  },
  answer: 'averageEmission',
  steps: [
    wf.cases(
      'shareUsed',
      { 'known(regenerationShare)': 'regenerationShare', otherwise: 'testsWith / (testsWith + testsWithout)' },
      cfr680,
      '(c)(2)',
    ),
    wf.formula('averageEmission', 'shareUsed * emissionDuring + (1 - shareUsed) * emissionWithout', cfr680, '(c)(2)'),
    wf.formula('upwardAdjustment', 'averageEmission - emissionWithout', cfr680, '(c)(3)'),
    wf.formula('downwardAdjustment', 'emissionDuring - averageEmission', cfr680, '(c)(4)'),
    wf.formula('averageOverWithout', 'averageEmission / emissionWithout'),
  ],
  assumptions: { same_test: 'Both emissions come from the same test cycle on the same engine.' },
  limits: {
    not_a_limit: 'This is no judgement against a limit: that needs the rule, the test cycle and the tolerances of the vehicle.',
    frequency: 'The share holds for the driving it was found in: short trips regenerate more often.',
  },
  compute({ emissionWithout, emissionDuring, regenerationShare, testsWith = 0, testsWithout = 0 }, { warn }) {
    if (regenerationShare === undefined && testsWith + testsWithout === 0)
      return wf.inconsistentInputs('at least one test must be counted', ['testsWith'], ['testsWithout']);
    const shareUsed = regenerationShare ?? testsWith / (testsWith + testsWithout);
    const { average, upward, downward } = weightedEmission({ without: emissionWithout, during: emissionDuring, share: shareUsed });
    if (emissionDuring < emissionWithout)
      warn('less_during', 'Less is emitted with a regeneration than without: check which reading is which.', ['emissionDuring']);
    return {
      shareUsed,
      averageEmission: average,
      upwardAdjustment: upward,
      downwardAdjustment: downward,
      averageOverWithout: emissionWithout > 0 ? average / emissionWithout : undefined,
    };
  },
});
