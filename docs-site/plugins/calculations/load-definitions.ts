import { readdirSync } from 'node:fs';
import { createRequire } from 'node:module';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import type { AnyCalculation } from '@wallflow/calculation';
import { build } from 'esbuild';
import type { SiteData } from './site-data.js';

/** Where the client finds a definition: its module and the name it is exported by. */
export interface DefinitionModule {
  readonly id: string;
  readonly file: string;
  readonly exportName: string;
}

export interface LoadedDefinitions extends SiteData {
  readonly modules: readonly DefinitionModule[];
}

interface Bundle {
  readonly published: readonly AnyCalculation[];
  readonly modules: readonly { readonly file: string; readonly exports: Readonly<Record<string, unknown>> }[];
  siteData(published: readonly AnyCalculation[]): SiteData;
}

function definitionFiles(repository: string): string[] {
  return ['exhaust', 'workshop'].flatMap((name) => {
    const folder = join(repository, 'packages', name, 'src');
    return readdirSync(folder, { recursive: true, encoding: 'utf8' })
      .filter((file) => file.endsWith('definition.ts'))
      .sort()
      .map((file) => join(folder, file));
  });
}

function entryText(siteDir: string, files: readonly string[]): string {
  const text = JSON.stringify;
  return [
    `import { calculations as exhaust } from '@wallflow/exhaust/calculations';`,
    `import { calculations as workshop } from '@wallflow/workshop';`,
    ...files.map((file, index) => `import * as module${index} from ${text(file)};`),
    `export { siteData } from ${text(join(siteDir, 'plugins/calculations/site-data.ts'))};`,
    'export const published = [...exhaust, ...workshop];',
    `export const modules = [${files.map((file, index) => `{ file: ${text(file)}, exports: module${index} }`).join(', ')}];`,
  ].join('\n');
}

/**
 * Bundle the definitions from their sources together with the code that turns them into data, and run it.
 * One bundle means one copy of every package, so that a definition on the site is the very object that is
 * published, and no old build can slip in.
 */
export async function loadDefinitions(siteDir: string, outFile: string): Promise<LoadedDefinitions> {
  const repository = join(siteDir, '..');
  await build({
    stdin: { contents: entryText(siteDir, definitionFiles(repository)), resolveDir: siteDir, loader: 'ts' },
    outfile: outFile,
    bundle: true,
    platform: 'node',
    format: 'cjs',
    target: 'node20',
    conditions: ['@wallflow/source'],
    // The reader of the reference cases looks for them beside itself.
    define: { 'import.meta.url': JSON.stringify(pathToFileURL(join(repository, 'tests/support/reference-case.ts')).href) },
    logLevel: 'error',
  });
  const require = createRequire(outFile);
  delete require.cache[outFile];
  const bundle = require(outFile) as Bundle;
  return { ...bundle.siteData(bundle.published), modules: bundle.published.map((calculation) => moduleOf(calculation, bundle.modules)) };
}

function moduleOf(calculation: AnyCalculation, modules: Bundle['modules']): DefinitionModule {
  for (const { file, exports } of modules) {
    for (const [exportName, value] of Object.entries(exports)) {
      if (value === calculation) return { id: calculation.id, file, exportName };
    }
  }
  throw new Error(`${calculation.id} is published, but no definition.ts exports it`);
}
