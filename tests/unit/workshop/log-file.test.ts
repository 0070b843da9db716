import { runJob } from '@wallflow/workshop';
import { describe, expect, it } from 'vitest';
import { demoFile, demoJob } from '../../job/demo-job.js';

function issuesWith(name: string, readFile: (name: string) => unknown) {
  const outcome = runJob({ ...demoJob(), logs: { before: name } }, readFile as (name: string) => string | undefined);
  return outcome.ok ? [] : outcome.issues;
}

describe('a log that a job names', () => {
  it.each(['../../etc/passwd', '/etc/passwd', 'logs/../../x.csv', '..', 'C:\\x.csv', '\\\\host\\x.csv', '..\\x.csv'])(
    '%s is not even asked for, as it lies outside the folder of the job',
    (name) => {
      const asked: string[] = [];
      const issues = issuesWith(name, (wanted) => {
        asked.push(wanted);
        return 'root:x:0:0';
      });
      expect(asked).toEqual([]);
      expect(issues).toMatchObject([{ code: 'log_unreadable', where: name }]);
      expect(JSON.stringify(issues)).not.toContain('root');
    },
  );

  it('may lie in a folder of the job, and have dots in its name', () => {
    for (const name of ['logs/before.csv', 'before..csv']) expect(issuesWith(name, () => demoFile('before.csv'))).toEqual([]);
  });

  it.each([
    ['nothing', () => undefined],
    ['null', () => null],
    ['bytes', () => new Uint8Array([1, 2])],
    ['a number', () => 7],
    ['a promise', async () => 'x'],
    [
      'an exception',
      () => {
        throw new Error('EACCES');
      },
    ],
  ])('is an issue when the reader gives %s', (_, reader) => {
    expect(issuesWith('before.csv', reader)).toMatchObject([{ code: 'log_unreadable', where: 'before.csv' }]);
  });
});
