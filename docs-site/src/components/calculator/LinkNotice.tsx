import type { ReactNode } from 'react';
import { changesSince } from '../../calculator/changes-since.js';
import type { Permalink } from '../../calculator/permalink.js';
import type { ChangeView, SuccessView } from '../../data/types.js';
import { Changes } from '../parts/Changes.js';
import styles from './calculator.module.css';

interface LinkNoticeProps {
  readonly opened: Permalink | undefined;
  readonly tooLong: boolean;
  readonly version: string;
  readonly history: readonly ChangeView[];
  readonly result: SuccessView | undefined;
}

/** Said when a link was made with another version of the calculation, or holds what today's does not ask for. */
export function LinkNotice({ opened, tooLong, version, history, result }: LinkNoticeProps): ReactNode {
  if (tooLong) {
    return (
      <aside className={styles.notice} aria-label="About this link">
        <p>This link is too long to be read. The form is empty.</p>
      </aside>
    );
  }
  if (opened === undefined) return null;
  const older = opened.version !== undefined && opened.version !== version;
  if (!older && opened.unread.length === 0) return null;
  const stated = older ? Object.entries(opened.stated) : [];
  return (
    <aside className={styles.notice} aria-label="About this link">
      {older ? (
        <p>
          This link was made with version {opened.version} of this calculation. Its inputs are below; the result shown is that of today's
          version {version} and may differ.
        </p>
      ) : null}
      {opened.version === undefined ? null : <Changes changes={changesSince(history, opened.version)} />}
      {opened.unread.length === 0 ? null : (
        <>
          <p>Not taken over, because this calculation does not ask for it by this name today. Enter it below:</p>
          <ul>
            {opened.unread.map((text) => (
              <li key={text}>
                <code>{text}</code>
              </li>
            ))}
          </ul>
        </>
      )}
      {stated.length === 0 ? null : (
        <ul>
          {stated.map(([key, text]) => {
            const today = result?.values.find((value) => value.key === key);
            return (
              <li key={key}>
                {today?.label ?? 'Another result'}: the link states {text}
                {today === undefined ? '' : `, today's version gives ${today.text}`}
              </li>
            );
          })}
        </ul>
      )}
    </aside>
  );
}
