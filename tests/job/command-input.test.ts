import { spawn, spawnSync } from 'node:child_process';
import { once } from 'node:events';
import { existsSync, mkdirSync, mkdtempSync, readFileSync, rmSync, symlinkSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { jobData } from '@wallflow/workshop';
import { build } from 'esbuild';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { reasonOf } from '../../packages/wallflow/src/reason.js';
import { demoFile, demoJob, resultOf } from './demo-job.js';

const repository = fileURLToPath(new URL('../..', import.meta.url));
let folder = '';
let command = '';

beforeAll(async () => {
  folder = mkdtempSync(join(tmpdir(), 'wallflow-command-'));
  command = join(folder, 'cli.mjs');
  await build({
    entryPoints: [join(repository, 'packages/wallflow/src/cli.ts')],
    outfile: command,
    bundle: true,
    format: 'esm',
    platform: 'node',
    conditions: ['@wallflow/source'],
    logLevel: 'silent',
  });
});
afterAll(() => rmSync(folder, { recursive: true, force: true }));

/** The command as a terminal runs it. */
function wallflow(words: readonly string[], input = '') {
  const child = spawnSync(process.execPath, [command, ...words], { cwd: folder, input, encoding: 'utf8' });
  return { code: child.status, out: child.stdout, error: child.stderr };
}

/** A folder with a job as the demo's, changed. */
function jobFolder(name: string, change: (job: ReturnType<typeof demoJob>) => void = () => {}): string {
  const home = join(folder, name);
  mkdirSync(home);
  const job = demoJob();
  change(job);
  writeFileSync(join(home, 'job.json'), JSON.stringify(job));
  for (const log of ['before.csv', 'after.csv']) writeFileSync(join(home, log), demoFile(log) ?? '');
  return home;
}

const density = { gasPressure: '101.325 kPa', gasTemperature: '0 °C' };

describe('a byte order mark', () => {
  it('before JSON on standard input is no part of it', () => {
    const { code, error } = wallflow(['run', 'gas-density'], `\ufeff${JSON.stringify(density)}`);
    expect([code, error]).toEqual([0, '']);
  });

  it('before a job file is no part of it', () => {
    const home = jobFolder('bom');
    writeFileSync(join(home, 'job.json'), `\ufeff${readFileSync(join(home, 'job.json'), 'utf8')}`);
    expect(wallflow(['job', join(home, 'job.json'), '--json']).code).toBe(0);
  });
});

describe('a file that cannot be used', () => {
  it('is a folder in place of a job file', () => {
    const { code, error } = wallflow(['job', folder]);
    expect(code).toBe(2);
    expect(error).toContain('cannot be read: it is a folder.');
  });

  it('is a job file in place of a folder for the sheet: the sheet is shown, and why it is not written', () => {
    const file = join(jobFolder('out'), 'job.json');
    const { code, out, error } = wallflow(['job', file, '--out', join(file, 'x')]);
    expect(code).toBe(2);
    expect(out).toContain('loaded');
    expect(error).toMatch(/cannot be written: /);
    expect(error).not.toMatch(/ {4}at /);
  });

  it('lies outside the folder of the job, and nothing of it is shown', () => {
    writeFileSync(join(folder, 'secret.csv'), 'secret,first,line\n1,2,3\n');
    const home = jobFolder('outside', (job) => {
      job.logs.before = '../secret.csv';
    });
    const { code, out, error } = wallflow(['job', join(home, 'job.json')]);
    expect(code).toBe(1);
    expect(out + error).not.toContain('first');
    expect(error).toContain('in the folder of the job');
  });

  it('is reached through a link that leads out of the folder of the job', () => {
    const home = jobFolder('linked');
    rmSync(join(home, 'before.csv'));
    symlinkSync(join(folder, 'secret.csv'), join(home, 'before.csv'));
    const { code, out, error } = wallflow(['job', join(home, 'job.json')]);
    expect(code).toBe(1);
    expect(out + error).not.toContain('first');
  });

  it('is JSON as deep as no input is', () => {
    const deep = `{"gasPressure":${'['.repeat(50_000)}${']'.repeat(50_000)}}`;
    for (const more of [[], ['--json']]) {
      const { code, out, error } = wallflow(['run', 'gas-density', ...more], deep);
      expect(code).toBe(1);
      expect(out + error).not.toMatch(/ {4}at /);
      expect((out + error).length).toBeLessThan(3000);
    }
  });
});

describe('a log that cannot be used', () => {
  // Root is denied nothing; the reason is then tried alone, below.
  const mayBeDenied = process.getuid?.() !== 0;

  it('is told by what is wrong with it, each in its own words', () => {
    const home = jobFolder('odd-logs', (job) => {
      job.logs.before = 'odd.csv';
    });
    const log = join(home, 'odd.csv');
    const outside = join(folder, 'outside.csv');
    writeFileSync(outside, 'secret');
    const told = () => {
      const { code, out, error } = wallflow(['job', join(home, 'job.json')]);
      expect([code, out]).toEqual([1, '']);
      rmSync(log, { recursive: true, force: true });
      return /odd\.csv[^\n]*/.exec(error)?.[0] ?? error;
    };
    const sentences = [];
    sentences.push(told());
    mkdirSync(log);
    sentences.push(told());
    symlinkSync(outside, log);
    sentences.push(told());
    symlinkSync(log, log);
    sentences.push(told());
    spawnSync('mkfifo', [log]);
    sentences.push(told());
    if (mayBeDenied) {
      writeFileSync(log, '', { mode: 0 });
      sentences.push(told());
    }
    expect(sentences[0]).toContain('there is no such file');
    expect(sentences[1]).toContain('it is a folder');
    expect(sentences[2]).toContain('leads out of the folder of the job');
    expect(sentences[3]).toContain('a link that leads to itself');
    expect(sentences[4]).toContain('it is a pipe or a device');
    expect(new Set(sentences).size).toBe(sentences.length);
  });

  it('gives its reason for any error of the system, and nothing of a path', () => {
    expect(reasonOf(Object.assign(new Error("EACCES: permission denied, open '/home/x'"), { code: 'EACCES' }))).toBe('access is denied');
    expect(reasonOf(Object.assign(new Error("EIO: i/o error, open '/home/x'"), { code: 'EIO' }))).toBe('the disk does not answer');
    expect(reasonOf(Object.assign(new Error("EMFILE: too many, open '/home/x'"), { code: 'EMFILE' }))).toBe(
      'the system refuses it (EMFILE)',
    );
  });
});

describe('an input without an end', () => {
  const shell = (line: string) =>
    spawnSync('sh', ['-c', line], { cwd: folder, encoding: 'utf8', env: { ...process.env, NODE: process.execPath, COMMAND: command } });

  it('on standard input is refused once it is larger than any input', () => {
    const { status, stdout, stderr } = shell('"$NODE" "$COMMAND" run gas-density < /dev/zero');
    expect([status, stdout]).toEqual([2, '']);
    expect(stderr).toContain('standard input cannot be used: it is larger than 20 MB.');
  });

  it.each(['/dev/zero', 'pipe'])('as a job file is refused at once: %s', (file) => {
    if (file === 'pipe') spawnSync('mkfifo', [join(folder, file)]);
    const { code, error } = wallflow(['job', file]);
    expect(code).toBe(2);
    expect(error).toContain('it is a pipe or a device, not a file.');
  });

  it('does not keep a command waiting that does not read it', async () => {
    const child = spawn(process.execPath, [command, '--version'], { stdio: ['pipe', 'ignore', 'ignore'] });
    const [code] = await once(child, 'exit');
    child.stdin.destroy();
    expect(code).toBe(0);
  });

  it('of issues is cut short, and says how many are left out', () => {
    const input = JSON.stringify(Object.fromEntries(Array.from({ length: 100_000 }, (_, i) => [`k${i}`, 1])));
    const { code, error } = wallflow(['run', 'gas-density'], input);
    expect(code).toBe(1);
    expect(error.length).toBeLessThan(10_000);
    expect(error).toMatch(/\d+ more are not listed/);
    const data = JSON.parse(wallflow(['run', 'gas-density', '--json'], input).out);
    expect(data.issues.length).toBeLessThan(100);
    expect(data.issues.length + data.more).toBeGreaterThanOrEqual(100_000);
  });
});

describe('output that nobody takes', () => {
  const shell = (line: string) =>
    spawnSync('bash', ['-o', 'pipefail', '-c', line], {
      cwd: folder,
      encoding: 'utf8',
      env: { ...process.env, NODE: process.execPath, COMMAND: command },
    });

  // A device of Linux that is always full.
  if (existsSync('/dev/full'))
    it('on a full disk is told in one line', () => {
      const { status, stderr } = shell('"$NODE" "$COMMAND" list > /dev/full');
      expect(stderr).toBe('wallflow: the output cannot be written: the disk is full.\n');
      expect(status).toBe(2);
      expect(shell('"$NODE" "$COMMAND" fly 2> /dev/full').status).toBe(2);
    });

  it('after enough was seen is no fault', () => {
    const { status, stdout, stderr } = shell('"$NODE" "$COMMAND" list | head -1');
    expect([status, stderr]).toEqual([0, '']);
    expect(stdout.split('\n')).toHaveLength(2);
  });
});

describe('wrong usage', () => {
  it('is answered in two lines that end as sentences do', () => {
    const { code, error } = wallflow(['describe', 'gas-densty']);
    expect(code).toBe(2);
    expect(error).toBe('wallflow: there is no calculation "gas-densty"; did you mean gas-density?\n`wallflow help` shows what there is.\n');
  });

  it.each([
    ['help', 'run'],
    ['run', '--help'],
  ])('needs no guessing: wallflow %s %s tells about run', (...words) => {
    const { code, out } = wallflow(words);
    expect(code).toBe(0);
    expect(out).toMatch(/^wallflow run <id>/);
    expect(out).not.toContain('wallflow job');
  });

  it('is help for a command that does not exist', () => {
    expect(wallflow(['help', 'fly']).code).toBe(2);
  });
});

describe('signs that steer a terminal', () => {
  const evil = '\u001b[2J\u202eevil\u0007\u009b1m';
  // biome-ignore lint/suspicious/noControlCharactersInRegex: they are what must not be there
  const steering = /[\u0000-\u0008\u000b-\u001f\u007f-\u009f\u202a-\u202e\u2066-\u2069]/;

  it('never come out as such, but can be seen', () => {
    const refused = wallflow(['run', 'gas-density', `gasPressure=${evil}`, 'gasTemperature=0 °C']);
    const stranger = wallflow(['run', evil]);
    for (const { out, error } of [refused, stranger]) {
      expect(out + error).not.toMatch(steering);
      expect(out + error).toContain('\\u001b');
    }
  });

  it('come through JSON as they were', () => {
    const { out } = wallflow(['run', 'gas-density', `gasPressure=${evil}`, 'gasTemperature=0 °C', '--json']);
    expect(out).not.toMatch(steering);
    expect(JSON.parse(out).issues[0].given).toBe(evil);
  });

  it('reach no job sheet', () => {
    const home = jobFolder('steering', (job) => {
      job.complaint = evil;
    });
    const { out } = wallflow(['job', join(home, 'job.json'), '--out', join(home, 'sheet')]);
    const sheets = ['html', 'md', 'txt'].map((ending) => readFileSync(join(home, 'sheet', `job-sheet.${ending}`), 'utf8'));
    for (const text of [out, ...sheets]) {
      expect(text).not.toMatch(steering);
      expect(text).toContain('evil');
    }
  });
});

describe('the data of a job', () => {
  const result = resultOf(demoJob());
  const data = jobData(result);

  it('survives a copy and JSON, as the command prints it', () => {
    expect(structuredClone(data)).toEqual(data);
    expect(JSON.parse(JSON.stringify(data))).toEqual(data);
    const home = jobFolder('data');
    expect(JSON.parse(wallflow(['job', join(home, 'job.json'), '--json']).out)).toEqual(data);
  });

  it('names every calculation with its version, and has its values with units', () => {
    expect(data.before.condition).toMatchObject({
      calculation: 'filter-condition',
      version: result.before.condition.calculation.version,
      ok: true,
      outputs: { verdict: { type: 'choice', value: 'loaded' } },
    });
    expect(data.comparison).toMatchObject({ ok: true, outputs: { verdict: { value: 'cleaned' } } });
  });
});
