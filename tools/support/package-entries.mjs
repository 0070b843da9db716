import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { root } from './root.mjs';

/**
 * @typedef {object} Entry one thing that users of a package import
 * @property {string} source relative to the package
 * @property {string} name name of the built file, without its ending
 */

/**
 * @typedef {object} Package
 * @property {string} folder relative to the repository
 * @property {readonly Entry[]} entries
 * @property {readonly string[]} built files that the manifest promises, relative to the repository
 */

/**
 * @param {string} folder
 * @returns {Package}
 */
function read(folder) {
  /** @type {{ exports: Record<string, string | Record<string, string>>, bin?: Record<string, string> }} */
  const { exports, bin = {} } = JSON.parse(readFileSync(join(root, folder, 'package.json'), 'utf8'));
  const targets = Object.values(exports).flatMap((target) => (typeof target === 'string' ? [] : [target]));
  const promised = targets.flatMap(({ '@wallflow/source': _, ...files }) => Object.values(files));
  return {
    folder,
    entries: targets.flatMap(({ '@wallflow/source': source }) =>
      source === undefined ? [] : [{ source, name: source.replace('./src/', '').replace(/\.ts$/, '') }],
    ),
    built: [...promised, ...Object.values(bin)].map((file) => join(folder, file)),
  };
}

/** @returns {readonly Package[]} every package, with what its manifest promises */
export function packages() {
  return readdirSync(join(root, 'packages'), { withFileTypes: true })
    .filter((entry) => entry.isDirectory())
    .map(({ name }) => read(join('packages', name)));
}
