import type { ReactNode } from 'react';
import styles from './notices.module.css';

function Sign(): ReactNode {
  return (
    <svg aria-hidden="true" viewBox="0 0 24 22" width="24" height="22">
      <path d="M12 1 23 21H1Z" fill="none" stroke="currentColor" strokeWidth="2" strokeLinejoin="round" />
      <path d="M12 8v6m0 2.5v1.5" stroke="currentColor" strokeWidth="2" strokeLinecap="round" />
    </svg>
  );
}

interface CautionsProps {
  readonly cautions: readonly string[];
  /** One line that opens, above a form; otherwise in full. */
  readonly folded?: boolean;
}

/** What can hurt, at the place where the work is planned. */
export function Cautions({ cautions, folded = false }: CautionsProps): ReactNode {
  const [first] = cautions;
  if (first === undefined) return null;
  const list = (
    <ul>
      {cautions.map((caution) => (
        <li key={caution}>{caution}</li>
      ))}
    </ul>
  );
  if (folded) {
    return (
      <aside aria-label="Before you work">
        <details className={styles.folded}>
          <summary>
            <Sign />
            <strong>Before you work</strong>
            <span className={styles.firstOf}>{first}</span>
          </summary>
          {list}
        </details>
      </aside>
    );
  }
  return (
    <aside className={styles.cautions} aria-labelledby="cautions">
      <h2 id="cautions" className={styles.cautionsTitle}>
        <Sign />
        Before you work
      </h2>
      {list}
    </aside>
  );
}
