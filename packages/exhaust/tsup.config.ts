import { defineConfig } from 'tsup';

const subjects = ['gas', 'flow', 'filter', 'soot', 'regeneration', 'reductant', 'smoke', 'cleaning'];
const definitions = Object.fromEntries(subjects.map((subject) => [`calculations/${subject}`, `src/calculations/${subject}.ts`]));

// One built file for each source file: a bundler then drops whole modules that are not used, computed constants included.
export default defineConfig({
  entry: ['src/**/*.ts'],
  bundle: false,
  format: 'esm',
  target: 'es2022',
  dts: {
    entry: { index: 'src/index.ts', calculations: 'src/calculations.ts', ...definitions },
    compilerOptions: { ignoreDeprecations: '6.0', noEmit: false },
  },
  clean: true,
});
