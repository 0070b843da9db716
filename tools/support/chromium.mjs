import { spawnSync } from 'node:child_process';
import { accessSync, constants, existsSync } from 'node:fs';
import { delimiter, join } from 'node:path';
import { run } from './run.mjs';

/** @param {string} file */
function isExecutable(file) {
  try {
    accessSync(file, constants.X_OK);
    return true;
  } catch {
    return false;
  }
}

/** @returns {string | undefined} path of a chromium on the PATH */
function onPath() {
  const folders = (process.env.PATH ?? '').split(delimiter).filter((folder) => folder !== '');
  return folders.flatMap((folder) => ['chromium', 'chromium-browser'].map((name) => join(folder, name))).find(isExecutable);
}

/** @returns {string} what the browser that is there says of itself, or nothing */
export function installedChromium() {
  const path = process.env.CHROMIUM_PATH || onPath();
  return path === undefined ? '' : spawnSync(path, ['--version'], { encoding: 'utf8' }).stdout || '';
}

export const howToInstall = 'install Chromium (Debian: apt-get install chromium) or set CHROMIUM_PATH to its executable';

/**
 * Find the browser: `CHROMIUM_PATH`, or a chromium on the PATH. On Debian, and with the right to do so, install it.
 *
 * @returns {Promise<{ path?: string, output?: string }>} without a path when there is none
 */
export async function ensureChromium() {
  const chosen = process.env.CHROMIUM_PATH ?? '';
  if (chosen !== '') return isExecutable(chosen) ? { path: chosen } : { output: `CHROMIUM_PATH is ${chosen}, which cannot be run\n` };
  const found = onPath();
  if (found !== undefined) return { path: found };
  if (process.getuid?.() !== 0 || !existsSync('/etc/debian_version')) return {};
  const env = { DEBIAN_FRONTEND: 'noninteractive' };
  const update = await run('apt-get', ['update'], { env });
  if (update.code !== 0) return { output: update.output };
  const install = await run('apt-get', ['install', '--yes', '--no-install-recommends', 'chromium'], { env });
  const path = onPath();
  return path === undefined ? { output: install.output } : { path };
}
