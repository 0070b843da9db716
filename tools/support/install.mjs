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

/** @typedef {'all' | 'without-site'} Extent what is installed; the tools of the site are half of it, and the demo job needs none */

// In the folder that it speaks of, so that it goes when that goes.
/**
 * @param {string} home
 * @param {Extent} extent
 */
const mark = (home, extent) => join(home, 'node_modules', extent === 'all' ? '.installed' : '.installed-without-site');

/**
 * Whether the last installation was of exactly this, and is still there.
 *
 * @param {string} [home]
 * @param {Extent} [extent]
 */
export function isInstalled(home = root, extent = 'all') {
  if (!existsSync(mark(home, extent)) || readFileSync(mark(home, extent), 'utf8') !== fingerprint(home)) return false;
  return manifests(home).every((member) => {
    if (extent !== 'all' && member === 'docs-site') return true;
    const { dependencies = {} } = JSON.parse(readFileSync(join(home, member, 'package.json'), 'utf8'));
    return Object.keys(dependencies).every((name) => existsSync(join(home, member, 'node_modules', name)));
  });
}

/**
 * @param {string} [home]
 * @param {Extent} [extent]
 */
export function markInstalled(home = root, extent = 'all') {
  writeFileSync(mark(home, extent), fingerprint(home));
}

/**
 * Install exactly what the lock file says. When nothing changed since the last time, nothing is asked of the network or of the
 * home folder.
 *
 * @returns {Promise<import('./run.mjs').RunResult>}
 */
export async function install() {
  return isInstalled() ? { code: 0, stdout: '', output: '' } : installNow('all');
}

/** Install what builds and runs the packages, unless that or more is there. */
export async function installWithoutSite() {
  return isInstalled() || isInstalled(root, 'without-site') ? { code: 0, stdout: '', output: '' } : installNow('without-site');
}

/** @param {Extent} extent */
async function installNow(extent) {
  const part = extent === 'all' ? [] : ['--filter', '!docs-site'];
  const result = await pnpm([...part, 'install', '--frozen-lockfile', '--reporter=append-only']);
  if (result.code === 0) markInstalled(root, extent);
  return result;
}
