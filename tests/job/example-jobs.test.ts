import { readdirSync, readFileSync } from 'node:fs';
import { contradictions, contradictoryPairs, jobData, jobIssueText, jobSheet, runJob, sheetAsText } from '@wallflow/workshop';
import { generateCase } from '@wallflow/workshop/cases';
import { describe, expect, it } from 'vitest';
import { exampleJobs } from '../../examples/jobs/make-jobs.js';
import { demoFile, demoJob, resultOf } from './demo-job.js';

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

describe.each(exampleJobs())('$story.title', ({ story, files }) => {
  const outcome = runJob(JSON.parse(files['job.json'] ?? ''), (name) => files[name]);
  if (!outcome.ok) throw new Error(outcome.issues.map(jobIssueText).join('\n'));
  const data = jobData(outcome.result);

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

  it('has a sheet with no two lines that contradict each other', () => {
    expect(contradictions(outcome.result)).toEqual([]);
    expect(sheetAsText(jobSheet(outcome.result))).not.toMatch(/undefined|NaN/);
  });
});

describe('contradictions', () => {
  /** A generated vehicle as a job with readings that were written down. */
  const asJob = (seed: number) => {
    const { input } = generateCase(seed);
    const rows = input.readings.map(({ engineSpeed, pressureDrop, gasTemperature }, index) => ({
      engineSpeed: `${(engineSpeed * 60).toFixed(0)} rpm`,
      pressureDrop: `${(pressureDrop / 100).toFixed(0)} mbar`,
      gasTemperature: `${((gasTemperature ?? [393, 433, 473][index] ?? 433) - 273.15).toFixed(0)} °C`,
    }));
    const zero = { engineSpeed: '0 rpm', pressureDrop: `${((input.zero?.pressureDrop ?? 0) / 100).toFixed(0)} mbar` };
    return {
      format: 'wallflow-job/2',
      title: 'Generated',
      date: '2026-03-12',
      vehicle: { description: 'Generated vehicle' },
      complaint: 'Low power',
      engine: { displacement: `${input.vehicle.displacement * 1000} L`, strokes: 'four-stroke' },
      readings: { before: [zero, ...rows] },
    };
  };

  it.each(Array.from({ length: 12 }, (_, index) => 500 + index))('are none on the sheet of generated vehicle %d', (seed) => {
    expect(contradictions(resultOf(asJob(seed)))).toEqual([]);
  });

  it('are none on the sheet of the demo job', () => {
    expect(contradictions(resultOf(demoJob(), demoFile))).toEqual([]);
  });

  it('are found where a sheet is made to say both', () => {
    const result = resultOf(demoJob(), demoFile);
    const { estimateAfter, estimateBefore } = result;
    if (estimateAfter === undefined || estimateBefore === undefined) throw new Error('no estimate');
    const stillRestricted = { ...result, estimateAfter: { ...estimateAfter, causes: estimateAfter.causes.slice(1) } };
    expect(contradictions(stillRestricted)).toEqual(['the chances of the causes do not make a whole']);
    const codes = { ...result, job: { ...result.job, permission: { before: {}, after: { faultCodes: true } } } };
    expect(contradictions(codes)).toEqual(['no codes after the work, and codes that refuse heat after the work']);
    expect(new Set(contradictoryPairs.map(({ id }) => id)).size).toBe(contradictoryPairs.length);
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
  const data = jobData(resultOf(job, demoFile));

  it('count trips in km and minutes: 210 km a week, none long enough for a regeneration', () => {
    const regeneration = data.forecast?.regeneration;
    expect(regeneration?.completes).toBe(false);
    // 30 trips of 7 km in 7 days: 30 km a day.
    expect(regeneration?.days?.p50).toBeCloseTo((regeneration?.distance.p50 ?? Number.NaN) / 30, 9);
    expect(regeneration?.distance.p5).toBeLessThan(regeneration?.distance.p50 ?? 0);
    expect(regeneration?.distance.p95).toBeLessThanOrEqual(320 * 1.4);
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
    expect(sheetAsText(jobSheet(resultOf(job, demoFile)))).toContain('No usual trip is long enough for that');
    expect(sheetAsText(jobSheet(resultOf(demoJob(), demoFile)))).not.toContain('usual trip');
  });
});
