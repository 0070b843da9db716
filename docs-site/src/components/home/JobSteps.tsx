import Link from '@docusaurus/Link';
import type { ReactNode } from 'react';
import { jobSteps } from '../../data/job.js';
import type { CatalogueEntry } from '../../data/types.js';
import styles from './home.module.css';

/** The questions of the job in order, each with its calculators. */
export function JobSteps({ catalogue }: { readonly catalogue: readonly CatalogueEntry[] }): ReactNode {
  return (
    <ol className={styles.steps}>
      {jobSteps.map((step) => (
        <li key={step.question}>
          <h3>{step.question}</h3>
          <p>{step.text}</p>
          <ul className={styles.tools}>
            {step.calculations.map((id) => (
              <li key={id}>
                <Link to={`/calculators/${id}`}>{catalogue.find((entry) => entry.id === id)?.title ?? id}</Link>
              </li>
            ))}
          </ul>
        </li>
      ))}
    </ol>
  );
}
