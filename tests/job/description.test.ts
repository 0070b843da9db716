import { readFileSync } from 'node:fs';
import { shapeOf } from '@wallflow/calculation';
import {
  formFromJob,
  jobForm,
  jobFromForm,
  jobIssueText,
  jobSchema,
  jobSections,
  placeInForm,
  runJob,
  sheetAsText,
  succeeded,
} from '@wallflow/workshop';
import { describe, expect, it } from 'vitest';
import { demoFile, paperOf, resultOf } from './demo-job.js';

// biome-ignore lint/suspicious/noExplicitAny: tests change the JSON in ways that its type forbids
const byHand = (): any => JSON.parse(demoFile('by-hand.json') ?? '');

interface Schema {
  readonly items?: Schema;
  readonly properties?: Readonly<Record<string, Schema>>;
}
const schema = jobSchema() as Schema;

/** Every input of the description: its section, its name, and where it stands in the file. */
const inputs = jobSections.flatMap(({ key, as, place, places, fields }) =>
  shapeOf(fields).map(([name]) => {
    const rows = as === 'rows' ? [0] : [];
    const at: readonly (string | number)[] = as === 'head' ? ((places as Record<string, string[]>)[name] ?? []) : [...place, ...rows, name];
    return { key, name, as, at };
  }),
);

describe('the description of a job', () => {
  it('has each section once, and no two at one place', () => {
    const keys = jobSections.map(({ key }) => key);
    const places = jobSections.filter(({ as }) => as !== 'head').map(({ place }) => place.join('.'));
    expect(new Set(keys).size).toBe(keys.length);
    expect(new Set(places).size).toBe(places.length);
  });

  it.each(inputs)('carries $key $name through form, file, schema and messages', ({ key, name, as, at }) => {
    expect(shapeOf(jobForm).map(([section]) => section)).toContain(key);
    // From the form into the file and back: the value is a mark that no calculation has to understand here.
    const single = as === 'record' || as === 'head';
    const job = jobFromForm({
      [key]: single ? { [name]: 'mark' } : [{ [name]: 'mark' }],
      ...(key === 'permissionAfter' ? { readingsAfter: [{ engineSpeed: '0' }] } : {}),
    });
    const found =
      as === 'lines' ? (job as never as Record<string, never>) : at.reduce<unknown>((inner, part) => (inner as never)?.[part], job);
    if (as !== 'lines') expect(found).toBe('mark');
    const back = (formFromJob(job) as Record<string, unknown>)[key];
    expect(single ? back : (back as unknown[])[0]).toMatchObject({ [name]: 'mark' });
    // A problem with it leads back to its field, and is told by its label.
    if (as === 'record' || as === 'rows') {
      const where = at.slice(0, as === 'rows' ? -2 : -1).join('.');
      const path = as === 'rows' ? [0, name] : [name];
      const problem = { code: 'input', where, issue: { code: 'missing_input', path } } as const;
      expect(placeInForm(problem)).toEqual([key, ...path]);
      expect(jobIssueText(problem)).not.toContain(name === 'trips' ? '"trips"' : `"${name}"`);
    }
    // The schema of the file knows it at its place.
    const parts = as === 'lines' ? at.slice(0, -1) : at;
    const inSchema = parts.reduce<Schema | undefined>(
      (inner, part) => (typeof part === 'number' ? inner?.items : inner?.properties?.[part]),
      schema,
    );
    expect(inSchema).toBeDefined();
  });
});

describe('a file of the first version', () => {
  const first = JSON.parse(readFileSync(new URL('version-1.json', import.meta.url), 'utf8'));

  it('still gives the sheet that the same job of the second version gives', () => {
    expect(first.format).toBe('wallflow-job/1');
    expect(sheetAsText(paperOf(resultOf(first)))).toBe(sheetAsText(paperOf(resultOf(byHand()))));
  });

  it('opens in the form, and is saved as the second version', () => {
    expect(jobFromForm(formFromJob(first))).toEqual({ ...first, format: 'wallflow-job/2' });
  });

  it('of a third version is refused', () => {
    const outcome = runJob({ ...first, format: 'wallflow-job/3' }, demoFile);
    expect(outcome.ok ? [] : outcome.issues.map(jobIssueText)).toEqual([expect.stringMatching(/wallflow-job\/2/)]);
  });
});

describe('what a technician may not know', () => {
  it('is taken as typical and named: air of the day, size and cells of the filter', () => {
    const job = byHand();
    delete job.ambient;
    job.filter = {};
    const result = resultOf(job);
    expect(result.assumed.map(({ of }) => of)).toEqual(['ambient', 'filter', 'filter', 'filter', 'filter']);
    expect(succeeded(result.before.condition) && result.before.condition.result.outputs).toMatchObject({ verdict: 'blocked' });
    expect(sheetAsText(paperOf(result))).toContain('typical for this engine');
    expect(resultOf(byHand()).assumed).toEqual([]);
  });

  it('with displacement unknown as well leaves the filter open, and says so', () => {
    const job = byHand();
    job.filter = {};
    delete job.engine.displacement;
    const outcome = runJob(job, demoFile);
    expect(outcome.ok).toBe(false);
  });
});

describe('trials, gauge and figures of the control unit', () => {
  it('are heard by the estimate', () => {
    const without = byHand();
    without.filter = { ...without.filter };
    const job = byHand();
    job.trials = { before: { hoses: 'tight', tailPipe: 'clean', backPressureLost: 'across-filter' } };
    job.backPressure = {
      before: [{ engineSpeed: '2200 rpm', backPressure: '104 mbar', gasTemperature: '206 °C', airMassFlow: '300 kg/h' }],
    };
    job.controlUnit = { sootMass: '38 g', ashMass: '41 g' };
    const chance = (raw: unknown, ...ids: string[]) =>
      resultOf(raw).estimateBefore?.causes.reduce((sum, { id, probability }) => sum + (ids.includes(id) ? probability : 0), 0) ?? 0;
    expect(chance(job, 'soot', 'ash')).toBeGreaterThan(chance(without, 'soot', 'ash'));
    expect(chance(job, 'soot', 'ash')).toBeGreaterThan(0.9);
  });

  it('are refused where they cannot be', () => {
    const job = byHand();
    job.trials = { before: { hoses: 'fine' } };
    job.controlUnit = { sootMass: '38 L' };
    const outcome = runJob(job, demoFile);
    expect(outcome.ok ? [] : outcome.issues.map(placeInForm)).toEqual([
      ['controlUnit', 'sootMass'],
      ['trialsBefore', 'hoses'],
    ]);
  });
});
