import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { fingerprint, keptPasses } from '../../../tools/support/kept-passes.mjs';

let home: string;
beforeEach(() => {
  home = mkdtempSync(join(tmpdir(), 'wallflow-kept-'));
  mkdirSync(join(home, 'src'));
  writeFileSync(join(home, 'src', 'a.ts'), 'one');
});
afterEach(() => rmSync(home, { recursive: true, force: true }));

describe('the fingerprint of a state', () => {
  it('changes with the content, the name and the number of the files, and with a tool', () => {
    const seen = [fingerprint(home, ['1'])];
    writeFileSync(join(home, 'src', 'a.ts'), 'two');
    seen.push(fingerprint(home, ['1']));
    writeFileSync(join(home, 'src', 'b.ts'), '');
    seen.push(fingerprint(home, ['1']));
    rmSync(join(home, 'src', 'b.ts'));
    writeFileSync(join(home, 'src', 'c.ts'), '');
    seen.push(fingerprint(home, ['1']));
    seen.push(fingerprint(home, ['2']));
    expect(new Set(seen).size).toBe(seen.length);
  });

  it('is the same for the same files, whenever they were written, and whatever tools have made', () => {
    const before = fingerprint(home, []);
    writeFileSync(join(home, 'src', 'a.ts'), 'one');
    mkdirSync(join(home, 'dist'));
    writeFileSync(join(home, 'dist', 'a.js'), '');
    expect(fingerprint(home, [])).toBe(before);
  });
});

describe('a kept pass', () => {
  const passed = { passed: 3, failed: 0, note: '3 packages' };

  it('comes back for the state that it belongs to alone', () => {
    keptPasses(join(home, 'kept'), 'a').keep('unit', passed);
    expect(keptPasses(join(home, 'kept'), 'a').of('unit')).toEqual(passed);
    expect(keptPasses(join(home, 'kept'), 'a').of('docs')).toBeUndefined();
    expect(keptPasses(join(home, 'kept'), 'b').of('unit')).toBeUndefined();
  });

  it('goes as soon as another state has one', () => {
    keptPasses(join(home, 'kept'), 'a').keep('unit', passed);
    keptPasses(join(home, 'kept'), 'b').keep('unit', passed);
    expect(keptPasses(join(home, 'kept'), 'a').of('unit')).toBeUndefined();
  });

  it('is never one of a check that failed, or that did not run', () => {
    const kept = keptPasses(join(home, 'kept'), 'a');
    kept.keep('unit', { passed: 3, failed: 1 });
    kept.keep('browser', { passed: 0, failed: 0 });
    expect([kept.of('unit'), kept.of('browser')]).toEqual([undefined, undefined]);
  });
});
