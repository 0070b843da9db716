import Link from '@docusaurus/Link';
import Heading from '@theme/Heading';
import type { ReactNode } from 'react';
import { subjects } from '../../data/subjects.js';
import type { CatalogueEntry } from '../../data/types.js';
import styles from './list.module.css';

interface EntriesProps {
  readonly entries: readonly CatalogueEntry[];
  readonly base: 'calculators' | 'examples';
}

/** Calculations as a list of links with the question that each answers. */
export function Entries({ entries, base }: EntriesProps): ReactNode {
  return (
    <ul className={styles.entries}>
      {entries.map((entry) => (
        <li key={entry.id}>
          <Link to={`/${base}/${entry.id}`}>{entry.title}</Link>
          <span>{entry.purpose}</span>
        </li>
      ))}
    </ul>
  );
}

/** Links to the subjects that have entries, for a long list on a small screen. */
export function SubjectLinks({ entries }: Pick<EntriesProps, 'entries'>): ReactNode {
  const present = subjects.filter((subject) => entries.some((entry) => entry.subject === subject.id));
  return (
    <nav className={styles.jump} aria-label="Subjects">
      {present.map((subject) => (
        <a key={subject.id} href={`#${subject.id}`}>
          {subject.title}
        </a>
      ))}
    </nav>
  );
}

/** All calculations by subject. */
export function BySubject({ entries, base }: EntriesProps): ReactNode {
  return subjects.map((subject) => {
    const own = entries.filter((entry) => entry.subject === subject.id);
    if (own.length === 0) return null;
    return (
      <section key={subject.id} aria-labelledby={subject.id} className={styles.subject}>
        <Heading as="h2" id={subject.id}>
          {subject.title}
        </Heading>
        <p>
          {subject.summary} <Link to={`/guide/${subject.id}`}>Guide</Link>
        </p>
        <Entries entries={own} base={base} />
      </section>
    );
  });
}
