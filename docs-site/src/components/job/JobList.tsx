import { type ReactNode, useState } from 'react';
import type { Jobs } from '../../job/use-jobs.js';
import styles from './job.module.css';

function day(changed: number): string {
  return new Date(changed).toLocaleString(undefined, { dateStyle: 'medium', timeStyle: 'short' });
}

/** The jobs that this device keeps: one tap brings one into the form, two delete it. */
export function JobList({ jobs }: { readonly jobs: Jobs }): ReactNode {
  const [asked, setAsked] = useState<string>();
  const others = jobs.listed.filter(({ id }) => id !== jobs.id);
  if (others.length === 0) return null;
  return (
    <details className={`${styles.jobs} screen-only`}>
      <summary>Other jobs on this device: {others.length}</summary>
      <ul>
        {others.map(({ id, name, changed }) => (
          <li key={id}>
            <button type="button" onClick={() => void jobs.switchTo(id)}>
              {name}
            </button>
            <span>changed {day(changed)}</span>
            {asked === id ? (
              <>
                <button
                  type="button"
                  onClick={() => {
                    setAsked(undefined);
                    jobs.remove(id);
                  }}
                >
                  Yes, delete it for good
                </button>
                <button type="button" onClick={() => setAsked(undefined)}>
                  Keep it
                </button>
              </>
            ) : (
              <button type="button" aria-label={`Delete ${name}`} onClick={() => setAsked(id)}>
                Delete
              </button>
            )}
          </li>
        ))}
      </ul>
    </details>
  );
}
