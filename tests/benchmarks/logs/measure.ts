import { spawnSync } from 'node:child_process';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { buildSync } from 'esbuild';

const repository = fileURLToPath(new URL('../../..', import.meta.url));

/** What a program took in a process of its own. */
export interface Measured {
  /** Processor time in s, from before its first line to its end. */
  readonly processor: number;
  /** The most memory in MB, above that of a process that does nothing. */
  readonly memory: number;
  readonly printed: string;
}

const around = (program: string) => `
  import { createReadStream } from 'node:fs';
  const [path] = process.argv.slice(2);
  const start = process.cpuUsage();
  ${program}
  const { user, system } = process.cpuUsage(start);
  process.stderr.write(JSON.stringify({ processor: (user + system) / 1e6, memory: process.resourceUsage().maxRSS / 1024 }));`;

function run(program: string, path: string, folder: string): Measured {
  const outfile = join(folder, 'program.mjs');
  buildSync({
    stdin: { contents: around(program), resolveDir: repository, loader: 'ts' },
    outfile,
    bundle: true,
    format: 'esm',
    platform: 'node',
    conditions: ['@wallflow/source'],
    banner: { js: "import { createRequire } from 'node:module'; const require = createRequire(import.meta.url);" },
  });
  const child = spawnSync(process.execPath, [outfile, path], { encoding: 'utf8' });
  if (child.status !== 0) throw new Error(child.stderr);
  return { ...(JSON.parse(child.stderr) as { processor: number; memory: number }), printed: child.stdout.trim() };
}

/** The programs that are compared: ours, and bare parses into arrays of text that are looked at and dropped. */
export const programs = {
  'read and understood': `
    const { LogReader } = await import('@wallflow/logs');
    const reader = new LogReader();
    for await (const part of createReadStream(path, { highWaterMark: 262144 })) reader.push(part);
    const result = reader.end();
    console.log(result.ok ? result.rows + ' rows, ' + result.windows.length + ' stretches' : 'refused');`,
  'udsv, text of all cells': `
    const { inferSchema, initParser } = await import('udsv');
    let parser, rows = 0;
    const decoder = new TextDecoder();
    for await (const part of createReadStream(path, { highWaterMark: 262144 })) {
      const text = decoder.decode(part, { stream: true });
      parser ??= initParser(inferSchema(text));
      parser.chunk(text, parser.stringArrs, () => { rows += 1; });
    }
    parser.end();
    console.log(rows + ' rows');`,
  'udsv, numbers': `
    const { inferSchema, initParser } = await import('udsv');
    let parser, rows = 0;
    const decoder = new TextDecoder();
    for await (const part of createReadStream(path, { highWaterMark: 262144 })) {
      const text = decoder.decode(part, { stream: true });
      parser ??= initParser(inferSchema(text));
      parser.chunk(text, parser.typedArrs, () => { rows += 1; });
    }
    parser.end();
    console.log(rows + ' rows');`,
  'papaparse, text of all cells': `
    const Papa = (await import('papaparse')).default;
    let rows = -1;
    await new Promise((done, fail) => Papa.parse(createReadStream(path, { highWaterMark: 262144 }), { chunk: ({ data }) => { rows += data.length; }, complete: done, error: fail }));
    console.log(rows + ' rows');`,
} as const;

/** Measure one of the programs on a log. */
export function measure(name: keyof typeof programs, path: string, folder: string): Measured {
  const empty = run('', path, folder);
  const measured = run(programs[name], path, folder);
  return { ...measured, memory: measured.memory - empty.memory };
}
