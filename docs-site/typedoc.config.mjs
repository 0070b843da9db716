import { readdirSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';

const packages = new URL('../packages/', import.meta.url);

/** Every entry that a package publishes, by the source it is built from. */
function entriesOf(name) {
  const { exports } = JSON.parse(readFileSync(new URL(`${name}/package.json`, packages), 'utf8'));
  return Object.values(exports).flatMap((target) => {
    const source = target['@wallflow/source'];
    return source === undefined ? [] : [fileURLToPath(new URL(`${name}/${source}`, packages))];
  });
}

/** @type {Partial<import('typedoc').TypeDocOptions & import('typedoc-plugin-markdown').PluginOptions>} */
export default {
  name: 'Reference',
  entryPoints: readdirSync(packages).sort().flatMap(entriesOf),
  tsconfig: 'tsconfig.reference.json',
  out: 'docs/api',
  plugin: ['./typedoc-module-names.mjs', 'typedoc-plugin-markdown'],
  // The check of types is one of its own. A link that leads nowhere would be hidden in the page: here it fails.
  skipErrorChecking: true,
  treatWarningsAsErrors: true,
  validation: { invalidLink: true, invalidPath: true, notExported: true },
  readme: 'none',
  disableSources: true,
  excludePrivate: true,
  excludeInternal: true,
  githubPages: false,
  outputFileStrategy: 'modules',
  useHTMLAnchors: true,
  useHTMLEncodedBrackets: true,
  sanitizeComments: true,
  hideBreadcrumbs: true,
  hidePageHeader: true,
  entryFileName: 'index',
};
