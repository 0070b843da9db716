import { choiceOutput, countOutput, defineCalculation, formula, list, quantity, quantityOutput, statement } from '@wallflow/calculation';
import { time } from '@wallflow/units';
import { describe, expect, it } from 'vitest';

const source = { type: 'book', title: 'Arithmetic', mark: 'from memory' } as const;
let evaluations = 0;

function laps(limit: { mostEvaluations?: number; uncertaintyNote?: string }) {
  return defineCalculation({
    id: 'laps',
    version: '1.0.0',
    subject: 'gas',
    title: 'Laps',
    purpose: 'How long do these laps take?',
    method: 'sum',
    inputs: {
      laps: list(
        { lap: quantity(time, { symbol: 't', label: 'Lap', range: '0 s <= x <= 1 h', example: '60 s' }) },
        {
          label: 'Laps',
          min: 1,
          max: 5000,
          example: [{ lap: '60 s' }],
        },
      ),
    },
    outputs: { lapCount: countOutput({ symbol: 'n', label: 'Count' }), total: quantityOutput(time, { symbol: 't_t', label: 'Total' }) },
    answer: 'total',
    steps: [formula('lapCount', 'count(laps.lap)', source), formula('total', 'sum(laps.lap)', source)],
    ...limit,
    compute: (input) => {
      evaluations += 1;
      return { lapCount: input.laps.length, total: input.laps.reduce((sum, { lap }) => sum + lap, 0) };
    },
  });
}

const input = { laps: Array.from({ length: 2500 }, (_, index) => ({ lap: `${60 + (index % 7)} ± 2 s` })) };

describe('very many uncertain inputs', () => {
  it('leave the readings as they were given', () => {
    const seen: number[][] = [];
    const watched = defineCalculation({
      ...laps({}).spec,
      inputs: laps({}).spec.inputs._zod.def.shape,
      compute: (values) => {
        seen.push(values.laps.map(({ lap }) => lap));
        return { lapCount: values.laps.length, total: values.laps.reduce((sum, { lap }) => sum + lap, 0) };
      },
    });
    watched.calculate({ laps: [{ lap: '60 ± 2 s' }, { lap: '61 s' }, { lap: '62 ± 1 s' }] });
    expect(seen).toEqual([
      [60, 61, 62],
      [62, 61, 62],
      [58, 61, 62],
      [60, 61, 63],
      [60, 61, 61],
    ]);
  });

  // 2 s · √2500 = 100 s, as variances add; 100 draws know it to about 7 %, and three times that is the margin.
  it('are moved together where a definition bounds the evaluations, and the result says so', () => {
    evaluations = 0;
    const result = laps({ mostEvaluations: 200 }).calculate(input);
    expect(evaluations).toBe(201);
    expect(result.uncertainty?.values.total).toBeGreaterThan(79);
    expect(result.uncertainty?.values.total).toBeLessThan(121);
    expect(result.warnings.map(({ code }) => code)).toEqual(['uncertainty_sampled']);
    expect(result.warnings[0]?.text).toContain('about 8 %');
  });

  it('are moved together, in fewer draws the more there are, where a definition does not bound the evaluations', () => {
    for (const [count, most] of [
      [200, 400],
      [201, 400],
      [2500, 80],
      [5000, 40],
    ] as const) {
      evaluations = 0;
      const all = { laps: Array.from({ length: count }, () => ({ lap: '60 ± 2 s' })) };
      const { uncertainty, warnings } = laps({}).calculate(all);
      expect(evaluations).toBe(1 + most);
      expect(warnings.map(({ code }) => code)).toEqual(2 * count > most ? ['uncertainty_sampled'] : []);
      // 2 s times the root of their number; three times what the draws know it to.
      const expected = 2 * Math.sqrt(count);
      expect(Math.abs((uncertainty?.values.total ?? 0) - expected)).toBeLessThan((3 / Math.sqrt(most)) * expected);
    }
  });

  it('are moved one by one where they are few enough', () => {
    const few = { laps: input.laps.slice(0, 25) };
    const result = laps({ mostEvaluations: 200 }).calculate(few);
    expect(result.uncertainty?.values.total).toBeCloseTo(10, 9);
    expect(result.uncertainty?.budget.total).toHaveLength(25);
    expect(result.warnings).toEqual([]);
  });
});

describe('a verdict on as many uncertain inputs as may be asked for', () => {
  const { spec } = laps({});
  const judged = (mostEvaluations: number) =>
    defineCalculation({
      ...spec,
      inputs: spec.inputs._zod.def.shape,
      mostEvaluations,
      outputs: { ...spec.outputs, verdict: choiceOutput({ label: 'Verdict', options: { fast: 'Fast', slow: 'Slow' } }) },
      steps: [...spec.steps, statement('verdict', 'Verdict: [[verdict]].')],
      compute: ({ laps: all }) => {
        const total = all.reduce((sum, { lap }) => sum + lap, 0);
        return { lapCount: all.length, total, verdict: total < 605 ? ('fast' as const) : ('slow' as const) };
      },
    });
  // 600 s, and 2 s · √10 = 6.3 s together; one lap alone does not reach 605 s.
  const ten = { laps: Array.from({ length: 10 }, () => ({ lap: '60 ± 2 s' })) };

  it('says so where inputs that are wrong together could not be tried any more', () => {
    const codes = judged(20)
      .calculate(ten)
      .warnings.map(({ code }) => code);
    expect(codes).toEqual(['uncertainty_not_all_tried']);
  });

  it('is called unsure where they could', () => {
    const codes = judged(40)
      .calculate(ten)
      .warnings.map(({ code }) => code);
    expect(codes).toEqual(['verdict_unsure']);
  });
});

it('a ± of what is counted is not carried through, and the result says why', () => {
  const counted = laps({ uncertaintyNote: 'Laps are counted.' });
  evaluations = 0;
  const result = counted.calculate(input);
  expect(evaluations).toBe(1);
  expect(result.uncertainty).toBeUndefined();
  expect(result.warnings).toEqual([{ code: 'uncertainty_not_carried', text: 'Laps are counted.' }]);
  expect(counted.calculate({ laps: [{ lap: '60 s' }] }).warnings).toEqual([]);
});
