import { anyUnit } from '../columns/any-unit.js';
import { isTitle, readTitle, type TitleReading } from '../columns/recognise.js';
import { noValue } from '../text/number.js';
import { recordsOf, type TextRecord } from '../text/records.js';

/** How a log is laid out: where its header is, what parts the cells, and which titles and units it has. */
export interface Layout {
  readonly separator: Separator;
  /** Titles as they stand; `column 1` and so on where the log has none. */
  readonly titles: readonly string[];
  readonly readings: readonly TitleReading[];
  /** Units of a row of their own, by column. */
  readonly unitRow?: readonly string[];
  /** Lines above the header: title, comments, notes on the vehicle. */
  readonly above: readonly string[];
  /** Line of the header; undefined where there is none. */
  readonly headerLine?: number;
  /** Line on which the rows begin, and how many signs of the text lie before. */
  readonly firstLine: number;
  readonly firstSign: number;
  /** Cells of a whole row, with those that separators at its end make. */
  readonly cells: number;
  /** The first rows as text. */
  readonly sample: readonly TextRecord[];
}

/** What can part cells. */
export type Separator = ',' | ';' | '\t' | '|';

const separators: readonly Separator[] = [';', '\t', ',', '|'];
const linesLookedAt = 120;
const sampleRows = 400;
const cellsLookedAt = 400;

