import Link from '@docusaurus/Link';
import Layout from '@theme/Layout';
import { type ReactNode, useEffect } from 'react';
import { subjectTitle } from '../../data/subjects.js';
import type { CalculationData } from '../../data/types.js';
import { Background } from '../parts/Background.js';
import { Cautions } from '../parts/Cautions.js';
import { FormulaProvider, usePrepareFormulas } from '../parts/Formula.js';
import { Given } from '../parts/Given.js';
import { OutputTable } from '../parts/OutputTable.js';
import { PrintButton } from '../parts/PrintButton.js';
import { PrintedFrom } from '../parts/PrintedFrom.js';
import { AdviceList, Results, Warnings } from '../parts/Results.js';
import { Working } from '../parts/Working.js';

function ownAddress(): string {
  return `${window.location.origin}${window.location.pathname}`;
}

/** A page that was reached from another one of the site has no formulas in it yet, unlike one that was loaded as it was built. */
function FormulasIfMissing(): ReactNode {
  const prepare = usePrepareFormulas();
  useEffect(() => {
    if (document.querySelector('main .formula:empty') !== null) void prepare();
  }, [prepare]);
  return null;
}

/** The worked example of one definition: complete without scripts, and made for paper. */
export default function ExamplePage({ data }: { readonly data: CalculationData }): ReactNode {
  const { example } = data;
  return (
    <Layout title={`Worked example: ${data.title}`} description={data.purpose}>
      <main className="page page--text container">
        <nav className="crumbs" aria-label="Where you are">
          <Link to="/examples">Worked examples</Link> <span aria-hidden="true">/</span> {subjectTitle(data.subject)}
        </nav>
        <h1>{data.title}</h1>
        <p className="purpose">{data.purpose}</p>
        <p className="screen-only">
          <Link className="action" to={`/calculators/${data.id}`}>
            Calculate with your own numbers
          </Link>{' '}
          <PrintButton />
        </p>
        <FormulaProvider formulas={data.formulas}>
          <Cautions cautions={data.cautions} />
          <section aria-labelledby="given">
            <h2 id="given">Given</h2>
            <Given fields={data.inputs} values={data.exampleValues} />
          </section>
          <section aria-labelledby="working">
            <h2 id="working">Working</h2>
            <p>Method: {example.method}. Numbers in the formulas stand in SI base units.</p>
            <FormulasIfMissing />
            <Working steps={example.steps} />
          </section>
          <section aria-labelledby="result">
            <h2 id="result">Result</h2>
            <Results values={example.values} drawing={example.drawing} />
            <Warnings warnings={example.warnings} />
            <AdviceList advice={example.advice} />
            {example.tables.map((table) => (
              <OutputTable key={table.key} table={table} />
            ))}
          </section>
          <Background data={data} assumptions={example.assumptions} />
        </FormulaProvider>
        <PrintedFrom title={data.title} id={data.id} version={data.version} address={ownAddress} />
        <p className="colophon">
          {data.title}, definition {data.id} version {data.version}. Made from the published definition; the numbers come from the same code
          as the calculator.
        </p>
      </main>
    </Layout>
  );
}
