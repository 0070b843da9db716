import Link from '@docusaurus/Link';
import Layout from '@theme/Layout';
import type { ReactNode } from 'react';
import type { CatalogueEntry } from '../../data/types.js';
import { BySubject, SubjectLinks } from '../parts/CalculationList.js';

/** All worked examples by subject. */
export default function ExampleIndex({ catalogue }: { readonly catalogue: readonly CatalogueEntry[] }): ReactNode {
  return (
    <Layout title="Worked examples" description="One worked example for every calculation">
      <main className="page page--text container">
        <h1>Worked examples</h1>
        <p className="purpose">One sheet for every calculation: given, formula, numbers, result, sources. Made for paper and for citing.</p>
        <p>
          Measurements that others published stand beside the models as <Link to="/validation/measured">measured curves</Link>.
        </p>
        <SubjectLinks entries={catalogue} />
        <BySubject entries={catalogue} base="examples" />
      </main>
    </Layout>
  );
}
