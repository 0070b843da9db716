import { readdir, stat } from 'node:fs/promises';
import { join } from 'node:path';
import { root } from './root.mjs';

// Made by tools, so never a reason to build again.
const made = new Set(['node_modules', 'dist', 'build', '.docusaurus', 'api', '.cache-loader']);

/**
 * @param {string} path
 * @returns {Promise<number>} when the file, or the newest file below the folder, was last changed
 */
async function newest(path) {
  const info = await stat(path).catch(() => undefined);
  if (info === undefined) return 0;
  if (!info.isDirectory()) return info.mtimeMs;
  const entries = (await readdir(path)).filter((name) => !made.has(name));
  const times = await Promise.all(entries.map((name) => newest(join(path, name))));
  return Math.max(0, ...times);
}

/**
 * Whether a result is missing or older than something that it is made from.
 *
 * @param {readonly string[]} results files that the last build wrote
 * @param {readonly string[]} sources files and folders
 */
export async function isStale(results, sources) {
  const builtAt = await Promise.all(results.map((path) => newest(join(root, path))));
  const changedAt = await Promise.all(sources.map((path) => newest(join(root, path))));
  return Math.min(...builtAt) < Math.max(...changedAt);
}
