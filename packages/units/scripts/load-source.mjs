import { fileURLToPath } from 'node:url';
import { build } from 'esbuild';

/** A TypeScript module of src, so that the generator and the package share one evaluator and one spelling rule. */
export async function loadSource(name) {
  const entry = fileURLToPath(new URL(`../src/${name}`, import.meta.url));
  const result = await build({ entryPoints: [entry], bundle: true, format: 'esm', platform: 'node', write: false });
  return import(`data:text/javascript;base64,${Buffer.from(result.outputFiles[0].contents).toString('base64')}`);
}
