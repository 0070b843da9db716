import { join } from 'node:path';
import type { LoadContext, Plugin } from '@docusaurus/types';
import type { Evidence } from '../../src/data/evidence.js';
import { loadEvidence } from './load-evidence.js';

/** Pages of the validation that belong to no single calculation: measured curves, misprints, units, numerics, estimate. */
export default function validationPlugin({ siteDir, baseUrl, generatedFilesDir }: LoadContext): Plugin<Evidence> {
  return {
    name: 'wallflow-validation',

    getPathsToWatch: () => [join(siteDir, '../tests/{reference,support}/**/*.{ts,json}'), join(siteDir, '../tests/evaluation/rows.jsonl')],

    loadContent: () => loadEvidence(siteDir, join(generatedFilesDir, 'evidence.cjs')),

    async contentLoaded({ content, actions }) {
      const page = async (path: string, component: string, data: unknown) => {
        await actions.createData(`${path}.json`, JSON.stringify(data));
        actions.addRoute({
          path: `${baseUrl}validation/${path}`,
          component: `@site/src/components/pages/${component}.tsx`,
          // By an alias: an absolute path would end up in the built site.
          modules: { evidence: `@generated/wallflow-validation/default/${path}.json` },
          exact: true,
        });
      };
      await page('measured', 'MeasuredPage', content.measured);
      await page('misprints', 'MisprintsPage', { misprints: content.misprints, disagreements: content.disagreements });
      await page('units', 'UnitChecksPage', content.units);
      await page('numerics', 'NumericsChecksPage', content.numerics);
      await page('estimate', 'EstimatePage', content.estimate);
    },
  };
}
