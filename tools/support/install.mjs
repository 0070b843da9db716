import { createHash } from 'node:crypto';
import { existsSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { pnpm } from '../pnpm.mjs';
import { root } from './root.mjs';

/** @param {string} home folder of a workspace */
function manifests(home) {
  const members = readdirSync(join(home, 'packages')).map((name) => join('packages', name));
  return ['.', ...members, 'docs-site'].filter((member) => existsSync(join(home, member, 'package.json')));
}

/**
 * What an installation depends on: what is wanted, and what would run it.
 *
 * @param {string} home
 */
function fingerprint(home) {
  const hash = createHash('sha256').update(`${process.version} ${process.platform} ${process.arch}\n`);
  const files = ['pnpm-lock.yaml', 'pnpm-workspace.yaml', ...manifests(home).map((member) => join(member, 'package.json'))];
  for (const file of files) hash.update(`${file}\n`).update(readFileSync(join(home, file)));
  return hash.digest('hex');
}

// In the folder that it speaks of, so that it goes when that goes.
/** @param {string} home */
const mark = (home) => join(home, 'node_modules', '.installed');

/**
 * Whether the last installation was of exactly this, and is still there.
 *
 * @param {string} [home]
 */
export function isInstalled(home = root) {
  if (!existsSync(mark(home)) || readFileSync(mark(home), 'utf8') !== fingerprint(home)) return false;
  return manifests(home).every((member) => {
    const { dependencies = {} } = JSON.parse(readFileSync(join(home, member, 'package.json'), 'utf8'));
    return Object.keys(dependencies).every((name) => existsSync(join(home, member, 'node_modules', name)));
  });
}

/** @param {string} [home] */
export function markInstalled(home = root) {
  writeFileSync(mark(home), fingerprint(home));
}

/**
 * Install exactly what the lock file says. When nothing changed since the last time, nothing is asked of the network or of the
 * home folder.
 *
 * @returns {Promise<import('./run.mjs').RunResult>}
 */
export async function install() {
  if (isInstalled()) return { code: 0, stdout: '', output: '' };
  const result = await pnpm(['install', '--frozen-lockfile', '--reporter=append-only']);
  if (result.code === 0) markInstalled();
  return result;
}
