import { createRequire } from 'node:module';
import { dirname, join, relative, sep } from 'node:path';
import type { LoadContext, Plugin } from '@docusaurus/types';
import { jobSteps } from '../../src/data/job.js';
import { type DefinitionModule, type LoadedDefinitions, loadDefinitions } from './load-definitions.js';

const require = createRequire(join(process.cwd(), 'package.json'));

/**
 * One lazy import per definition, so that a page loads the one it needs and no other. By the alias of the site, as what
 * the bundler is given shall not differ with the folder of the build.
 */
function clientModules(modules: readonly DefinitionModule[], siteDir: string): string {
  const lines = modules.map(({ id, file, exportName }) => {
    const path = `@site/${relative(siteDir, file).replaceAll(sep, '/')}`;
    return `  ${JSON.stringify(id)}: () => import(${JSON.stringify(path)}).then((module) => module[${JSON.stringify(exportName)}]),`;
  });
  return `export default {\n${lines.join('\n')}\n};\n`;
}

// The theme gives every page of a site the highlighting of code, for languages to be added. None is: pages with code bring it along.
const withoutHighlighting = { [join(dirname(require.resolve('@docusaurus/theme-classic')), 'prism-include-languages')]: false as const };

/** The steps of the job name calculations by hand; a name that went away must not leave a dead link text. */
function assertJobIsWhole(content: LoadedDefinitions): void {
  const known = new Set(content.catalogue.map((entry) => entry.id));
  for (const id of jobSteps.flatMap((step) => step.calculations)) {
    if (!known.has(id)) throw new Error(`a step of the job names ${id}, which is not published`);
  }
}

/** Makes the calculators, worked examples and the validation pages from the definitions. */
export default function calculationsPlugin(context: LoadContext): Plugin<LoadedDefinitions> {
  const { siteDir, baseUrl, generatedFilesDir } = context;
  const url = (path: string) => `${baseUrl}${path}`;

  return {
    name: 'wallflow-calculations',

    getPathsToWatch: () =>
      ['exhaust', 'workshop', 'calculation', 'units', 'numerics'].map((name) => join(siteDir, '../packages', name, 'src/**/*.ts')),

    loadContent: () => loadDefinitions(siteDir, join(generatedFilesDir, 'definitions.cjs')),

    async contentLoaded({ content, actions }) {
      assertJobIsWhole(content);
      // By an alias: an absolute path would end up in the built site, and make it differ with the folder it was built in.
      const createData = async (name: string, data: string) => {
        await actions.createData(name, data);
        return `@generated/wallflow-calculations/default/${name}`;
      };
      const page = (path: string, component: string, modules: Record<string, string>) =>
        actions.addRoute({ path: url(path), component: `@site/src/components/pages/${component}.tsx`, modules, exact: true });
      const catalogue = await createData('catalogue.json', JSON.stringify(content.catalogue));
      const validation = await createData('validation.json', JSON.stringify(content.validation));
      await createData('definitions.js', clientModules(content.modules, siteDir));
      page('calculators', 'CalculatorIndex', { catalogue });
      page('examples', 'ExampleIndex', { catalogue });
      page('validation', 'ValidationPage', { validation });
      page('job-sheet', 'JobSheetPage', { data: await createData('job-form.json', JSON.stringify(content.job)) });
      for (const subject of content.subjects) {
        const data = await createData(`validation-${subject.subject}.json`, JSON.stringify(subject));
        page(`validation/${subject.subject}`, 'SubjectValidationPage', { data });
      }
      for (const calculation of content.calculations) {
        const data = await createData(`calculation-${calculation.id}.json`, JSON.stringify(calculation));
        page(`calculators/${calculation.id}`, 'CalculatorPage', { data });
        page(`examples/${calculation.id}`, 'ExamplePage', { data });
      }
    },

    configureWebpack: (_config, isServer, { currentBundler }) => ({
      // Names that come from the modules, not numbers that a hash draws: where two files draw one number, their order decides, which
      // hangs on the folder of the build through the runtimes of its workers.
      optimization: { chunkIds: 'named' },
      // The client takes the definitions from their sources: one module each, so that unused ones drop out.
      resolve: { conditionNames: ['@wallflow/source', '...'], alias: withoutHighlighting },
      plugins: [new currentBundler.instance.DefinePlugin({ 'process.env.WALLFLOW_BUILDS_PAGES': JSON.stringify(String(isServer)) })],
      module: {
        rules: [
          {
            test: /\.tsx?$/,
            exclude: /node_modules/,
            resolve: { extensionAlias: { '.js': ['.ts', '.tsx', '.js'] } },
          },
        ],
      },
    }),
  };
}
