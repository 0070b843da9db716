import { existsSync, readFileSync } from 'node:fs';
import { mkdir } from 'node:fs/promises';
import { join } from 'node:path';
import { root } from './root.mjs';
import { run } from './run.mjs';

export const demoJob = join('examples', 'demo-job', 'job.json');

/**
 * Run the main job on the demo vehicle with the built command line, as a user would.
 *
 * @param {string} folder where the sheets are written, relative to the repository
 * @returns {Promise<import('./run.mjs').RunResult & { html: string }>}
 */
export async function runDemoJob(folder) {
  const html = join(folder, 'job-sheet.html');
  const home = join(root, 'packages', 'wallflow');
  /** @type {{ bin?: { wallflow?: string } }} */
  const { bin } = JSON.parse(readFileSync(join(home, 'package.json'), 'utf8'));
  if (bin?.wallflow === undefined) return { code: 1, stdout: '', output: 'packages/wallflow/package.json names no bin "wallflow"\n', html };
  await mkdir(join(root, folder), { recursive: true });
  const result = await run(process.execPath, [join(home, bin.wallflow), 'job', demoJob, '--out', folder]);
  if (result.code !== 0 || existsSync(join(root, html))) return { ...result, html };
  return { ...result, code: 1, output: `${result.output}no sheet was written to ${html}\n`, html };
}
