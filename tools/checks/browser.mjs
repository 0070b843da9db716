import { ensureChromium, howToInstall } from '../support/chromium.mjs';
import { vitest } from './vitest.mjs';

/**
 * Tests of the built site in a browser. Without a browser they fail under `CI=true`; on a person's machine the summary
 * says that they did not run and what to install.
 *
 * @returns {Promise<import('../support/lanes.mjs').Outcome>}
 */
export async function browser() {
  const chromium = await ensureChromium();
  if (chromium.path !== undefined) return vitest('browser', { CHROMIUM_PATH: chromium.path });
  const note = `NOT RUN: ${howToInstall}`;
  const missing = process.env.CI === 'true' ? 1 : 0;
  return { passed: 0, failed: missing, note, output: chromium.output ?? '' };
}
