import { readFile } from 'node:fs/promises';
import { pathToFileURL } from 'node:url';
import type { Plugin } from 'esbuild';

/** Readers of reference data look for it beside themselves, also from inside a bundle. */
export const ownUrls: Plugin = {
  name: 'own-urls',
  setup(build) {
    build.onLoad({ filter: /[\\/]tests[\\/].*\.ts$/ }, async ({ path }) => {
      const text = await readFile(path, 'utf8');
      return { contents: text.replaceAll('import.meta.url', JSON.stringify(pathToFileURL(path).href)), loader: 'ts' };
    });
  },
};
