// Judges generated cases with a hidden cause and stores what was said of each: `npm run evaluate -- [cases] [processes] [first seed]`.
// The seeds start where nobody has looked while estimate and generator were made. The site's page on the estimate and its test read the stored rows. 2000 cases take some ten minutes of processor time.
import { spawn } from 'node:child_process';
import { once } from 'node:events';
import { createWriteStream } from 'node:fs';
import { mkdir, readFile, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { build } from 'esbuild';
import { root } from './support/root.mjs';

const [cases = 2000, processes = 2, first = 10001] = process.argv.slice(2).map(Number);
if (![cases, processes, first].every((count) => Number.isInteger(count) && count > 0)) {
  console.error(
    'Give the number of cases, of processes and the first seed as whole numbers, for example: npm run evaluate -- 2000 2 10001',
  );
  process.exit(1);
}

const out = join(root, 'out/evaluation');
await mkdir(out, { recursive: true });
const bundle = join(out, 'evaluate-cases.mjs');
await build({
  entryPoints: [join(root, 'tests/evaluation/evaluate-cases.ts')],
  outfile: bundle,
  bundle: true,
  platform: 'node',
  format: 'esm',
  target: 'node20',
  conditions: ['@wallflow/source'],
  logLevel: 'error',
});

// Each process takes every so-manieth case, so that all end at about the same time.
const files = await Promise.all(
  Array.from({ length: processes }, async (_, k) => {
    const file = join(out, `rows-${k + 1}.jsonl`);
    const child = spawn(process.execPath, [bundle, first + k, first + cases - 1, processes].map(String), {
      stdio: ['ignore', 'pipe', 'inherit'],
    });
    child.stdout.pipe(createWriteStream(file));
    const [code] = await once(child, 'close');
    if (code !== 0) throw new Error(`judging the cases ended with ${code}`);
    return file;
  }),
);
const lines = (await Promise.all(files.map((file) => readFile(file, 'utf8')))).flatMap((text) => text.trimEnd().split('\n'));
const rows = lines.map((line) => ({ line, seed: JSON.parse(line).seed })).sort((a, b) => a.seed - b.seed);
await writeFile(join(root, 'tests/evaluation/rows.jsonl'), `${rows.map(({ line }) => line).join('\n')}\n`);
console.log(`${rows.length} cases stored in tests/evaluation/rows.jsonl`);
