import { say, spoken } from './words/say.js';

/** How far a statement was checked before it was relied on. */
export type SourceMark = 'read' | 'second-hand' | 'from memory' | 'common practice, no source';

/**
 * Where a formula, a value or a limit comes from.
 *
 * A published work names its author or body, title and year. Trade habit without a publication is
 * `{ type: 'practice' }`; what nobody could re-read carries the mark
 * `from memory`; what was read in the work of others, or in notes of it, carries `second-hand`.
 */
export interface Source {
  readonly type: 'standard' | 'regulation' | 'paper' | 'book' | 'report' | 'thesis' | 'dataset' | 'practice' | 'derivation';
  /** Authors or issuing body. */
  readonly by?: string;
  readonly title: string;
  readonly year?: number;
  /** Clause, equation, table or page. */
  readonly locator?: string;
  readonly doi?: string;
  readonly mark: SourceMark;
  readonly note?: string;
}

/** The source of everything that the trade does and nobody has published. */
export function commonPractice(title: string, note?: string): Source {
  return { type: 'practice', title, mark: 'common practice, no source', ...(note === undefined ? {} : { note }) };
}

/** One line that names a source as a reader would cite it. */
export function citation(source: Source): string {
  const parts = [
    source.by,
    spoken(source.title),
    source.locator,
    source.year === undefined ? undefined : String(source.year),
    source.doi === undefined ? undefined : `doi ${source.doi}`,
  ].filter((part): part is string => part !== undefined);
  const marks: Readonly<Record<Exclude<SourceMark, 'read'>, string>> = {
    'second-hand': say`second-hand`,
    'from memory': say`from memory`,
    'common practice, no source': say`common practice, no source`,
  };
  const mark = source.mark === 'read' ? '' : ` (${marks[source.mark]})`;
  return `${parts.join(', ')}${mark}`;
}
