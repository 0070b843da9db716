import * as wf from '@wallflow/calculation';
import { prepare } from '@wallflow/calculation/prepare';
import { differentialPressure, length, ratio } from '@wallflow/units';
import { describe, expect, it } from 'vitest';

const gauge = wf.defineCalculation({
  id: 'gauge',
  version: '1.0.0',
  subject: 'flow',
  title: 'A gauge',
  purpose: 'What does it read?',
  keywords: [],
  method: 'by hand',
  inputs: {
    ...wf.oneOf({
      tubeLength: wf.quantity(length, { symbol: 'l', label: 'Length of the tube', range: '0 < l <= 9 m', example: '1 m' }),
      tubeCount: wf.count({ symbol: 'n', label: 'Pieces of tube', min: 1, max: 9, example: 2 }),
    }),
    runs: wf.list(
      {
        drop: wf.quantity(differentialPressure, {
          symbol: 'p',
          label: 'Reading of the gauge',
          range: '0 <= p <= 9 mbar',
          example: '5 mbar',
        }),
      },
      { label: 'Runs', min: 1, max: 5, example: [{ drop: '5 mbar' }] },
    ),
  },
  outputs: {
    rows: wf.tableOutput({
      label: 'Each run',
      columns: { drop: wf.quantityOutput(differentialPressure, { symbol: 'p', label: 'Reading', units: ['mbar'] }) },
    }),
    most: wf.quantityOutput(ratio, { symbol: 'r', label: 'Share of the largest reading' }),
  },
  answer: 'most',
  steps: [wf.rows('rows', { drop: 'runs.drop' }), wf.formula('most', 'max(runs.drop) / 900')],
  dimensional: 'the largest reading is a number of the gauge',
  sources: [{ type: 'derivation', title: 'A gauge', mark: 'read' }],
  compute(input) {
    if (input.runs.length > 3) return wf.inconsistentInputs('there are too many.', ['runs', 0, 'drop'], ['runs', 3, 'drop']);
    const rows = input.runs.map((run) => ({ drop: run.drop, secret: 42 }));
    return { rows, most: Math.max(...input.runs.map((run) => run.drop)) / 900 };
  },
});

const good = { tubeLength: '1 m', runs: [{ drop: '5 mbar' }] };
const said = (input: unknown): string[] => {
  const result = gauge.runUnknown(input);
  return result.ok ? [] : result.issues.map(wf.issueText);
};

describe('the sentence of an issue', () => {
  it.each([
    [
      'a reading out of range',
      { ...good, runs: [{ drop: '5 mbar' }, { drop: '99 mbar' }] },
      'Runs, row 2: Reading of the gauge: "99 mbar" is out of range; it must be at most 9 mbar.',
    ],
    ['an amount per stroke', { ...good, tubeLength: '5 mg/stroke' }, /^Length of the tube: "mg\/stroke" counts one stroke/],
    ['what is missing', { tubeLength: '1 m', runs: [{}] }, 'Runs, row 1: Reading of the gauge is missing; for example 5 mbar.'],
    ['one of two', { runs: good.runs }, 'Enter either Length of the tube or Pieces of tube.'],
    [
      'a contradiction',
      { ...good, runs: Array.from({ length: 4 }, () => ({ drop: '1 mbar' })) },
      'Runs, row 1: Reading of the gauge and Runs, row 4: Reading of the gauge contradict each other: there are too many.',
    ],
    [
      'a record out of range',
      { ...good, tubeLength: { value: 99, unit: 'm' } },
      'Length of the tube: "99 m" is out of range; it must be at most 9 m.',
    ],
  ])('names the input by its label: %s', (_, input, sentence) => {
    expect(said(input)).toEqual([typeof sentence === 'string' ? sentence : expect.stringMatching(sentence)]);
  });

  it('names what is no input as it was written', () => {
    expect(said({ ...good, tubeLenght: '1 m' })).toEqual(['"tubeLenght" is not an input here; did you mean "tubeLength"?']);
  });

  it('is the same in the message of an exception', () => {
    expect(() => gauge.calculate({ ...good, runs: [{ drop: '99 mbar' }] })).toThrow(/Reading of the gauge: "99 mbar" is out of range/);
  });

  it('keeps the path for programs', () => {
    const result = gauge.runUnknown({ ...good, runs: [{ drop: '99 mbar' }] });
    expect(result.ok ? [] : result.issues).toMatchObject([{ path: ['runs', 0, 'drop'], label: 'Runs, row 1: Reading of the gauge' }]);
  });

  it.each([
    [{ value: Number.NaN, unit: 'm' }, 'value'],
    [{ value: Number.POSITIVE_INFINITY, unit: 'm' }, 'value'],
    [{ value: 1, unit: 'm', uncertainty: Number.NaN }, 'uncertainty'],
  ] as const)('calls %o no number, as a bare one', (tubeLength, part) => {
    const result = gauge.runUnknown({ ...good, tubeLength });
    expect(result.ok ? [] : result.issues).toMatchObject([{ code: 'not_a_number', part, reason: 'not_finite' }]);
  });
});

it('a row of a result holds the columns that it declares and no others', () => {
  const result = gauge.run(good);
  expect(result.ok && result.outputs.rows).toEqual([{ drop: 500 }]);
  const row = prepare(gauge, { given: { runs: good.runs } }).row({ tubeLength: '1 m' });
  expect(row.ok && row.outputs.rows).toEqual([{ drop: 500 }]);
});
