import type { ReactNode } from 'react';
import type { SourceView } from '../../data/types.js';
import { Mark } from './Mark.js';

/** Where the formulas come from, with how far each source was checked. */
export function Sources({ sources }: { readonly sources: readonly SourceView[] }): ReactNode {
  return (
    <ul>
      {sources.map((source) => (
        <li key={source.text}>
          {withoutMark(source)} <Mark mark={source.mark} />
          {source.note === undefined ? null : <> {source.note}</>}
        </li>
      ))}
    </ul>
  );
}

/** The citation ends with its mark in brackets; here the mark stands beside it. */
function withoutMark(source: SourceView): string {
  return source.text.replace(` (${source.mark})`, '');
}
