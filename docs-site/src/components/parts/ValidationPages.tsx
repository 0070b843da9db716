import Link from '@docusaurus/Link';
import type { ReactNode } from 'react';
import { validationPages } from '../../data/validation-pages.js';
import styles from './list.module.css';

/** Links to the pages of the validation that belong to no single calculation. */
export function ValidationPages(): ReactNode {
  return (
    <nav aria-label="More validation">
      <ul className={styles.entries}>
        {validationPages.map(({ path, title, summary }) => (
          <li key={path}>
            <Link to={path}>{title}</Link>
            <span>{summary}</span>
          </li>
        ))}
      </ul>
    </nav>
  );
}
