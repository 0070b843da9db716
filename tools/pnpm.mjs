// Runs the pnpm version that package.json names, on a machine that may have only node and npm.
import { spawnSync } from 'node:child_process';
import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { root } from './support/root.mjs';
import { run } from './support/run.mjs';

/** @returns {string} the version after `pnpm@` in `packageManager` */
export function pnpmVersion() {
  const { packageManager } = JSON.parse(readFileSync(join(root, 'package.json'), 'utf8'));
  const match = /^pnpm@(\d+\.\d+\.\d+)(\+|$)/.exec(packageManager ?? '');
  if (match?.[1] === undefined) throw new Error('package.json: packageManager must read pnpm@<major.minor.patch>');
  return match[1];
}

/** @type {readonly string[] | undefined} */
let known;

/**
 * The command and its first arguments: a pnpm of that version from the PATH, or one fetched once into `out`, so that a later
 * start needs neither the network nor npm's folder in the home.
 *
 * @returns {readonly string[]}
 */
function pnpmCommand() {
  if (known !== undefined) return known;
  const version = pnpmVersion();
  const options = { cwd: root, encoding: /** @type {const} */ ('utf8'), shell: process.platform === 'win32' };
  const folder = join(root, 'out', 'tools', `pnpm-${version}`);
  const fetched = join(folder, 'node_modules', 'pnpm', 'bin', 'pnpm.cjs');
  if (!existsSync(fetched)) {
    const installed = spawnSync('pnpm', ['--version'], options);
    if (installed.status === 0 && installed.stdout.trim() === version) {
      known = ['pnpm'];
      return known;
    }
    const flags = ['--no-save', '--no-package-lock', '--no-audit', '--no-fund', '--ignore-scripts'];
    const npm = spawnSync('npm', ['install', '--prefix', folder, ...flags, `pnpm@${version}`], options);
    if (npm.status !== 0) throw new Error(`pnpm ${version} could not be fetched:\n${npm.stderr || npm.error?.message}`);
  }
  known = [process.execPath, fetched];
  return known;
}

/**
 * Run pnpm in the workspace and keep what it prints.
 *
 * @param {readonly string[]} args
 * @param {Parameters<typeof run>[2]} [options]
 */
export async function pnpm(args, options) {
  const [command = 'pnpm', ...first] = pnpmCommand();
  // `npm test --silent` would make npm and pnpm below it silent as well, and their failures unexplained.
  return run(command, [...first, ...args], { ...options, env: { ...options?.env, npm_config_loglevel: undefined } });
}

if (import.meta.url === pathToFileURL(process.argv[1] ?? '').href) {
  const [command = 'pnpm', ...first] = pnpmCommand();
  const child = spawnSync(command, [...first, ...process.argv.slice(2)], { stdio: 'inherit', shell: process.platform === 'win32' });
  process.exit(child.status ?? 1);
}
