import { ensureChromium, howToInstall } from '../support/chromium.mjs';
import { vitest } from './vitest.mjs';

/**
 * Have a browser ready before it is needed; installing one takes a while. Counts only when it fails: under `CI=true`, or
 * when an installation was tried. On a person's machine the summary says what to install.
 *
 * @returns {Promise<import('../support/lanes.mjs').Outcome>}
 */
export async function chromium() {
  const { path, output } = await ensureChromium();
  if (path !== undefined) return { passed: 0, failed: 0, note: path };
  const must = process.env.CI === 'true' || output !== undefined;
  return { passed: 0, failed: must ? 1 : 0, note: howToInstall, output: output ?? `no chromium: ${howToInstall}\n` };
}

/**
 * Tests of the built site in a browser.
 *
 * @returns {Promise<import('../support/lanes.mjs').Outcome>}
 */
export async function browser() {
  const { path } = await ensureChromium();
  if (path === undefined) return { passed: 0, failed: 0, note: `NOT RUN: ${howToInstall}` };
  return vitest('browser', { CHROMIUM_PATH: path });
}
