import type { ReactNode } from 'react';
import { changeText } from '../../calculator/changes-since.js';
import type { ChangeView } from '../../data/types.js';

/** What versions of a calculation changed, and why. */
export function Changes({ changes }: { readonly changes: readonly ChangeView[] }): ReactNode {
  if (changes.length === 0) return null;
  return (
    <ul>
      {changes.map((change) => (
        <li key={change.version}>{changeText(change)}</li>
      ))}
    </ul>
  );
}
