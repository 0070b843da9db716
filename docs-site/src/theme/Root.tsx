import { type ReactNode, useEffect, useState } from 'react';
import styles from '../components/parts/notices.module.css';
import { applyUpdate, onUpdate } from '../offline/keep.js';

/** Around every page: says when a newer version of a stored site is ready. Nothing changes until the visitor says so. */
export default function Root({ children }: { readonly children: ReactNode }): ReactNode {
  const [newer, setNewer] = useState(false);
  useEffect(() => onUpdate(() => setNewer(true)), []);
  return (
    <>
      {children}
      {newer ? (
        <div className={styles.update} role="status">
          <span>A newer version of this site has been stored. What is typed is in the address and stays.</span>
          <button type="button" onClick={applyUpdate}>
            Use it now
          </button>
          <button type="button" onClick={() => setNewer(false)}>
            Later
          </button>
        </div>
      ) : null}
    </>
  );
}
