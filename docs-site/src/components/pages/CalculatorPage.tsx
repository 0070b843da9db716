import Head from '@docusaurus/Head';
import Link from '@docusaurus/Link';
import Layout from '@theme/Layout';
import type { ReactNode } from 'react';
import { subjectTitle } from '../../data/subjects.js';
import type { CalculationData } from '../../data/types.js';
import { Calculator } from '../calculator/Calculator.js';
import { Background } from '../parts/Background.js';
import { FormulaProvider } from '../parts/Formula.js';

/** The calculator of one definition with what stands behind it. */
export default function CalculatorPage({ data }: { readonly data: CalculationData }): ReactNode {
  return (
    <Layout title={data.title} description={data.purpose}>
      <Head>
        <meta name="keywords" content={data.keywords.join(', ')} />
      </Head>
      <main className="page container">
        <nav className="crumbs" aria-label="Where you are">
          <Link to="/calculators">Calculators</Link> <span aria-hidden="true">/</span>{' '}
          <Link to={`/calculators#${data.subject}`}>{subjectTitle(data.subject)}</Link>
        </nav>
        <h1>{data.title}</h1>
        <p className="purpose">{data.purpose}</p>
        <Calculator key={data.id} data={data} />
        <FormulaProvider formulas={data.formulas}>
          <Background data={data} assumptions={data.assumptions} folded />
        </FormulaProvider>
        <p className="foot-links screen-only">
          <Link to={`/examples/${data.id}`}>Worked example as a sheet to print</Link>
          <Link to={`/guide/${data.subject}`}>Guide: {subjectTitle(data.subject)}</Link>
        </p>
        {data.keywords.length === 0 ? null : <p className="also screen-only">Also looked for as: {data.keywords.join(', ')}.</p>}
      </main>
    </Layout>
  );
}
