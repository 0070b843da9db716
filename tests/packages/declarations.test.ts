import { spawnSync } from 'node:child_process';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { packedPackages, repository } from './support/packed.js';

const attw = join(repository, 'node_modules', '.bin', 'attw');

describe.each(packedPackages)('$name', ({ tarball }) => {
  it('resolves to its types for every importer of ES modules', () => {
    const options = ['--profile', 'esm-only', '--no-definitely-typed', '--no-color', '--no-emoji', '--format', 'ascii'];
    const checked = spawnSync(attw, [tarball, ...options], { encoding: 'utf8' });
    expect(checked.status, checked.stdout + checked.stderr).toBe(0);
  });
});