const isNumeric = (cell: string) => /^\s*[-+−]?[\d.,]*\d/.test(cell);
const isBlank = (cells: readonly string[]) => cells.every((cell) => cell.trim() === '');
const isComment = (cells: readonly string[]) => /^\s*(?:#(?!\s*$)|\/\/|;)/.test(cells[0] ?? '') && cells.length <= 2;

/** `sep=;`, which spreadsheets write to tell each other. */
function toldSeparator(text: string): Separator | undefined {
  const sign = /^\s*"?sep=(.)"?[\s,;]*$/im.exec(text.slice(0, 200).split(/\r\n|\r|\n/)[0] ?? '')?.[1];
  return separators.find((known) => known === sign);
}

interface Found {
  readonly separator: Separator;
  readonly records: readonly TextRecord[];
  readonly header: number;
  readonly score: number;
}

const titleMemo = new Map<string, boolean>();
function known(cell: string, asked: ReadonlySet<string>): boolean {
  if (asked.has(cell.trim())) return true;
  const memo = titleMemo.get(cell);
  if (memo !== undefined) return memo;
  if (titleMemo.size > 5000) titleMemo.clear();
  const answer = isTitle(cell);
  titleMemo.set(cell, answer);
  return answer;
}

/** The line whose cells are titles: most of them known, and numbers below. */
function headerIn(records: readonly TextRecord[], asked: ReadonlySet<string>): { header: number; score: number } | undefined {
  let best: { header: number; score: number } | undefined;
  records.forEach(({ cells }, index) => {
    const looked = cells.slice(0, cellsLookedAt);
    const filled = looked.filter((cell) => cell.trim() !== '').length;
    if (filled === 0 || looked.some((cell) => cell.length > 2000)) return;
    const titles = looked.filter((cell) => known(cell, asked)).length;
    if (titles === 0 || (looked.length === 1 && filled === 1)) return;
    const below = records.slice(index + 1, index + 12).filter((record) => !isBlank(record.cells));
    const likeIt = below.filter((record) => Math.abs(record.cells.length - cells.length) <= 1 && record.cells.some(isNumeric)).length;
    const score = titles + Math.min(0.5, filled / 1e4) + (likeIt > 0 ? 1 : 0) - index * 1e-4;
    if (best === undefined || score > best.score) best = { header: index, score };
  });
  return best;
}

/** Where no title is known: the last line of text above lines of numbers. */
function unknownHeader(records: readonly TextRecord[]): number | undefined {
  for (let index = 0; index < records.length - 1; index += 1) {
    const cells = records[index]?.cells ?? [];
    const next = records[index + 1]?.cells ?? [];
    if (cells.length < 2 || next.length < 2 || cells.some((cell) => isNumeric(cell) && !/[a-z]/i.test(cell))) continue;
    const numeric = next.filter(isNumeric).length;
    if (numeric >= Math.max(2, next.filter((cell) => cell.trim() !== '').length / 2)) return index;
  }
  return undefined;
}

function firstNumbers(records: readonly TextRecord[]): number | undefined {
  const index = records.findIndex(({ cells }) => cells.length > 1 && cells.filter(isNumeric).length >= cells.length / 2);
  return index < 0 ? undefined : index;
}

function findTable(text: string, asked: ReadonlySet<string>): Found | undefined {
  const told = toldSeparator(text);
  const tried = (told === undefined ? separators : [told]).map((separator) => {
    const records = recordsOf(text, separator, linesLookedAt);
    const found = headerIn(records, asked);
    return { separator, records, header: found?.header ?? -1, score: found?.score ?? 0 };
  });
  const best = tried.reduce((a, b) => (b.score > a.score ? b : a));
  if (best.score > 0) return best;
  const plain = tried
    .map((entry) => ({ ...entry, header: unknownHeader(entry.records) ?? -1, width: entry.records.at(-1)?.cells.length ?? 1 }))
    .filter(({ header }) => header >= 0)
    .sort((a, b) => b.width - a.width)[0];
  return plain;
}

/** Whether a line below the header holds the units of the columns. */
function isUnitRow(cells: readonly string[], titles: readonly string[]): boolean {
  const filled = cells.filter((cell) => cell.trim() !== '' && !noValue.test(cell.trim()));
  if (filled.length === 0 || cells.length > titles.length + 1) return false;
  const units = filled.filter((cell) => anyUnit(cell)).length;
  return (
    units >= Math.max(1, filled.length / 2) && !filled.some((cell) => /^\s*[-+]?\d+(?:[.,]\d+)?\s*$/.test(cell) && cell.trim() !== '1')
  );
}

const withoutBrackets = (cell: string) => cell.trim().replace(/^[[({<]\s*(.*?)\s*[\])}>]$/, '$1');

/** Find the table in the start of a log. `asked` are titles that a mapping file names. */
export function findLayout(text: string, asked: ReadonlySet<string> = new Set()): Layout | undefined {
  const found = findTable(text, asked);
  if (found === undefined) return withoutHeader(text);
  const { separator, records, header } = found;
  const titles = records[header]?.cells.map((cell) => cell.trim()) ?? [];
  // Separators at the end of every line make no columns.
  while (titles.length > 1 && titles.at(-1) === '') titles.pop();
  let next = header + 1;
  while (next < records.length && isBlank(records[next]?.cells ?? [])) next += 1;
  const below = records[next];
  const unitRow = below !== undefined && isUnitRow(below.cells, titles) ? below.cells.map(withoutBrackets) : undefined;
  const last = unitRow === undefined ? records[header] : below;
  const firstSign = last?.end ?? 0;
  const firstLine = (unitRow === undefined ? records[header + 1]?.line : records[next + 1]?.line) ?? lineAfter(text, firstSign);
  const sample = sampleOf(text.slice(firstSign), separator, firstLine);
  return {
    separator,
    titles,
    readings: titles.map((title, index) => readTitle(title, unitRow?.[index])),
    ...(unitRow === undefined ? {} : { unitRow }),
    above: records.slice(0, header).map(({ cells }) => cells.join(separator).trim().slice(0, 200)),
    headerLine: records[header]?.line ?? 1,
    firstLine,
    firstSign,
    cells: Math.max(records[header]?.cells.length ?? 0, leastCells(sample, titles.length)),
    sample,
  };
}

/** Cells of the shortest row that is whole: separators at its end are part of the form of the log. */
function leastCells(sample: readonly TextRecord[], width: number): number {
  return sample.reduce((least, { cells }) => (cells.length < width ? least : Math.min(least, cells.length)), Number.POSITIVE_INFINITY);
}

function withoutHeader(text: string): Layout | undefined {
  const tried = separators
    .map((separator) => ({ separator, records: recordsOf(text, separator, linesLookedAt) }))
    .map((entry) => ({ ...entry, first: firstNumbers(entry.records) }))
    .filter(({ first }) => first !== undefined)
    .sort((a, b) => (b.records[b.first ?? 0]?.cells.length ?? 0) - (a.records[a.first ?? 0]?.cells.length ?? 0))[0];
  if (tried?.first === undefined) return undefined;
  const { separator, records, first } = tried;
  const width = records[first]?.cells.length ?? 0;
  const firstSign = first === 0 ? 0 : (records[first - 1]?.end ?? 0);
  const firstLine = records[first]?.line ?? 1;
  return {
    separator,
    titles: Array.from({ length: width }, (_, index) => `column ${index + 1}`),
    readings: Array.from({ length: width }, () => ({ candidates: [] })),
    above: records.slice(0, first).map(({ cells }) => cells.join(separator).trim().slice(0, 200)),
    firstLine,
    firstSign,
    cells: width,
    sample: sampleOf(text.slice(firstSign), separator, firstLine),
  };
}

function lineAfter(text: string, sign: number): number {
  return 1 + (text.slice(0, sign).match(/\r\n|\r|\n/g)?.length ?? 0);
}

function sampleOf(text: string, separator: string, firstLine: number): TextRecord[] {
  return recordsOf(text, separator, sampleRows)
    .filter(({ cells }) => !isBlank(cells) && !isComment(cells))
    .map((record) => ({ ...record, line: record.line + firstLine - 1 }));
}
