import { createRequire } from 'node:module';
import { join } from 'node:path';
import { build } from 'esbuild';
import type { Evidence } from '../../src/data/evidence.js';
import { ownUrls } from './own-urls.js';

/** Bundle the reference data, the code that compares it and the packages from their sources, and run the comparison. */
export async function loadEvidence(siteDir: string, outFile: string): Promise<Evidence> {
  await build({
    entryPoints: [join(siteDir, 'plugins/validation/evidence.ts')],
    outfile: outFile,
    bundle: true,
    platform: 'node',
    format: 'cjs',
    target: 'node20',
    conditions: ['@wallflow/source'],
    plugins: [ownUrls],
    logLevel: 'error',
  });
  const require = createRequire(outFile);
  delete require.cache[outFile];
  const bundle = require(outFile) as { evidence(): Evidence };
  return bundle.evidence();
}
