import { readdirSync, readFileSync } from 'node:fs';
import { contradictions, jobData, jobSheet, sheetAsText } from '@wallflow/workshop';
import { describe, expect, it } from 'vitest';
import { exampleJobs } from '../../examples/jobs/make-jobs.js';
import { demoFile, demoJob, demoResult, resultOf } from './demo-job.js';

/** Made once, for all tests. */
const jobs = exampleJobs();
const folder = new URL('../../examples/jobs/', import.meta.url);
const read = (name: string, file: string) => readFileSync(new URL(`${name}/${file}`, folder), 'utf8');

it('there are at least sixteen example jobs, each with its own folder', () => {
  const folders = readdirSync(folder, { withFileTypes: true }).filter((entry) => entry.isDirectory());
  expect(folders.map(({ name }) => name).sort()).toEqual(
    exampleJobs()
      .map(({ story }) => story.name)
      .sort(),
  );
  expect(folders.length).toBeGreaterThanOrEqual(16);
});

describe.each(jobs)('$story.title', ({ story, files }) => {
  const result = resultOf(JSON.parse(files['job.json'] ?? ''), (name) => files[name]);
  const data = jobData(result);
  const sheet = jobSheet(result);

  it('has the files that its generator makes', () => {
    // How JSON is set on the page is no matter of the generator.
    const held = (name: string, text: string) => (name.endsWith('.json') ? JSON.parse(text) : text);
    for (const [name, text] of Object.entries(files)) expect(held(name, read(story.name, name))).toEqual(held(name, text));
  });

  it('has its hidden cause among the first two, and a plan that a good technician would take', () => {
    expect(data.estimate?.causes.slice(0, 2).map(({ id }) => id)).toContain(story.cause);
    expect(story.plan).toContain(data.plan?.find(({ chosen }) => chosen)?.id);
    expect(data.permission?.verdict).not.toBe('permitted');
    expect(data.reductantEstimate?.causes[0]?.id).toBe(story.reductantCause);
  });

  it('is told as good on the page of the customer only where nothing is wrong with the filter', () => {
    const lines = sheet.blocks.flatMap((block) => (block.type === 'verdicts' ? block.lines : []));
    const good = lines.some(({ question, tone }) => question === 'Filter before' && tone === 'good');
    expect(good && story.cause !== 'nothing-wrong').toBe(false);
  });

  it('has a sheet with no two lines that contradict each other', () => {
    expect(contradictions(result)).toEqual([]);
    expect(sheetAsText(sheet)).not.toMatch(/undefined|NaN/);
  });
});

describe('forecast and quote', () => {
  const job = {
    ...demoJob(),
    use: {
      trips: [{ tripDistance: '7 km', tripDuration: '19 min', timesPerWeek: '30' }],
      regenerationDistance: '320 km',
      ashLimit: '175 g',
    },
    controlUnit: { sootMass: '38 g', ashMass: '41 g' },
    quote: { hourlyRate: '80.00', bottlePrice: '31.00', bottleVolume: '1.5 L', filterPrice: '1900.00' },
  };
  const result = resultOf(job, demoFile);
  const data = jobData(result);

  it('count trips in km and minutes: 210 km a week, none long enough for a regeneration', () => {
    const regeneration = data.forecast?.regeneration;
    expect(regeneration?.completes).toBe(false);
    // 30 trips of 7 km in 7 days: 30 km a day.
    expect(regeneration?.days?.p50).toBeCloseTo((regeneration?.distance.p50 ?? Number.NaN) / 30, 9);
    expect(regeneration?.distance.p5).toBeLessThan(regeneration?.distance.p50 ?? 0);
    expect(regeneration?.distance.p95).toBeLessThanOrEqual(320 * 1.4);
  });

  it('name the days of the calendar that they mean, from the date of the job', () => {
    for (const { days, dates } of [data.forecast?.regeneration ?? {}, data.forecast?.ashService ?? {}]) {
      if (days === undefined || dates === undefined) continue;
      for (const end of ['p5', 'p50', 'p95'] as const) {
        const ahead = (Date.parse(dates[end]) - Date.parse(job.date)) / 86_400_000;
        expect(Math.abs(ahead - days[end])).toBeLessThanOrEqual(0.5);
      }
    }
    expect(data.forecast?.regeneration.dates).toBeDefined();
    const { p5, p50, p95 } = data.forecast?.regeneration.dates ?? { p5: '', p50: '', p95: '' };
    expect(sheetAsText(jobSheet(result)).replace(/\s+/g, ' ')).toContain(`around ${p50}, between ${p5} and ${p95}`);
  });

  it('name no day that lies decades ahead', () => {
    const rarely = { ...job, use: { ...job.use, trips: [{ tripDistance: '1 km', tripDuration: '3 min', timesPerWeek: '1' }] } };
    const forecast = jobData(resultOf(rarely, demoFile)).forecast;
    expect(forecast?.ashService.days?.p50).toBeGreaterThan(20 * 365);
    expect(forecast?.ashService.dates).toBeUndefined();
  });

  it('count ash from the weighed rest to the limit at the rate of the control unit', () => {
    // By hand: 41 g in 146 300 km; from 35 g to 175 g are 140 g, so 140 / 41 × 146 300 km.
    expect(data.forecast?.ashService).toMatchObject({
      ashFrom: 'weighed',
      ashLimit: expect.closeTo(175, 9),
      ashNow: expect.closeTo(35, 9),
    });
    expect(data.forecast?.ashService.distance.p50).toBeCloseTo((140 / 41) * 146_300, 3);
  });

  it('price work by the hour and cleaner by whole bottles', () => {
    const line = (id: string) => data.quote?.find(({ option }) => option === id);
    expect(line('clean-off-vehicle')).toMatchObject({ minutes: 240, work: 320 });
    expect((line('clean-off-vehicle')?.material ?? 0) % 31).toBe(0);
    expect(line('replace')).toMatchObject({ minutes: 120, work: 160, material: 1900, total: 2060 });
  });

  it('stand on the sheet of the customer only where somebody said how the vehicle is used', () => {
    const printed = (one: typeof result) => sheetAsText(jobSheet(one)).replace(/\s+/g, ' ');
    expect(printed(result)).toContain('No usual trip is long enough for that');
    expect(printed(demoResult())).not.toContain('usual trip');
  });
});
