import { type ReactNode, useEffect, useState } from 'react';
import { canKeep, keep, sizeOfAll, wanted } from '../../offline/keep.js';
import styles from './notices.module.css';

type State = 'unknown' | 'impossible' | 'visited' | 'working' | 'everything' | 'failed';

const words: Readonly<Record<State, string>> = {
  unknown: 'Pages you have opened stay readable without signal.',
  impossible: 'This browser cannot keep pages for use without signal.',
  visited: 'Pages you have opened stay readable without signal. Keep everything before you go where there is none.',
  working: 'Storing the calculators, examples and guide on this device…',
  everything: 'Everything but the reference for developers is on this device and works without signal.',
  failed: 'Not everything could be stored: there may be no signal or too little room. What was kept before still works.',
};

function megabytes(bytes: number): string {
  return `${Math.ceil(bytes / 1_000_000)} MB`;
}

/** Lets a visitor store the whole site on the device, with its size said first, and take it off again. */
export function KeepPanel(): ReactNode {
  const [state, setState] = useState<State>('unknown');
  const [bytes, setBytes] = useState<number>();
  useEffect(() => {
    const kept = wanted();
    setState(!canKeep() || kept === 'nothing' ? 'impossible' : kept);
    void sizeOfAll().then(setBytes);
  }, []);
  const change = (kept: 'everything' | 'visited') => {
    setState('working');
    keep(kept)
      .then(() => setState(kept))
      .catch(() => setState('failed'));
  };
  const size = bytes === undefined ? undefined : megabytes(bytes);
  return (
    <div className={styles.keep}>
      <p role="status">{words[state]}</p>
      {state === 'visited' || state === 'failed' ? (
        <>
          {size === undefined ? null : (
            <p>
              It loads {size} and takes that much room on the device. Do it on a connection where that costs nothing. What is kept can be
              taken off again here.
            </p>
          )}
          <button type="button" onClick={() => change('everything')}>
            Keep everything on this device{size === undefined ? '' : ` (${size})`}
          </button>
        </>
      ) : null}
      {state === 'everything' ? (
        <button type="button" onClick={() => change('visited')}>
          Keep only visited pages
        </button>
      ) : null}
    </div>
  );
}
