import { readdirSync, readFileSync } from 'node:fs';
import { afterEach, expect, it, vi } from 'vitest';
import { demoLogs } from '../../../examples/demo-job/make-logs.js';

const folder = new URL('../../../examples/', import.meta.url);
const scripts = readdirSync(folder).filter((name) => name.endsWith('.ts'));

function promised(source: string): string[] {
  const [, after = ''] = source.split('// prints:\n');
  return after
    .trim()
    .split('\n')
    .map((line) => line.replace(/^\/\/ ?/, ''));
}

afterEach(() => void vi.restoreAllMocks());

it.each(scripts)('examples/%s prints what it promises', async (name) => {
  const printed = vi.spyOn(console, 'log').mockImplementation(() => undefined);
  await import(new URL(name, folder).href);
  expect(printed.mock.calls.map(([line]) => line)).toEqual(promised(readFileSync(new URL(name, folder), 'utf8')));
});

it.each(Object.entries(demoLogs()))('the log %s of the demo job is what its generator makes', (name, text) => {
  expect(readFileSync(new URL(`demo-job/${name}`, folder), 'utf8')).toBe(text);
});
