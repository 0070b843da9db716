import type { ReactNode } from 'react';
import styles from './notices.module.css';

/** How far a source was checked: what was only remembered, or is only habit, says so. */
export function Mark({ mark }: { readonly mark: string }): ReactNode {
  return <span className={mark === 'read' ? styles.markRead : styles.mark}>{mark === 'read' ? 'source read' : mark}</span>;
}
