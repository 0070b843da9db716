import Link from '@docusaurus/Link';
import Heading from '@theme/Heading';
import type { ReactNode } from 'react';
import type { DisagreementView, MisprintView } from '../../data/evidence.js';
import { subjectTitle } from '../../data/subjects.js';
import { EvidencePage } from '../parts/EvidencePage.js';
import styles from '../parts/evidence.module.css';
import { Mark } from '../parts/Mark.js';

interface MisprintsPageProps {
  readonly evidence: { readonly misprints: readonly MisprintView[]; readonly disagreements: readonly DisagreementView[] };
}

function Misprint({ entry }: { readonly entry: MisprintView }): ReactNode {
  return (
    <article className={styles.misprint}>
      <p>
        {entry.source} <Mark mark={entry.mark} />
      </p>
      <dl>
        <dt>Printed</dt>
        <dd>{entry.printed}</dd>
        <dt>Used</dt>
        <dd>{entry.used}</dd>
        <dt>Because</dt>
        <dd>{entry.reason}</dd>
        {entry.calculations.length === 0 ? null : (
          <>
            <dt>Concerns</dt>
            <dd>
              {entry.calculations.map(({ id, title }, index) => (
                <span key={id}>
                  {index === 0 ? '' : ', '}
                  <Link to={`/calculators/${id}`}>{title}</Link>
                </span>
              ))}
            </dd>
          </>
        )}
      </dl>
    </article>
  );
}

function Disagreement({ entry }: { readonly entry: DisagreementView }): ReactNode {
  return (
    <article className={styles.misprint}>
      <h3>{entry.title}</h3>
      <p>
        {entry.source} <Mark mark={entry.mark} />
      </p>
      <dl>
        {entry.values.map(({ label, expected, ours }) => [
          <dt key={`${label} source`}>{label}</dt>,
          <dd key={`${label} values`}>
            {expected} in the source, {ours} here
          </dd>,
        ])}
        <dt>Because</dt>
        <dd>{entry.reason}</dd>
        {entry.calculation === undefined ? null : (
          <>
            <dt>Concerns</dt>
            <dd>
              <Link to={`/calculators/${entry.calculation.id}`}>{entry.calculation.title}</Link>
            </dd>
          </>
        )}
      </dl>
    </article>
  );
}

/** What sources print and is not used as printed, and where we knowingly give something else. */
export default function MisprintsPage({ evidence }: MisprintsPageProps): ReactNode {
  const subjects = [...new Set(evidence.misprints.map(({ subject }) => subject))];
  return (
    <EvidencePage
      title="Misprints and known disagreements"
      purpose="What a source prints, what is used instead, and the reason; also what is right but easily misread."
    >
      {subjects.map((subject) => (
        <section key={subject} aria-labelledby={`misprints-${subject}`}>
          <Heading as="h2" id={`misprints-${subject}`}>
            {subjectTitle(subject)}
          </Heading>
          {evidence.misprints
            .filter((entry) => entry.subject === subject)
            .map((entry) => (
              <Misprint key={`${entry.source} ${entry.printed}`} entry={entry} />
            ))}
        </section>
      ))}
      <section aria-labelledby="known-disagreements">
        <Heading as="h2" id="known-disagreements">
          Reference cases that do not agree
        </Heading>
        <p>The source stands as it is printed. These cases must keep differing: if one agreed, its reason would no longer hold.</p>
        {evidence.disagreements.map((entry) => (
          <Disagreement key={`${entry.title} ${entry.reason}`} entry={entry} />
        ))}
      </section>
    </EvidencePage>
  );
}
