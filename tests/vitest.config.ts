import { defineConfig } from 'vitest/config';

// Resolves the workspace packages to their sources, so that a test never runs an old build.
const conditions = ['@wallflow/source', 'module', 'import', 'default'];

function project(name: string, include: string[], extra: Record<string, unknown> = {}) {
  return {
    resolve: { conditions },
    ssr: { resolve: { conditions } },
    test: { name, include, root: new URL('..', import.meta.url).pathname, ...extra },
  };
}

export default defineConfig({
  test: {
    projects: [
      project('unit', ['tests/unit/**/*.test.ts']),
      project('reference', ['tests/reference/**/*.test.ts']),
      project('properties', ['tests/properties/**/*.test.ts']),
      project('job', ['tests/job/**/*.test.ts'], { testTimeout: 60_000 }),
      project('types', [], {
        typecheck: { enabled: true, only: true, include: ['tests/types/**/*.test-d.ts'], tsconfig: 'tests/tsconfig.json' },
      }),
    ],
  },
});
