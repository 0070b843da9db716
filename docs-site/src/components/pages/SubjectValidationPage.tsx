import Link from '@docusaurus/Link';
import Heading from '@theme/Heading';
import Layout from '@theme/Layout';
import type { ReactNode } from 'react';
import { subjectTitle } from '../../data/subjects.js';
import type { SubjectValidationData } from '../../data/types.js';
import { FoldedCases } from '../parts/CaseList.js';

/** Every reference case of one subject: what the source says, what we give, the difference, the tolerance. */
export default function SubjectValidationPage({ data }: { readonly data: SubjectValidationData }): ReactNode {
  const title = `Reference cases: ${subjectTitle(data.subject)}`;
  return (
    <Layout title={title} description="What the sources say, what we give, the difference and the tolerance">
      <main className="page page--text container">
        <nav className="crumbs" aria-label="Where you are">
          <Link to="/validation">Validation</Link> <span aria-hidden="true">/</span> {subjectTitle(data.subject)}
        </nav>
        <h1>{title}</h1>
        {data.calculations.map(({ id, title: name, cases }) => (
          <section key={id} aria-labelledby={id}>
            <Heading as="h2" id={id}>
              <Link to={`/calculators/${id}`}>{name}</Link>
            </Heading>
            {cases.length === 0 ? <p>No reference case of its own yet.</p> : <FoldedCases cases={cases} />}
          </section>
        ))}
      </main>
    </Layout>
  );
}
