import { jobData, runJob, sheetAsText } from '@wallflow/workshop';
import { describe, expect, it } from 'vitest';
import { demoFile, paperOf } from './demo-job.js';

const demo = () => JSON.parse(demoFile('job.json') ?? '');
const run = (job: unknown) => {
  const outcome = runJob(job, (name: string) => demoFile(name));
  if (!outcome.ok) throw new Error(JSON.stringify(outcome.issues));
  return outcome.result;
};

describe('the estimate of a job', () => {
  const result = run(demo());
  const data = JSON.parse(JSON.stringify(jobData(result)));

  it('stands in its data: causes that sum to 1, soot and ash with ranges, the next test', () => {
    expect(data.estimateBefore.restricted).toBeGreaterThan(0.9);
    expect(data.estimateBefore.causes[0].id).toBe('soot');
    expect(data.estimate.causes.reduce((sum: number, { probability }: { probability: number }) => sum + probability, 0)).toBeCloseTo(1, 9);
    for (const load of [data.estimate.sootLoad, data.estimate.ashLoad]) {
      expect(load.p5).toBeLessThan(load.p50);
      expect(load.p50).toBeLessThan(load.p95);
    }
    expect(data.nextTest.question).toMatch(/\?$/);
  });

  it('holds the soot and ash that the story hides in the filter', () => {
    // 64 g of soot and 70 g of ash in 5.79 L before the work; the readings were made from them by the one-dimensional model.
    const { sootLoad, ashLoad } = data.estimateBefore;
    expect(sootLoad.p5).toBeLessThan(64 / 5.79);
    expect(sootLoad.p95).toBeGreaterThan(64 / 5.79);
    expect(ashLoad.p5).toBeLessThan(70 / 5.79);
    expect(ashLoad.p95).toBeGreaterThan(70 / 5.79);
  });

  it('plans to take the filter off, and says of every other option why not', () => {
    expect(data.plan[0]).toMatchObject({ id: 'clean-off-vehicle', chosen: true });
    expect(data.plan.filter(({ chosen }: { chosen: boolean }) => chosen)).toHaveLength(1);
    for (const option of data.plan) expect(option.why).toMatch(/^[A-Z].*\.$/);
  });

  it('allows no heat while a load above the limit is likelier than one in twenty', () => {
    const before = jobData(run({ ...demo(), logs: { before: 'before.csv' } }));
    expect(before.permission?.chanceAboveLimit).toBeGreaterThan(0.05);
    expect(before.permission?.verdict).toBe('refused');
  });

  it('proves the work only with the readings and the estimate both', () => {
    expect(data.verification.verdict).toBe('proved');
    expect(data.verification.probability).toBeGreaterThan(0.9);
  });

  it('takes trials: a hose that was found leaking is a likelier cause than before', () => {
    const chance = (job: unknown) => jobData(run(job)).estimate?.causes.find(({ id }) => id === 'hose-leaking')?.probability ?? 0;
    expect(chance({ ...demo(), trials: { after: { hoses: 'leaking' } } })).toBeGreaterThan(5 * chance(demo()));
    expect(chance({ ...demo(), trials: { after: { hoses: 'tight' } } })).toBeLessThan(chance(demo()));
  });

  it('joins a weak fluid and a low quantity to one dose', () => {
    expect(data.reductantEstimate.causes[0].id).toBe('weak-and-low');
    // 30.0 / 32.5 · 0.86, by hand.
    expect(data.reductantEstimate.dose.p5).toBeLessThan(0.794);
    expect(data.reductantEstimate.dose.p95).toBeGreaterThan(0.794);
    expect(sheetAsText(paperOf(result)).replace(/\s+/g, ' ')).toMatch(/Together: \d+ to \d+ % of the urea/);
  });

  it('says on the sheet what the readings point to and what could be done, in words', () => {
    const sheet = sheetAsText(paperOf(result));
    expect(sheet).toMatch(/what the readings point to/i);
    expect(sheet).toMatch(/\(to do first\)/);
    expect(sheet).not.toMatch(/clean-off-vehicle|hose-leaking|sootLoad/);
  });
});
