import { defineConfig } from 'tsup';

const shared = {
  format: 'esm',
  target: 'es2022',
  treeshake: true,
} as const;

export default defineConfig([
  {
    ...shared,
    entry: { index: 'src/index.ts' },
    dts: { compilerOptions: { ignoreDeprecations: '6.0', noEmit: false } },
    clean: true,
  },
  { ...shared, entry: { cli: 'src/cli.ts' }, banner: { js: '#!/usr/bin/env node' } },
]);
