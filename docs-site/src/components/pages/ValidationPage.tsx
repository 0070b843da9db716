import Link from '@docusaurus/Link';
import Layout from '@theme/Layout';
import type { ReactNode } from 'react';
import { type SubjectText, subjects } from '../../data/subjects.js';
import type { ValidationData } from '../../data/types.js';
import { originNames } from '../parts/CaseList.js';
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

function SubjectTable({ subject, validation }: { readonly subject: SubjectText; readonly validation: ValidationData }): ReactNode {
  const own = validation.calculations.filter((calculation) => calculation.subject === subject.id);
  if (own.length === 0) return null;
  return (
    <section aria-labelledby={subject.id}>
      <h2 id={subject.id}>
        <Link to={`/validation/${subject.id}`}>{subject.title}: all cases</Link>
      </h2>
      <Scroll label={`Cases of ${subject.title}`}>
        <table>
          <thead>
            <tr>
              <th scope="col">Calculation</th>
              <th scope="col">Cases</th>
              <th scope="col">Agree</th>
              <th scope="col">Differ, with reason</th>
            </tr>
          </thead>
          <tbody>
            {own.map((calculation) => (
              <tr key={calculation.id}>
                <th scope="row">
                  <Link to={`/validation/${subject.id}#${calculation.id}`}>{calculation.title}</Link>
                </th>
                <td>{calculation.cases === 0 ? 'none' : calculation.cases}</td>
                <td>{calculation.agreeing}</td>
                <td>{calculation.disagreeing}</td>
              </tr>
            ))}
          </tbody>
        </table>
      </Scroll>
    </section>
  );
}

/** The overview of all reference cases: where they come from, and how many there are for what. */
export default function ValidationPage({ validation }: { readonly validation: ValidationData }): ReactNode {
  return (
    <Layout title="Validation" description="Every reference case beside what the calculations give">
      <main className="page page--text container">
        <h1>Validation</h1>
        <p className="purpose">
          What others published, what we give, and how far apart they are. No expected value comes from our own code. The tolerance is half
          a unit of the last printed digit unless a reason is given.
        </p>
        <ValidationPages />
        <Summary validation={validation} />
        <p>
          A source that says something else than we do is kept and marked as a known disagreement with the reason. “From memory” marks a
          source that was not re-read; “common practice, no source” marks what the trade does and nobody has published.
        </p>
        {subjects.map((subject) => (
          <SubjectTable key={subject.id} subject={subject} validation={validation} />
        ))}
      </main>
    </Layout>
  );
}
