import { defineConfig } from 'tsup';

// One built file for each source file: a bundler then drops whole modules that are not used, computed constants included.
export default defineConfig({
  entry: ['src/**/*.ts'],
  bundle: false,
  format: 'esm',
  target: 'es2022',
  dts: {
    entry: { index: 'src/index.ts', calculations: 'src/calculations.ts' },
    compilerOptions: { ignoreDeprecations: '6.0', noEmit: false },
  },
  clean: true,
});
