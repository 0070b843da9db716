import type { ReactNode } from 'react';
import { goTo } from '../../calculator/go-to.js';
import { readable } from '../../calculator/readable.js';
import type { ResultView } from '../../data/types.js';
import styles from './calculator.module.css';

/** On a narrow screen the answer stays in sight below the inputs; a tap leads to the whole of it. */
export function ResultBar({ result }: { readonly result: ResultView }): ReactNode {
  const first = result.ok ? result.values[0] : undefined;
  const text = result.ok ? (first === undefined ? 'Result' : readable(first.text)) : 'No result yet';
  return (
    <button type="button" className={styles.bar} onClick={() => goTo('result-panel')}>
      <span>
        {first === undefined ? '' : `${first.label}: `}
        <strong>{text}</strong>
      </span>
      <span aria-hidden="true">↓</span>
    </button>
  );
}
