import { jobState, runJob } from '@wallflow/workshop';
import { describe, expect, it } from 'vitest';
import { exampleJobs } from '../../examples/jobs/make-jobs.js';
import { demoFile, demoJob, demoResult, resultOf } from './demo-job.js';

const begun = {
  format: 'wallflow-job/2',
  title: 'Just begun',
  date: '2026-03-12',
  vehicle: { description: 'Bakery van' },
  complaint: 'The lamp came on.',
};

const stateOf = (raw: unknown) => jobState(raw, runJob(raw, demoFile));

describe('where a job stands', () => {
  it('that was just begun: what readings would open, and no heat', () => {
    const { known, missing, allowed, forbidden } = stateOf(begun);
    expect(known.map(({ section }) => section)).toEqual(['about']);
    const opened = Object.fromEntries(missing.flatMap(({ id, brings }) => (brings.kind === 'verdict' ? [[id, brings.verdict]] : [])));
    expect(opened).toMatchObject({ 'readings.before': 'estimate', 'engine.displacement': 'estimate', 'readings.after': 'verification' });
    expect(allowed).toEqual([]);
    expect(forbidden.map(({ id }) => id)).toEqual(['regenerate']);
  });

  it('never throws, whatever the file is', () => {
    for (const raw of [undefined, null, 7, 'text', [], {}, { ...begun, engine: 'big' }, { format: 'other' }]) {
      const { allowed, forbidden } = stateOf(raw);
      expect(allowed).toEqual([]);
      expect(forbidden).not.toEqual([]);
    }
  });

  it('fills up as things are entered, and asks no longer for what it has', () => {
    const before = jobState({}, { ok: true, result: demoResult() });
    const priced = { ...demoJob(), quote: { hourlyRate: '80.00' } };
    const after = jobState(priced, { ok: true, result: resultOf(priced) });
    expect(before.missing.map(({ id }) => id)).toContain('quote.hourlyRate');
    expect(after.missing.map(({ id }) => id)).not.toContain('quote.hourlyRate');
    const sections = (known: typeof before.known) => known.map(({ section }) => section).sort();
    expect(sections(after.known)).toEqual([...sections(before.known), 'quote'].sort());
  });

  it('with readings: tests that tell most for their time first, each with its minutes, and every option once', () => {
    const story = exampleJobs().find(({ story: { name } }) => name === 'wet-after-wash');
    const result = resultOf(JSON.parse(story?.files['job.json'] ?? ''), (name) => story?.files[name]);
    const { missing, allowed, forbidden } = jobState(result.job, { ok: true, result });
    const tests = missing.flatMap(({ brings }) => (brings.kind === 'bits' ? [brings.bits / brings.minutes] : []));
    expect(tests.length).toBeGreaterThan(0);
    expect(tests).toEqual([...tests].sort((a, b) => b - a));
    const options = [...allowed, ...forbidden].map(({ id }) => id).filter((id) => id !== 'reset');
    expect(new Set(options).size).toBe(options.length);
    expect(options).toHaveLength(8);
    // Fault codes stand in the way of heat in each of these jobs.
    expect(forbidden.map(({ id }) => id)).toEqual(expect.arrayContaining(['regenerate', 'drive']));
    for (const { why } of [...allowed, ...forbidden]) expect(why).toMatch(/^[A-Z][^_{}]*[.?]$/);
  });

  it('after the work: no value may be reset and must wait at once', () => {
    const { allowed, forbidden } = jobState({}, { ok: true, result: demoResult() });
    const values = (list: typeof allowed) => list.flatMap(({ id, title }) => (id === 'reset' ? [title.split(':')[0]] : []));
    expect(values(allowed).length + values(forbidden).length).toBeGreaterThan(0);
    expect(values(allowed).filter((value) => values(forbidden).includes(value))).toEqual([]);
  });
});
