import { existsSync } from 'node:fs';
import { cp, readdir, rm } from 'node:fs/promises';
import { join, relative } from 'node:path';
import { isStale } from './freshness.mjs';
import { packages } from './package-entries.mjs';
import { root } from './root.mjs';
import { runInstalled } from './run.mjs';

/** Where the compiler writes declarations, in the folders of the repository. */
const declarations = join('out', 'declarations');

/** @param {string} folder */
async function modulesIn(folder) {
  const files = await readdir(folder, { recursive: true });
  return files.filter((file) => file.endsWith('.ts')).map((file) => join(folder, file));
}

/**
 * One package, twice: a built file for each module, so that a bundler drops whole modules that are not used, and few files for
 * Node, which spends its time on opening files. The compiler writes the declarations, for all packages in one run.
 *
 * @param {import('./package-entries.mjs').Package} built
 */
async function buildPackage({ folder, entries }) {
  // Not imported above: the tools that install come before what is installed.
  const { build } = await import('tsup');
  const home = join(root, folder);
  const source = join(home, 'src');
  const shared = /** @satisfies {import('tsup').Options} */ ({
    config: false,
    // Named, as one is looked for up to the root of the disk otherwise.
    tsconfig: join(root, 'tsconfig.base.json'),
    format: 'esm',
    outExtension: () => ({ js: '.js' }),
    target: 'es2022',
    sourcemap: true,
    silent: true,
    dts: false,
    // A browser that finds `fs` looks for a package; `node:fs` says what it is.
    removeNodeProtocol: false,
  });
  await rm(join(home, 'dist'), { recursive: true, force: true });
  const modules = (await modulesIn(source)).map((file) => [relative(source, file).replace(/\.ts$/, ''), file]);
  await build({ ...shared, entry: Object.fromEntries(modules), outDir: join(home, 'dist'), bundle: false, splitting: false });
  await build({
    ...shared,
    entry: Object.fromEntries(entries.map((entry) => [entry.name, join(home, entry.source)])),
    outDir: join(home, 'dist', 'node'),
    skipNodeModulesBundle: true,
    splitting: true,
    platform: 'node',
    esbuildOptions: (options) => {
      options.chunkNames = 'shared/[hash]';
    },
  });
}

/**
 * A result that says which files the manifests promise and the build did not write.
 *
 * @param {readonly string[]} files relative to the repository
 * @returns {import('./run.mjs').RunResult}
 */
function withoutGaps(files) {
  const missing = files.filter((file) => !existsSync(join(root, file)));
  return {
    code: missing.length === 0 ? 0 : 1,
    stdout: '',
    output: missing.map((file) => `${file} is promised and was not built\n`).join(''),
  };
}

/** @param {string} file */
const isScript = (file) => file.endsWith('.js');

/**
 * Build what runs, without declarations: that takes a second.
 *
 * @returns {Promise<import('./run.mjs').RunResult>}
 */
export async function buildScripts() {
  try {
    const all = packages();
    await Promise.all(all.map(buildPackage));
    return withoutGaps(all.flatMap(({ built }) => built.filter(isScript)));
  } catch (error) {
    return { code: 1, stdout: '', output: `${error instanceof Error ? error.message : error}\n` };
  }
}

/**
 * Check the types of everything that is not for a browser, and write the declarations of the packages on the way.
 */
export async function checkTypes() {
  await rm(join(root, declarations), { recursive: true, force: true });
  return runInstalled('tsc', [
    '-p',
    'tests/tsconfig.json',
    '--noEmit',
    'false',
    '--declaration',
    '--emitDeclarationOnly',
    '--rootDir',
    '.',
    '--outDir',
    declarations,
  ]);
}

/** Put the declarations that `checkTypes` wrote beside what `buildScripts` built. */
export async function addDeclarations() {
  for (const { folder } of packages()) {
    await cp(join(root, declarations, folder, 'src'), join(root, folder, 'dist'), { recursive: true });
  }
  return withoutGaps(packages().flatMap(({ built }) => built));
}

/** Build what is published, after `checkTypes`: what runs, and beside it the declarations. */
export async function buildPackages() {
  const result = await buildScripts();
  return result.code === 0 ? addDeclarations() : result;
}

/** Whether a package changed since what runs of it was built. */
export function scriptsAreStale() {
  const scripts = packages().flatMap(({ built }) => built.filter(isScript));
  return isStale(scripts, ['packages', 'tools/support/build-packages.mjs', 'pnpm-lock.yaml']);
}
