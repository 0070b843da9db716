import Link from '@docusaurus/Link';
import Layout from '@theme/Layout';
import type { ReactNode } from 'react';
import { PrintButton } from './PrintButton.js';

interface EvidencePageProps {
  readonly title: string;
  /** What the page shows, in a sentence or two. */
  readonly purpose: string;
  readonly children: ReactNode;
}

/** The frame of a page below the validation page. */
export function EvidencePage({ title, purpose, children }: EvidencePageProps): ReactNode {
  return (
    <Layout title={title} description={purpose}>
      <main className="page page--text container">
        <nav className="crumbs" aria-label="Where you are">
          <Link to="/validation">Validation</Link> <span aria-hidden="true">/</span> {title}
        </nav>
        <h1>{title}</h1>
        <p className="purpose">{purpose}</p>
        <p className="screen-only">
          <PrintButton />
        </p>
        {children}
      </main>
    </Layout>
  );
}
