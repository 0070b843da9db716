import { fileURLToPath } from 'node:url';
import { defineConfig, type TestProjectInlineConfiguration } from 'vitest/config';

// Resolves the workspace packages to their sources, so that a test never runs an old build. `npm test` has built them from these very
// sources a moment before, and says so.
const built = process.env.WALLFLOW_BUILT === 'true';
const conditions = built ? ['node', 'import', 'default'] : ['@wallflow/source', 'module', 'import', 'default'];
const root = fileURLToPath(new URL('..', import.meta.url));

// A busy machine is no failure: time limits are there for what never ends.
const limits = { testTimeout: 60_000, hookTimeout: 60_000 };

function project(name: string, options: TestProjectInlineConfiguration['test'] = {}): TestProjectInlineConfiguration {
  return {
    resolve: { conditions },
    ssr: { resolve: { conditions } },
    // One world for all files of a worker: loading every definition anew for each file took a third of the time. No test may leave
    // a trace in a module.
    test: {
      name,
      root,
      include: [`tests/${name}/**/*.test.ts`],
      isolate: false,
      server: { deps: { external: [/\/packages\/[^/]+\/dist\/node\//] } },
      ...limits,
      ...options,
    },
  };
}

export default defineConfig({
  test: {
    allowOnly: false,
    projects: [
      project('unit'),
      project('reference'),
      project('properties', { setupFiles: ['tests/support/setup-properties.ts'] }),
      project('job'),
      project('types', {
        include: [],
        typecheck: { enabled: true, only: true, include: ['tests/types/**/*.test-d.ts'], tsconfig: 'tests/tsconfig.types.json' },
      }),
      // `npm run bench`; figures of one machine, so not a part of `npm test`.
      project('benchmarks', { include: [], benchmark: { include: ['tests/benchmarks/**/*.bench.ts'] } }),
      // On what `npm test` has packed into out/packed and built into docs-site/build.
      project('packages', { testTimeout: 120_000 }),
      project('browser', {
        globalSetup: ['tests/browser/support/global-setup.ts'],
        testTimeout: 300_000,
        // Waiting is for a state, however long the machine takes to reach it.
        expect: { poll: { timeout: 240_000, interval: 50 } },
      }),
    ],
  },
});
