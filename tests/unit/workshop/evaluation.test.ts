import { causeOrder, evaluateCase, evaluationVersion, generateCase, ranking, summarise } from '@wallflow/workshop/cases';
import { describe, expect, it } from 'vitest';
import { readEvaluation } from '../../support/evaluation.js';

const rows = readEvaluation();

describe('the stored answers to generated cases', () => {
  it('are of this version, at least two thousand with one seed after the other', () => {
    expect(rows.every(({ version }) => version === evaluationVersion)).toBe(true);
    expect(rows.map(({ seed }) => seed)).toEqual(rows.map((_, index) => (rows[0]?.seed ?? 0) + index));
    expect(rows.length).toBeGreaterThanOrEqual(2000);
  });

  // Spread over the file; `npm run evaluate` makes it anew.
  it('are what the estimate says today', () => {
    for (const { version, ...row } of rows.filter(({ seed }) => seed % Math.ceil(rows.length / 10) === 7)) {
      expect({ ...evaluateCase(row.seed) }).toEqual(row);
    }
  });

  it('come from the same vehicle for the same seed', () => {
    expect(generateCase(7)).toEqual(generateCase(7));
  });
});

describe('the sum of many answers', () => {
  // Two cases by hand: 0.7 for the hidden cause, and 0.3 where 0.6 was given to another.
  const mark = (chances: Partial<Record<(typeof causeOrder)[number], number>>, above: number) => ({
    chances: causeOrder.map((id) => chances[id] ?? 0),
    soot: [2, 6] as const,
    ash: [10, 20] as const,
    above,
    plan: 'leave',
    fewDraws: false,
  });
  const row = (seed: number, given: ReturnType<typeof mark>, soot: number) =>
    ({ seed, cause: 'soot', soot, ash: 15, readings: given, trials: given, heated: false, damaged: false }) as const;
  const summary = summarise(
    [row(1, mark({ soot: 700, ash: 300 }, 400), 7), row(2, mark({ soot: 300, ash: 600, 'sensor-zero': 100 }, 9000), 5)],
    'readings',
  );

  it('counts first, first two, Brier score and coverage as by hand', () => {
    expect(summary).toMatchObject({ cases: 2, first: 0.5, firstTwo: 1, sootCovered: 0.5, ashCovered: 1 });
    expect(summary.statedFirst).toBeCloseTo(0.65, 12);
    // (0.3² + 0.3² + 0.7² + 0.6² + 0.1²) / 2
    expect(summary.brier).toBeCloseTo(0.52, 12);
    expect(summary.permitted).toEqual({ cases: 1, seen: 1, stated: 0.04 });
    expect(summary.above.stated).toBeCloseTo(0.47, 12);
    expect(summary.confusion.get('soot')?.get('ash')).toBe(1);
    expect(ranking(mark({ ash: 300, soot: 700 }, 0))[0]).toBe('soot');
  });

  it('has the bins of the reliability table by hand', () => {
    const bin = summary.reliability.find(({ from }) => from === 0.3);
    // 0.3 for ash, which was not hidden, and 0.3 for soot, which was.
    expect(bin).toMatchObject({ count: 2, seen: 0.5 });
    expect(bin?.stated).toBeCloseTo(0.3, 12);
  });
});
