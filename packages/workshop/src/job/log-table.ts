import Papa from 'papaparse';

/** A log's cells as text, with the line of the file on which each row begins. */
export interface LogTable {
  readonly ok: true;
  readonly header: readonly string[];
  readonly separator: ',' | ';' | '\t';
  readonly lines: readonly { readonly line: number; readonly cells: readonly string[] }[];
}

type TableResult = LogTable | { readonly ok: false; readonly detail: string };

const separators = [',', ';', '\t'] as const;
const lineEnd = /\r\n|\r|\n/g;

function countLineEnds(text: string): number {
  return text.match(lineEnd)?.length ?? 0;
}

function isBlank(cells: readonly string[]): boolean {
  return cells.every((cell) => cell.trim() === '');
}

/** The separator that cuts the header into the most columns that are known, or else into the most columns. */
function separatorOf(text: string, isKnown: (title: string) => boolean): (typeof separators)[number] {
  const score = (delimiter: string): number => {
    const [titles = []] = Papa.parse<string[]>(text, { delimiter, preview: 1 }).data;
    return titles.filter(isKnown).length + Math.min(0.9, titles.length / 1e4);
  };
  const [first = ','] = separators
    .map((sign) => ({ sign, score: score(sign) }))
    .sort((a, b) => b.score - a.score)
    .map(({ sign }) => sign);
  return first;
}

/** Cut a text into cells; `isKnown` tells whether the title of a column is one that is looked for. */
export function readTable(text: unknown, isKnown: (title: string) => boolean): TableResult {
  if (typeof text !== 'string') return { ok: false, detail: 'it is not text' };
  const blankStart = /^\ufeff?(?:[ \t]*(?:\r\n|\r|\n))*/.exec(text)?.[0] ?? '';
  const content = text.slice(blankStart.length);
  if (content.trim() === '') return { ok: false, detail: 'it is empty' };
  const separator = separatorOf(content, isKnown);
  const { data, errors } = Papa.parse<string[]>(content, { delimiter: separator });
  let line = 1 + countLineEnds(blankStart);
  const lines: { line: number; cells: string[] }[] = [];
  const startOf: number[] = [];
  for (const cells of data) {
    startOf.push(line);
    if (!isBlank(cells)) lines.push({ line, cells });
    line += 1 + cells.reduce((sum, cell) => sum + (cell.includes('\n') || cell.includes('\r') ? countLineEnds(cell) : 0), 0);
  }
  const quote = errors.find(({ type }) => type === 'Quotes');
  if (quote !== undefined) return { ok: false, detail: `a quotation mark in line ${startOf[quote.row ?? 0] ?? 1} has no partner` };
  const [header, ...rest] = lines;
  return { ok: true, header: header?.cells ?? [], separator, lines: rest };
}
