import { choiceOutput, defineCalculation, formula, quantity, quantityOutput, statement } from '@wallflow/calculation';
import { differentialPressure } from '@wallflow/units';
import { describe, expect, it } from 'vitest';

const drop = (symbol: string, label: string) =>
  quantity(differentialPressure, { symbol, label, range: '0 <= x <= 500 mbar', example: '50 mbar' });

/** Two drops in series against a limit of 100 mbar. */
const gate = defineCalculation({
  id: 'series-gate',
  version: '1.0.0',
  subject: 'filter',
  title: 'Gate',
  purpose: 'Is the sum within the limit?',
  method: 'sum',
  inputs: { first: drop('p_1', 'First'), second: drop('p_2', 'Second') },
  outputs: {
    sum: quantityOutput(differentialPressure, { symbol: 'p', label: 'Sum', units: ['mbar'] }),
    verdict: choiceOutput({ label: 'Verdict', options: { pass: 'within the limit', fail: 'above the limit' } }),
  },
  answer: 'verdict',
  steps: [formula('sum', 'first + second'), statement('verdict', 'Against 100 mbar.')],
  sources: [{ type: 'derivation', title: 'Drops in series add', mark: 'read' }],
  compute: ({ first, second }) => ({ sum: first + second, verdict: first + second <= 10_000 ? 'pass' : 'fail' }),
});

const texts = (first: string, second: string) =>
  gate
    .calculate({ first, second })
    .warnings.filter(({ code }) => code === 'verdict_unsure')
    .map(({ text }) => text);

describe('a verdict', () => {
  it('that one ± would change is called unsure', () => {
    expect(texts('50 ± 4 mbar', '47 mbar')).toEqual(['Verdict: within the ± that was given it could as well be “above the limit”.']);
    expect(texts('50 ± 2 mbar', '47 mbar')).toEqual([]);
  });

  it('that only two ± together would change is called unsure too', () => {
    // 97 + √(2.5² + 2.5²) = 100.5 is over the limit, 97 + 2.5 is not.
    expect(texts('50 ± 2.5 mbar', '47 ± 2.5 mbar')).toHaveLength(1);
    // 97 + √(2² + 2²) = 99.8 is not, although both at their ends would be.
    expect(texts('50 ± 2 mbar', '47 ± 2 mbar')).toEqual([]);
  });

  it('that fails may as well pass', () => {
    expect(texts('50 ± 4 mbar', '53 mbar')).toEqual(['Verdict: within the ± that was given it could as well be “within the limit”.']);
  });

  it('without ± is not questioned', () => {
    expect(gate.calculate({ first: '50 mbar', second: '49.9 mbar' }).warnings).toEqual([]);
  });
});

it('an uncertainty that reaches beyond what makes sense covers one side only', () => {
  const result = gate.calculate({ first: '3 ± 5 mbar', second: '10 mbar' });
  expect(result.warnings).toEqual([expect.objectContaining({ code: 'uncertainty_incomplete', path: ['first'] })]);
  expect(result.uncertainty?.values.sum).toBeCloseTo(500, 9);
});
