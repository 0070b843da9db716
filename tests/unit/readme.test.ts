import { spawnSync } from 'node:child_process';
import { fileURLToPath } from 'node:url';
import { build } from 'esbuild';
import { describe, expect, it } from 'vitest';
import { codeBlocks, filesWithCode } from '../support/code-blocks.js';
import { readme, readmeBlock } from '../support/readme.js';

const repository = fileURLToPath(new URL('../..', import.meta.url));

const runs = new Map<string, Promise<string>>();

/** What code prints, run once. */
function printed(code: string): Promise<string> {
  const run = runs.get(code) ?? runOnSources(code);
  runs.set(code, run);
  return run;
}

/** Bundle code with the sources of the packages and run it; what it prints. */
async function runOnSources(code: string): Promise<string> {
  const bundle = await build({
    stdin: { contents: code, loader: 'ts', resolveDir: repository },
    bundle: true,
    write: false,
    format: 'esm',
    platform: 'node',
    conditions: ['@wallflow/source'],
    // All of a package, as Node loads it: where kinds of quantity are left out, their units are not known for what they are.
    ignoreAnnotations: true,
    logLevel: 'silent',
  });
  const child = spawnSync(process.execPath, ['--input-type=module', '-'], { input: bundle.outputFiles[0]?.text ?? '', encoding: 'utf8' });
  expect(child.stderr).toBe('');
  return child.stdout;
}

describe.each(filesWithCode)('the code in %s', (file) => {
  const blocks = codeBlocks(file, 'ts');

  it('runs', async () => {
    expect(blocks.length).toBeGreaterThan(0);
    for (const code of blocks) expect(await printed(code)).not.toBe('');
  });

  // A text block stands only where the output is worth reading.
  for (const [index, text] of codeBlocks(file, 'text').entries())
    it(`prints what stands below it (${index + 1})`, async () => {
      expect(await printed(blocks[index] ?? '')).toBe(text);
    });
});

describe('README.md', () => {
  it('shows an example of about ten lines that prints what it says', async () => {
    const code = readmeBlock('ts');
    expect(code.trim().split('\n').length).toBeLessThanOrEqual(12);
    expect(await printed(code)).toBe(readmeBlock('text'));
  });

  it('names every package in its map', () => {
    const names = [
      '@wallflow/units',
      '@wallflow/numerics',
      '@wallflow/logs',
      '@wallflow/calculation',
      '@wallflow/exhaust',
      '@wallflow/workshop',
      'wallflow',
    ];
    for (const name of names) expect(readme).toContain(`| \`${name}\` |`);
  });

  it('states the cautions', () => {
    expect(readme).toMatch(/^## Cautions/m);
    for (const danger of ['hot', 'fire', 'fumes', 'caustic', 'runaway']) expect(readme.toLowerCase()).toContain(danger);
    expect(readme).toMatch(/emission control stays fitted/i);
  });
});
