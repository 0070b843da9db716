import { type ReactNode, useState } from 'react';
import { usePrepareFormulas } from '../parts/Formula.js';
import styles from './calculator.module.css';

interface ToolbarProps {
  citation(): string;
  readonly ready: boolean;
}

/** Link and print. The link is shown as well, for where the clipboard is closed to pages. */
export function Toolbar({ citation, ready }: ToolbarProps): ReactNode {
  // The formulas of a working that nobody has opened yet are wanted on paper too.
  const prepare = usePrepareFormulas();
  const [link, setLink] = useState('');
  const [copied, setCopied] = useState(false);
  const copy = async () => {
    const text = citation();
    setLink(text);
    try {
      await navigator.clipboard.writeText(text);
      setCopied(true);
    } catch {
      setCopied(false);
    }
  };
  return (
    <div className={`${styles.toolbar} screen-only`}>
      <button type="button" onClick={() => void copy()} disabled={!ready}>
        Copy link
      </button>
      <button type="button" onClick={() => void prepare().then(() => requestAnimationFrame(() => window.print()))}>
        Print
      </button>
      {link === '' ? null : (
        <label className={styles.link}>
          <span role="status">{copied ? 'Link copied: inputs, units, version and results' : 'Copy this link'}</span>
          <input type="text" readOnly value={link} onFocus={(event) => event.target.select()} />
        </label>
      )}
    </div>
  );
}
