import type { ReactNode } from 'react';
import styles from './notices.module.css';

/** What can hurt, at the place where the work is planned. */
export function Cautions({ cautions }: { readonly cautions: readonly string[] }): ReactNode {
  if (cautions.length === 0) return null;
  return (
    <aside className={styles.cautions} aria-labelledby="cautions">
      <h2 id="cautions" className={styles.cautionsTitle}>
        <svg aria-hidden="true" viewBox="0 0 24 22" width="24" height="22">
          <path d="M12 1 23 21H1Z" fill="none" stroke="currentColor" strokeWidth="2" strokeLinejoin="round" />
          <path d="M12 8v6m0 2.5v1.5" stroke="currentColor" strokeWidth="2" strokeLinecap="round" />
        </svg>
        Before you work
      </h2>
      <ul>
        {cautions.map((caution) => (
          <li key={caution}>{caution}</li>
        ))}
      </ul>
    </aside>
  );
}
