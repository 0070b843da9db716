import Link from '@docusaurus/Link';
import Heading from '@theme/Heading';
import Layout from '@theme/Layout';
import type { ReactNode } from 'react';
import type { ValidationData } from '../../data/types.js';
import { FoldedCases, originNames } from '../parts/CaseList.js';
import { Scroll } from '../parts/Scroll.js';
import { ValidationPages } from '../parts/ValidationPages.js';

function Summary({ validation }: { readonly validation: ValidationData }): ReactNode {
  const total = (key: 'cases' | 'agreeing' | 'disagreeing') => validation.origins.reduce((sum, one) => sum + one[key], 0);
  return (
    <Scroll label="Reference cases by origin">
      <table>
        <caption>Reference cases by where the expected value comes from</caption>
        <thead>
          <tr>
            <th scope="col">Origin</th>
            <th scope="col">Cases</th>
            <th scope="col">Agree</th>
            <th scope="col">Differ, with reason</th>
          </tr>
        </thead>
        <tbody>
          {validation.origins.map((one) => (
            <tr key={one.origin}>
              <th scope="row">{originNames[one.origin] ?? one.origin}</th>
              <td>{one.cases}</td>
              <td>{one.agreeing}</td>
              <td>{one.disagreeing}</td>
            </tr>
          ))}
        </tbody>
        <tfoot>
          <tr>
            <th scope="row">together</th>
            <td>{total('cases')}</td>
            <td>{total('agreeing')}</td>
            <td>{total('disagreeing')}</td>
          </tr>
        </tfoot>
      </table>
    </Scroll>
  );
}

/** Every reference case: what the source says, what we give, the difference, the tolerance. */
export default function ValidationPage({ validation }: { readonly validation: ValidationData }): ReactNode {
  const tested = Object.entries(validation.titles).filter(([id]) => validation.cases.some((view) => view.calculation === id));
  const untested = Object.entries(validation.titles).filter(([id]) => !validation.cases.some((view) => view.calculation === id));
  return (
    <Layout title="Validation" description="Every reference case beside what the calculations give">
      <main className="page page--text container">
        <h1>Validation</h1>
        <p className="purpose">
          What others published, what we give, and how far apart they are. No expected value below comes from our own code. The tolerance is
          half a unit of the last printed digit unless a reason is given.
        </p>
        <ValidationPages />
        <Summary validation={validation} />
        <p>
          A source that says something else than we do is kept and marked as a known disagreement with the reason. “From memory” marks a
          source that was not re-read; “common practice, no source” marks what the trade does and nobody has published.
        </p>
        {tested.map(([id, title]) => (
          <section key={id} aria-labelledby={id}>
            <Heading as="h2" id={id}>
              <Link to={`/calculators/${id}`}>{title}</Link>
            </Heading>
            <FoldedCases cases={validation.cases.filter((view) => view.calculation === id)} />
          </section>
        ))}
        {untested.length === 0 ? null : (
          <section aria-labelledby="without-cases">
            <h2 id="without-cases">Without a reference case of its own</h2>
            <ul>
              {untested.map(([id, title]) => (
                <li key={id}>
                  <Link to={`/calculators/${id}`}>{title}</Link>
                </li>
              ))}
            </ul>
          </section>
        )}
      </main>
    </Layout>
  );
}
