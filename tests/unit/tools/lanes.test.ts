import { describe, expect, it } from 'vitest';
import { type Check, type Finished, notToRun, runInLanes, withNeeds } from '../../../tools/support/lanes.mjs';
import { fromCommand } from '../../../tools/support/outcome.mjs';
import { run } from '../../../tools/support/run.mjs';

const passes = async () => ({ passed: 1, failed: 0 });
const fails = async () => ({ passed: 0, failed: 1 });

async function runAll(checks: Check[], lanes = 2): Promise<Finished[]> {
  return runInLanes(checks, lanes, () => {});
}

describe('withNeeds', () => {
  const checks: Check[] = [
    { name: 'install', run: passes },
    { name: 'build', needs: ['install'], run: passes },
    { name: 'lint', needs: ['install'], run: passes },
    { name: 'pack', needs: ['build'], run: passes },
  ];

  it('adds what the named checks need, and nothing else', () => {
    expect(withNeeds(checks, ['pack']).map(({ name }) => name)).toEqual(['install', 'build', 'pack']);
  });

  it('refuses a name that does not exist, and lists those that do', () => {
    expect(() => withNeeds(checks, ['lnt'])).toThrow('no check is called lnt; there are: install, build, lint, pack');
  });
});

describe('notToRun', () => {
  const checks: Check[] = [
    { name: 'install', always: true, run: passes },
    { name: 'scripts', needs: ['install'], run: passes },
    { name: 'unit', needs: ['scripts'], run: passes },
    { name: 'docs', needs: ['install'], run: passes },
    { name: 'browser', needs: ['docs'], run: passes },
  ];
  const left = (kept: string[]) => [...notToRun(checks, (name) => (kept.includes(name) ? { passed: 3, failed: 0 } : undefined)).keys()];

  it('leaves out what has passed, but never what must always run', () => {
    expect(left(checks.map(({ name }) => name))).toEqual(['scripts', 'unit', 'docs', 'browser']);
  });

  it('runs again what another check needs, as what it made may be gone', () => {
    expect(left(['install', 'scripts', 'unit', 'docs'])).toEqual(['scripts', 'unit']);
  });

  it('runs everything where nothing is kept', () => {
    expect(left([])).toEqual([]);
  });
});

describe('runInLanes', () => {
  it('tells the processor time of the commands of each check, and not that of the other lane', async () => {
    const busy = 'const end = process.cpuUsage().user + 300_000; while (process.cpuUsage().user < end);';
    const check = (name: string, code: string): Check => ({
      name,
      run: async () => fromCommand(await run(process.execPath, ['--eval', code])),
    });
    const [worked, idle] = await runAll([check('busy', busy), check('idle', '')]);
    expect(worked?.processor).toBeGreaterThanOrEqual(0.3);
    expect((worked?.processor ?? 0) - (idle?.processor ?? 0)).toBeGreaterThan(0.1);
  });

  it('starts a check only after what it needs', async () => {
    const events: string[] = [];
    const check = (name: string, needs: string[]): Check => ({
      name,
      needs,
      run: async () => {
        events.push(`${name} starts`);
        await new Promise((resolve) => setTimeout(resolve, 5));
        events.push(`${name} ends`);
        return { passed: 1, failed: 0 };
      },
    });
    await runAll([check('docs', ['build']), check('build', ['install']), check('install', [])]);
    expect(events).toEqual(['install starts', 'install ends', 'build starts', 'build ends', 'docs starts', 'docs ends']);
  });

  it('never runs more checks at a time than there are lanes', async () => {
    let running = 0;
    let most = 0;
    const checks = Array.from({ length: 7 }, (_, index) => ({
      name: `check ${index}`,
      run: async () => {
        running += 1;
        most = Math.max(most, running);
        await new Promise((resolve) => setTimeout(resolve, 2));
        running -= 1;
        return { passed: 1, failed: 0 };
      },
    }));
    expect(await runAll(checks)).toHaveLength(7);
    expect(most).toBe(2);
  });

  it('goes on after a failure, and counts as failed what could not run because of it', async () => {
    const results = await runAll([
      { name: 'build', run: fails },
      { name: 'pack', needs: ['build'], run: passes },
      { name: 'packages', needs: ['pack'], run: passes },
      { name: 'lint', run: passes },
    ]);
    expect(results.map(({ name, failed, note }) => [name, failed, note])).toEqual([
      ['build', 1, undefined],
      ['pack', 1, 'not run, because build failed'],
      ['packages', 1, 'not run, because pack failed'],
      ['lint', 0, undefined],
    ]);
  });

  it('counts a check that throws as failed and shows why', async () => {
    const [result] = await runAll([
      {
        name: 'lint',
        run: async () => {
          throw new Error('no such tool');
        },
      },
    ]);
    expect(result).toMatchObject({ passed: 0, failed: 1, output: expect.stringContaining('no such tool') });
  });

  it('notices checks that wait for each other', async () => {
    const circle: Check[] = [
      { name: 'a', needs: ['b'], run: passes },
      { name: 'b', needs: ['a'], run: passes },
    ];
    await expect(runAll(circle)).rejects.toThrow('wait for each other: a, b');
  });
});
