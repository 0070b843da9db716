import { causeOrder, summarise } from '@wallflow/workshop/cases';
import { describe, expect, it } from 'vitest';
import { goalsOf } from '../../../docs-site/plugins/validation/estimate-data.js';
import { evidence } from '../../../docs-site/plugins/validation/evidence.js';
import { validationPages } from '../../../docs-site/src/data/validation-pages.js';
import { readUnitCases } from '../../reference/units/support/unit-case.js';
import { readEvaluation } from '../../support/evaluation.js';
import { readMeasuredCurves } from '../../support/measured-curve.js';
import { readMisprints } from '../../support/misprint.js';
import { readCaseFiles } from '../../support/reference-case.js';

const data = evidence();

describe('measured curves on the site', () => {
  it.each(readMeasuredCurves())('$id is there with every point, model and finding', (curve) => {
    const view = data.measured.find(({ id }) => id === curve.id);
    expect(view?.points.map(({ at }) => at)).toEqual(curve.points.map(({ at }) => at));
    expect(view?.findings).toEqual(curve.findings);
    expect(view?.notComputable).toBe(curve.notComputable);
    if (curve.notComputable !== undefined) return;
    expect(view?.models.map(({ name }) => name)).toEqual(curve.models.map(({ name }) => name));
    expect(view?.checks).toHaveLength(curve.checks.length);
    expect(view?.plot?.plot?.y).toEqual([...curve.models.map(({ name }) => name), 'measured']);
    for (const point of view?.points ?? []) {
      expect(point.models).toHaveLength(curve.models.length);
      expect(JSON.stringify(point)).not.toContain('NaN');
    }
  });

  it.each(readMeasuredCurves())('$id states every input, where it comes from, and what stands in for what is not given', (curve) => {
    const inputs = data.measured.find(({ id }) => id === curve.id)?.inputs ?? [];
    const given = Object.keys(curve.inputs).length;
    expect(inputs.length).toBeGreaterThanOrEqual(given);
    for (const reason of Object.values(curve.assumed ?? {}))
      expect(
        inputs.some(({ from }) => from.includes(reason)),
        reason,
      ).toBe(true);
    if (curve.models.some(({ calculation }) => calculation === 'loaded-pressure-drop')) {
      expect(inputs).toContainEqual({ label: 'Ash in the filter', text: '0 g', from: 'default of the calculation' });
    }
  });

  it('show the misses of the closed form over the first grams and in a full channel', () => {
    const shown = (id: string, at: string, model = 'closed form') => {
      const curve = data.measured.find((view) => view.id === id);
      const column = curve?.models.findIndex(({ name }) => name === model) ?? -1;
      return curve?.points.find((point) => point.at === at)?.models[column];
    };
    expect(shown('ex-47', '15.9 g')).toMatchObject({ difference: '−45.9\u00a0%', warns: true });
    expect(shown('filter-a-engine', '58.2 g')).toMatchObject({ difference: '−15.4\u00a0%', warns: true });
    expect(shown('ex-47', '42.8 g')).toMatchObject({ warns: true });
    expect(shown('ex-47', '42.8 g', 'deep bed')).toMatchObject({ warns: false });
  });
});

describe('misprints on the site', () => {
  it.each(readMisprints().flatMap(({ entries }) => entries))('$printed', ({ printed, used, reason }) => {
    expect(data.misprints).toContainEqual(expect.objectContaining({ printed, used, reason }));
  });

  it('stand beside every known disagreement, with both values', () => {
    const reasons = [...readCaseFiles(), ...readUnitCases()].flatMap((file) =>
      (file.cases as readonly { readonly disagreement?: string | undefined }[]).flatMap(({ disagreement }) => disagreement ?? []),
    );
    expect(reasons.length).toBeGreaterThan(5);
    for (const reason of reasons) {
      const entry = data.disagreements.find((candidate) => candidate.reason === reason);
      expect(entry?.values.length, reason).toBeGreaterThan(0);
    }
  });
});

describe('units and numerics on the site', () => {
  it('list every unit case', () => {
    const expected = readUnitCases().flatMap(({ cases }) => cases);
    const rows = data.units.flatMap((group) => group.rows);
    expect(rows).toHaveLength(expected.length);
    expect(rows.filter((row) => !row.agrees && row.disagreement === undefined)).toEqual([]);
  });

  it('list the certified, published and independent values, none of which differs without a reason', () => {
    const origins = new Set(data.numerics.map(({ origin }) => origin));
    expect([...origins].sort()).toEqual(['certified-value', 'independent-code', 'published-table', 'standard-example', 'textbook-example']);
    const rows = data.numerics.flatMap((group) => group.rows);
    expect(rows.filter((row) => !row.agrees && row.disagreement === undefined)).toEqual([]);
    expect(rows.filter((row) => !/^-?\d+(\.\d+)?( × 10[⁰¹²³⁴⁵⁶⁷⁸⁹⁻]+)?$/.test(row.ours))).toEqual([]);
  });

  it('have groups with ids of their own', () => {
    for (const groups of [data.units, data.numerics]) expect(new Set(groups.map(({ id }) => id)).size).toBe(groups.length);
  });
});

it('the pages linked from the validation page are those that are made', () => {
  expect(validationPages.map(({ path }) => path)).toEqual(
    ['measured', 'misprints', 'units', 'numerics', 'estimate'].map((name) => `/validation/${name}`),
  );
});

describe('the estimate on the site', () => {
  const view = data.estimate;

  it('publishes the shares of the stored rows', () => {
    const rows = readEvaluation();
    expect(view.cases).toBe(rows.length);
    const first = rows.filter(({ cause, readings }) => causeOrder[readings.chances.indexOf(Math.max(...readings.chances))] === cause);
    expect(view.readings.first).toBe(`${Math.round((100 * first.length) / rows.length)} %`);
    expect(view.readings.confusion.reduce((sum, { cases }) => sum + cases, 0)).toBe(rows.length);
    expect(view.trials.reliability.reduce((sum, { count }) => sum + count, 0)).toBe(rows.length * causeOrder.length);
    expect([view.firstVehicle, view.lastVehicle]).toEqual([rows[0]?.seed, rows.at(-1)?.seed]);
    expect(view.damagedByLoad).toBe(rows.filter(({ damaged }) => damaged).length);
  });

  it('calls each goal met or not met by its own figure', () => {
    const permitted = { cases: 100, seen: 0.03, stated: 0.02 };
    const base = summarise([], 'readings');
    const readings = { ...base, first: 0.75, firstTwo: 0.949, sootCovered: 0.951, ashCovered: 0.85, permitted };
    const trials = { ...base, first: 0.91, sootCovered: 0.9, ashCovered: 0.84, permitted: { ...permitted, seen: 0.02 } };
    const met = goalsOf(readings, trials, { heating: 40, damaged: 0 }).map((goal) => goal.met);
    expect(met).toEqual([true, false, true, false, true, true, false, false, true, true]);
    expect(goalsOf(readings, trials, { heating: 40, damaged: 1 }).at(-1)).toMatchObject({ seen: '1 of 40 such plans', met: false });
  });

  it('calls a goal that nothing could show not met', () => {
    const none = summarise([], 'readings');
    expect(goalsOf(none, none, { heating: 0, damaged: 0 }).map(({ met }) => met)).not.toContain(true);
  });

  it('names each cause in words', () => {
    for (const { hidden, taken } of view.readings.confusion)
      expect(`${hidden} ${taken.join(' ')}`).not.toMatch(/[a-z]-[a-z]+-[a-z]|NaN|undefined/);
  });
});
