import { describe, expect, it } from 'vitest';
import { openFiles } from '../../../docs-site/src/job/open-files.js';

const jobWith = (logs: Readonly<Record<string, string>>) =>
  new File([JSON.stringify({ format: 'wallflow-job/2', title: 'Bus', logs })], 'bus.json');
const log = (name: string, text: string, lastModified: number) => new File([text], name, { lastModified });
const [older, newer] = [Date.UTC(2026, 2, 12, 8), Date.UTC(2026, 2, 12, 15)];
const one = log('log.csv', 'first', older);
const other = log('log.csv', 'second', newer);

async function textsOf(files: readonly File[]) {
  const { logs, problem } = await openFiles(files);
  return { before: logs.before?.text, after: logs.after?.text, problem };
}

describe('a job file opened with its logs', () => {
  it('finds each log by its name', async () => {
    const job = jobWith({ before: 'a.csv', after: 'b.csv' });
    expect(await textsOf([log('b.csv', 'second', older), job, log('a.csv', 'first', newer)])).toEqual({
      before: 'first',
      after: 'second',
      problem: undefined,
    });
    expect((await textsOf([job, log('a.csv', 'first', older)])).problem).toMatch(/b\.csv is missing/);
  });

  it.each([
    ['as this page names them when it saves the job', { before: 'log.csv', after: 'log (after).csv' }],
    ['as somebody wrote them who keeps each in a folder of its own', { before: 'morning/log.csv', after: 'evening/log.csv' }],
    ['as somebody wrote them who gave both one name', { before: 'log.csv', after: 'log.csv' }],
  ])('takes two logs of one name for two logs, the older file as before the work: %s', async (_, names) => {
    for (const files of [
      [one, other],
      [other, one],
    ]) {
      const { before, after, problem } = await textsOf([jobWith(names), ...files]);
      expect([before, after]).toEqual(['first', 'second']);
      expect(problem).toMatch(/older file .* before the work/);
    }
  });

  it('gives no log to a side where nothing tells two of one name apart', async () => {
    const twin = log('log.csv', 'second', older);
    for (const names of [
      { before: 'log.csv', after: 'log.csv' },
      { before: 'log.csv', after: 'log (after).csv' },
    ]) {
      expect(await textsOf([jobWith(names), one, twin])).toEqual({
        before: undefined,
        after: undefined,
        problem: expect.stringMatching(/open each .* at its own side/),
      });
    }
  });

  it('never takes one file for both sides', async () => {
    const { before, after, problem } = await textsOf([jobWith({ before: 'log.csv', after: 'log.csv' }), one]);
    expect([before, after]).toEqual([undefined, undefined]);
    expect(problem).toMatch(/only one of them was chosen/);
    const named = await textsOf([jobWith({ before: 'log.csv', after: 'log (after).csv' }), one]);
    expect(named).toMatchObject({ before: 'first', after: undefined, problem: expect.stringContaining('log (after).csv') });
  });

  it('prefers the file that has the very name, whatever its age', async () => {
    const renamed = log('log (after).csv', 'second', older);
    const found = await textsOf([jobWith({ before: 'log.csv', after: 'log (after).csv' }), renamed, log('log.csv', 'first', newer)]);
    expect(found).toEqual({ before: 'first', after: 'second', problem: undefined });
  });

  it('says in words what is no job file', async () => {
    expect((await textsOf([one])).problem).toMatch(/None of these files/);
    expect((await textsOf([new File(['{'], 'x.json')])).problem).toMatch(/is not JSON/);
    expect((await textsOf([new File(['{}'], 'x.json')])).problem).toMatch(/no job file/);
  });
});
