import { pnpm } from '../pnpm.mjs';
import { addDeclarations, buildScripts, checkTypes } from '../support/build-packages.mjs';
import { buildSite } from '../support/build-site.mjs';
import { runDemoJob } from '../support/demo-job.mjs';
import { install } from '../support/install.mjs';
import { fromCommand } from '../support/outcome.mjs';
import { runInstalled } from '../support/run.mjs';
import { browser, chromium } from './browser.mjs';
import { builtPages } from './built-pages.mjs';
import { lockFile } from './lock-file.mjs';
import { pack } from './pack.mjs';
import { vitest } from './vitest.mjs';

/**
 * Everything that must pass. A check starts when a lane is free and its needs have passed; what others wait for stands
 * first.
 *
 * @type {readonly import('../support/lanes.mjs').Check[]}
 */
export const checks = [
  { name: 'install', always: true, run: async () => fromCommand(await install()) },
  { name: 'lock-file', run: lockFile },
  {
    name: 'lint',
    needs: ['install'],
    run: async () =>
      fromCommand(await runInstalled('biome', ['check', '--config-path=tools', '--error-on-warnings', '--max-diagnostics=50', '.'])),
  },
  {
    name: 'layers',
    needs: ['install'],
    run: async () =>
      fromCommand(
        await runInstalled('depcruise', [
          '--config',
          'tools/dependency-cruiser.cjs',
          '--output-type',
          'err-long',
          'packages',
          'docs-site',
          'examples',
          'tests',
        ]),
      ),
  },
  { name: 'chromium', needs: ['install'], run: chromium },
  { name: 'scripts', needs: ['install'], run: async () => fromCommand(await buildScripts()) },
  { name: 'docs', needs: ['install'], run: async () => fromCommand(await buildSite()) },
  { name: 'browser', needs: ['docs', 'chromium'], run: browser },
  { name: 'types', needs: ['install'], run: async () => fromCommand(await checkTypes()) },
  { name: 'build', needs: ['scripts', 'types'], run: async () => fromCommand(await addDeclarations()) },
  { name: 'properties', needs: ['scripts'], run: () => vitest('properties') },
  { name: 'reference', needs: ['scripts'], run: () => vitest('reference') },
  { name: 'unit', needs: ['scripts'], run: () => vitest('unit') },
  { name: 'job', needs: ['scripts'], run: () => vitest('job') },
  { name: 'type-tests', needs: ['install'], run: () => vitest('types') },
  {
    name: 'browser-types',
    needs: ['docs', 'build'],
    // Against the declarations of the packages: their sources have been checked.
    run: async () => fromCommand(await runInstalled('tsc', ['-p', 'docs-site/tsconfig.json', '--customConditions', 'built'])),
  },
  { name: 'docs-pages', needs: ['docs'], run: builtPages },
  { name: 'generated', needs: ['install'], run: async () => fromCommand(await pnpm(['--recursive', 'run', 'generate', '--check'])) },
  { name: 'demo-job', needs: ['build'], run: async () => fromCommand(await runDemoJob('out/test')) },
  { name: 'pack', needs: ['build'], run: pack },
  { name: 'packages', needs: ['pack'], run: () => vitest('packages') },
];
