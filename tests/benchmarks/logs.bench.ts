import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { readLog } from '@wallflow/logs';
import { inferSchema, initParser } from 'udsv';
import { bench, describe } from 'vitest';
import { logLines, writeLog } from './logs/make-log.js';
import { measure, type programs } from './logs/measure.js';

const text = [...logLines(100_000)].join('');
const bytes = new TextEncoder().encode(text);

describe('a log of 100 000 rows and 8 columns, from memory', () => {
  bench('read and understood', () => void readLog(bytes));
  bench('udsv, text of all cells', () => void initParser(inferSchema(text)).stringArrs(text));
  bench('udsv, numbers', () => void initParser(inferSchema(text)).typedArrs(text));
});

// Processor time and memory of whole processes, which a benchmark in this one cannot tell. WALLFLOW_ROWS takes other sizes.
const folder = mkdtempSync(join(tmpdir(), 'wallflow-bench-'));
for (const rows of (process.env.WALLFLOW_ROWS ?? '100000,1000000').split(',').map(Number)) {
  const path = join(folder, 'log.csv');
  const size = writeLog(path, rows);
  const names: (keyof typeof programs)[] = [
    'read and understood',
    'udsv, text of all cells',
    'udsv, numbers',
    'papaparse, text of all cells',
  ];
  for (const name of names) {
    const { processor, memory, printed } = measure(name, path, folder);
    console.log(
      `${rows} rows, ${(size / 1e6).toFixed(0)} MB: ${name}: ${processor.toFixed(2)} s of processor time, ${memory.toFixed(0)} MB above an empty process (${printed})`,
    );
  }
}
rmSync(folder, { recursive: true });
