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

/** @returns {string | undefined} path of the browser: `CHROMIUM_PATH`, or a chromium on the PATH */
export function findChromium() {
  const { CHROMIUM_PATH, PATH = '' } = process.env;
  if (CHROMIUM_PATH !== undefined && CHROMIUM_PATH !== '') return isExecutable(CHROMIUM_PATH) ? CHROMIUM_PATH : undefined;
  const folders = [...PATH.split(delimiter), '/usr/bin'];
  return folders.flatMap((folder) => ['chromium', 'chromium-browser'].map((name) => join(folder, name))).find(isExecutable);
}

export const howToInstall = 'install Chromium (Debian: apt-get install chromium) or set CHROMIUM_PATH to its executable';

/**
 * Find the browser; on Debian, and with the right to do so, install it.
 *
 * @returns {Promise<{ path?: string, output?: string }>}
 */
export async function ensureChromium() {
  const found = findChromium();
  if (found !== undefined) return { path: found };
  if (process.getuid?.() !== 0 || !existsSync('/etc/debian_version')) return {};
  const env = { DEBIAN_FRONTEND: 'noninteractive' };
  const update = await run('apt-get', ['update'], { env });
  if (update.code !== 0) return { output: update.output };
  const install = await run('apt-get', ['install', '--yes', '--no-install-recommends', 'chromium'], { env });
  const path = findChromium();
  return path === undefined ? { output: install.output } : { path };
}
