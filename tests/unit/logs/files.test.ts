import { spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { readLogStream } from '@wallflow/logs';
import { type FileOutcome, readLogFile } from '@wallflow/logs/files';
import { build } from 'esbuild';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { log, truth, windowsOf } from './drive.js';

const repository = fileURLToPath(new URL('../../..', import.meta.url));
let folder = '';
beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), 'wallflow-logs-'));
  writeFileSync(join(folder, 'a.csv'), log());
  writeFileSync(join(folder, 'b.csv'), log({ separator: ';', decimal: ',' }));
});
afterAll(() => rmSync(folder, { recursive: true }));

describe('a log in a file', () => {
  it('is read as it would be from memory, and tells how far it is', async () => {
    const told: number[] = [];
    const result = await readLogFile(join(folder, 'a.csv'), { onProgress: (bytes) => told.push(bytes) });
    expect(result.ok && windowsOf(result)).toEqual(truth);
    expect(told.at(-1)).toBe(new TextEncoder().encode(log()).length);
  });

  it('rejects with the complaint of the system when it is not there', async () => {
    await expect(readLogFile(join(folder, 'none.csv'))).rejects.toThrow(/ENOENT/);
  });
});

describe('a log that comes in parts', () => {
  it('can be cancelled', async () => {
    const signal = { aborted: false };
    const parts = function* () {
      yield new TextEncoder().encode(log());
      signal.aborted = true;
      yield new TextEncoder().encode('1,2');
    };
    expect(await readLogStream(parts(), { signal })).toEqual({ ok: false, problem: { code: 'cancelled' } });
  });
});

describe('many logs', () => {
  it('are read in threads, in the order of their paths, with sums and what went wrong', async () => {
    // Built as the package is, as a thread runs no TypeScript.
    await build({
      entryPoints: ['files', 'file-worker'].map((name) => join(repository, 'packages/logs/src', `${name}.ts`)),
      outdir: folder,
      bundle: true,
      splitting: true,
      format: 'esm',
      platform: 'node',
      conditions: ['@wallflow/source'],
      logLevel: 'silent',
    });
    const paths = ['b.csv', 'none.csv', 'a.csv'].map((name) => join(folder, name));
    const program = `
      import { readLogFiles } from ${JSON.stringify(join(folder, 'files.js'))};
      let files = 0;
      const outcomes = await readLogFiles(${JSON.stringify(paths)}, { threads: 2, sums: { channels: ['pressureDrop'] }, onProgress: (progress) => { files = progress.files; } });
      console.log(JSON.stringify({ outcomes, files }));`;
    writeFileSync(join(folder, 'package.json'), '{ "type": "module" }');
    const child = spawnSync(process.execPath, ['--input-type=module', '-'], { input: program, encoding: 'utf8', cwd: folder });
    expect(child.stderr).toBe('');
    const { outcomes, files } = JSON.parse(child.stdout) as { outcomes: FileOutcome[]; files: number };
    expect(files).toBe(3);
    expect(outcomes.map(({ path }) => path)).toEqual(paths);
    expect(outcomes[1]).toMatchObject({ error: expect.stringMatching(/ENOENT/) });
    for (const outcome of [outcomes[0], outcomes[2]]) {
      if (outcome === undefined || 'error' in outcome || !outcome.result.ok) throw new Error('not read');
      expect(windowsOf(outcome.result)).toEqual(truth);
      expect(outcome.sums?.channels.pressureDrop?.count).toBe(135);
    }
  });
});
