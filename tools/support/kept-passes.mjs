import { createHash } from 'node:crypto';
import { existsSync, mkdirSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';

/** @typedef {import('./lanes.mjs').Outcome} Outcome */

// Made by tools, so never a reason to check again. What a check needs of it is made anew where its sources changed.
const made = new Set(['node_modules', 'dist', 'build', '.docusaurus', '.git', 'out']);

/**
 * A fingerprint of all files of a folder of the repository: names and contents, in one order on every machine.
 *
 * @param {string} home
 * @param {string} [path] relative to it
 * @param {import('node:crypto').Hash} [hash]
 */
function addFiles(home, path = '.', hash = createHash('sha256')) {
  const entries = readdirSync(join(home, path), { withFileTypes: true }).sort((a, b) => (a.name < b.name ? -1 : 1));
  for (const entry of entries) {
    const below = join(path, entry.name);
    // The reference of the site is written by a tool.
    if (made.has(entry.name) || below === join('docs-site', 'docs', 'api')) continue;
    if (entry.isDirectory()) addFiles(home, below, hash);
    else if (entry.isFile())
      hash.update(`${below}\n`).update(
        createHash('sha256')
          .update(readFileSync(join(home, below)))
          .digest(),
      );
  }
  return hash;
}

/**
 * What the outcome of a check rests on: every file of the repository, the version of Node and of the browser, the machine, and what
 * the environment asks of the tests. Every file, and not those that a check is thought to read: a list of those would be wrong one day, and a check
 * that should have failed would pass.
 *
 * @param {string} home
 * @param {readonly string[]} tools versions of what is not installed with the repository
 */
export function fingerprint(home, tools) {
  const { CI = '', WALLFLOW_SEED = '' } = process.env;
  const around = [process.version, process.platform, process.arch, CI, WALLFLOW_SEED, ...tools];
  return addFiles(home)
    .update(`${JSON.stringify(around)}\n`)
    .digest('hex');
}

/**
 * Checks that passed on exactly this state are not run a second time. Only passes are kept, and only those of one state.
 *
 * @param {string} folder where they are kept
 * @param {string} state a fingerprint
 */
export function keptPasses(folder, state) {
  const home = join(folder, state);
  /** @param {string} name */
  const file = (name) => join(home, `${name}.json`);
  return {
    /**
     * @param {string} name
     * @returns {Outcome | undefined}
     */
    of: (name) => (existsSync(file(name)) ? JSON.parse(readFileSync(file(name), 'utf8')) : undefined),
    /**
     * @param {string} name
     * @param {Outcome} outcome
     */
    keep(name, { passed, failed, note }) {
      if (failed > 0 || passed === 0) return;
      // Passes of another state go: what was made for them is gone.
      if (!existsSync(home)) rmSync(folder, { recursive: true, force: true });
      mkdirSync(home, { recursive: true });
      writeFileSync(file(name), JSON.stringify({ passed, failed, ...(note === undefined ? {} : { note }) }));
    },
  };
}
