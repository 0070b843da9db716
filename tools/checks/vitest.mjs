import { mkdir, readFile, rm } from 'node:fs/promises';
import { availableParallelism } from 'node:os';
import { join } from 'node:path';
import { root } from '../support/root.mjs';
import { runInstalled } from '../support/run.mjs';

// Two checks run at a time, so that each gets half of the machine. The browser tests wait more than they compute.
/** @param {string} project */
const workersFor = (project) => Math.max(1, project === 'browser' ? availableParallelism() : Math.floor(availableParallelism() / 2));

// On what the check `scripts` has just built. Node loads it in a few files, where vitest would take every module of the sources
// through its transform, and every call between two of them through a getter.
const onBuilt = new Set(['unit', 'reference', 'properties', 'job']);

/**
 * @param {string} file
 * @returns {Promise<{ numPassedTests: number, numFailedTests: number, numPendingTests: number, numTodoTests: number } | undefined>}
 */
async function readReport(file) {
  try {
    return JSON.parse(await readFile(file, 'utf8'));
  } catch {
    return undefined;
  }
}

/**
 * Run one project of `tests/vitest.config.ts`; each of its tests counts. The exit code has the last word: an error
 * outside a test, a type error or an empty project fails even when every test that ran has passed. A skipped test fails.
 *
 * @param {string} project
 * @param {NodeJS.ProcessEnv} [env]
 * @returns {Promise<import('../support/lanes.mjs').Outcome>}
 */
export async function vitest(project, env) {
  const folder = join(root, 'out', 'test');
  const file = join(folder, `${project}.json`);
  await mkdir(folder, { recursive: true });
  await rm(file, { force: true });
  const result = await runInstalled(
    'vitest',
    [
      'run',
      '--config=tests/vitest.config.ts',
      `--project=${project}`,
      `--maxWorkers=${workersFor(project)}`,
      '--reporter=default',
      '--reporter=json',
      `--outputFile.json=${file}`,
    ],
    { env: { ...env, ...(onBuilt.has(project) ? { WALLFLOW_BUILT: 'true' } : {}) } },
  );
  const report = await readReport(file);
  if (report === undefined) return { passed: 0, failed: 1, output: result.output };
  const { numPassedTests, numFailedTests, numPendingTests, numTodoTests } = report;
  const notRun = numPendingTests + numTodoTests;
  const unexplained = result.code !== 0 && numFailedTests === 0 ? 1 : 0;
  return {
    passed: numPassedTests,
    failed: numFailedTests + notRun + unexplained,
    output: result.output,
    ...(notRun > 0 ? { note: `${notRun} tests were skipped` } : {}),
    ...(unexplained > 0 ? { note: 'an error outside the tests' } : {}),
  };
}
