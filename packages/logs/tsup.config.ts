import { defineConfig } from 'tsup';

export default defineConfig({
  entry: { index: 'src/index.ts' },
  format: 'esm',
  target: 'es2022',
  dts: { compilerOptions: { ignoreDeprecations: '6.0', noEmit: false } },
  clean: true,
  treeshake: true,
});
