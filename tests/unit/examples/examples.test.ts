import { readdirSync, readFileSync } from 'node:fs';
import { afterEach, expect, it, vi } from 'vitest';

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
  await import(new URL(name, folder).pathname);
  expect(printed.mock.calls.map(([line]) => line)).toEqual(promised(readFileSync(new URL(name, folder), 'utf8')));
});
