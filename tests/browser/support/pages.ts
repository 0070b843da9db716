import { readdirSync } from 'node:fs';
import { fileURLToPath } from 'node:url';

const build = fileURLToPath(new URL('../../../docs-site/build/', import.meta.url));

/** Paths of the pages in one folder of the built site, such as `/calculators/gas-density`. */
export function pagesOf(folder: string): string[] {
  return readdirSync(`${build}${folder}`, { withFileTypes: true })
    .filter((entry) => entry.isDirectory())
    .map(({ name }) => `/${folder}/${name}`)
    .sort();
}
