import { cpSync, mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { dirname, join } from 'node:path';
import type { LoadContext, Plugin } from '@docusaurus/types';

/** Folder of static files that this plugin fills; the configuration names it among the static directories. */
export const formulaStatics = '.docusaurus/formula-statics';

const require = createRequire(join(process.cwd(), 'package.json'));

/** Every browser that can use the site takes woff2; the other formats would only be copied about. */
function withWoff2Only(css: string): string {
  return css.replaceAll(/,url\([^)]+\.(?:woff|ttf)\) format\("(?:woff|truetype)"\)/g, '');
}

/**
 * The style sheet of the formulas as files of its own. Through the bundler its small fonts would be written into the
 * style sheet of every page, three formats of each. The renderer lies beside it, for a page to load when a working is opened.
 */
export default function formulaStylesPlugin({ siteDir, baseUrl }: LoadContext): Plugin<void> {
  return {
    name: 'wallflow-formula-styles',

    async loadContent() {
      const source = dirname(require.resolve('katex/dist/katex.min.css'));
      const target = join(siteDir, formulaStatics, 'formulas');
      mkdirSync(join(target, 'fonts'), { recursive: true });
      writeFileSync(join(target, 'katex.css'), withWoff2Only(readFileSync(join(source, 'katex.min.css'), 'utf8')));
      cpSync(join(source, 'katex.min.js'), join(target, 'katex.js'));
      cpSync(join(source, 'fonts'), join(target, 'fonts'), {
        recursive: true,
        filter: (path) => !/\.(?:woff|ttf)$/.test(path),
      });
    },

    injectHtmlTags: () => ({
      headTags: [{ tagName: 'link', attributes: { rel: 'stylesheet', href: `${baseUrl}formulas/katex.css` } }],
    }),
  };
}
