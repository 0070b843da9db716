import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { pnpm } from '../pnpm.mjs';
import { isStale } from './freshness.mjs';
import { root } from './root.mjs';

/** Files that a package's build writes: the targets of its exports. */
function builtFiles() {
  return readdirSync(join(root, 'packages')).flatMap((name) => {
    /** @type {{ exports: Record<string, string | Record<string, string>> }} */
    const { exports } = JSON.parse(readFileSync(join(root, 'packages', name, 'package.json'), 'utf8'));
    return Object.values(exports).flatMap((target) =>
      typeof target === 'string' ? [] : [target.types, target.default].flatMap((file) => (file ? [join('packages', name, file)] : [])),
    );
  });
}

/** Build all packages, each after those that it imports. */
export function buildPackages() {
  return pnpm(['--recursive', '--filter', './packages/*', '--fail-if-no-match', 'run', 'build']);
}

/** Whether a package changed since it was built. */
export function packagesAreStale() {
  return isStale(builtFiles(), ['packages', 'tsconfig.base.json', 'pnpm-lock.yaml']);
}
