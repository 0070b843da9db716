import type { Kind, KindName, UnitIssue } from '@wallflow/units';
import { senseless } from './cell-sense.js';
import { type ChannelName, channelNames, channels, type LogRow } from './channels.js';
import type { JobIssue } from './job-issue.js';
import type { LeftOutCell } from './left-out.js';
import { type LogTable, readTable } from './log-table.js';

interface Column {
  readonly index: number;
  readonly name: ChannelName;
  readonly unit: string;
}

/** A log of an engine as SI numbers. */
export interface Log {
  readonly rows: readonly LogRow[];
  /** Columns that are in the file but not used. */
  readonly unused: readonly string[];
  /** Cells that hold a number which is no reading. */
  readonly leftOut: readonly LeftOutCell[];
}

/** What reading a log gives: its rows, or what is wrong with it, with line and column. */
export type LogResult = { readonly ok: true; readonly log: Log } | { readonly ok: false; readonly issues: readonly JobIssue[] };

type Row = { -readonly [K in ChannelName]?: number } & { line: number };
type Separator = LogTable['separator'];

const required: readonly ChannelName[] = ['time', 'engineSpeed', 'pressureDrop', 'gasTemperature'];
const noValue = /^(?:|[-–—]+|#?n\/a|na|#na|nan|null)$/i;
/** What a table that is no log is shown with; its cells are none of a job's business. */
const titlesShown = 12;
const titleLength = 40;

function kindOf(name: ChannelName): Kind<KindName> {
  return channels[name].kind as unknown as Kind<KindName>;
}

function isChannel(name: string): name is ChannelName {
  return Object.hasOwn(channels, name);
}

function shortTitle(title: string): string {
  const trimmed = title.trim();
  return trimmed.length > titleLength ? `${trimmed.slice(0, titleLength - 1)}…` : trimmed;
}

function unitProblem(issue: UnitIssue, where: string, column: ChannelName, given: string): JobIssue {
  const usual = kindOf(column).units.slice(0, 8);
  const reason =
    issue.code === 'ambiguous_unit' || issue.code === 'wrong_kind' || issue.code === 'missing_unit' ? issue.code : 'unknown_unit';
  const meant = issue.code === 'ambiguous_unit' || issue.code === 'unknown_unit' ? issue.candidates : [];
  const candidates = reason === 'ambiguous_unit' ? meant : [...new Set([...meant, ...usual])];
  return { code: 'log_unit', where, column, given: shortTitle(given), reason, candidates };
}

/** `pressureDrop [mbar]`: a channel's name and the unit of all its cells. */
function readHeader(header: readonly string[], where: string): { columns: Column[]; unused: string[]; issues: JobIssue[] } {
  const columns: Column[] = [];
  const unused: string[] = [];
  const issues: JobIssue[] = [];
  const seen = new Set<ChannelName>();
  header.forEach((title, index) => {
    const match = /^(\w+)\s*\[([^\]]*)\]$/.exec(title.trim());
    const [, name = '', given = ''] = match ?? [];
    if (!isChannel(name)) {
      unused.push(title.trim());
      return;
    }
    if (seen.has(name)) issues.push({ code: 'log_column_twice', where, column: name });
    seen.add(name);
    const unit = kindOf(name).parse(1, given);
    if (unit.ok) columns.push({ index, name, unit: unit.unit });
    else issues.push(unitProblem(unit.issue, where, name, given));
  });
  const found = header.slice(0, titlesShown).map(shortTitle);
  for (const name of required) if (!seen.has(name)) issues.push({ code: 'log_column_missing', where, column: name, found });
  return { columns, unused, issues };
}

/** Where a comma does not part cells, it can only be the decimal sign. */
function plainDecimals(text: string, separator: Separator): string {
  return separator === ',' ? text : text.replace(/^([+-]?\d*),(\d+)(?=$|e)/i, '$1.$2');
}

/** Whether a cell has a decimal comma, which only a log without separating commas can have. */
const decimalComma = /^[+-]?\d*(?:\.\d{3})*,\d+(?:e[+-]?\d+)?$/i;
/** One group of three digits after a point: a thousand or three decimals, where others write decimal commas. */
const thousandOrDecimals = /^[+-]?\d{1,3}\.\d{3}$/;
const decimalPoint = /^[+-]?\d*\.\d+(?:e[+-]?\d+)?$/i;

/** Columns of a log that have decimal commas; undefined when none has. */
function commaColumns(lines: LogTable['lines'], columns: readonly Column[], separator: Separator): ReadonlySet<number> | undefined {
  if (separator === ',') return undefined;
  const found = new Set<number>();
  for (const { cells } of lines) for (const { index } of columns) if (decimalComma.test((cells[index] ?? '').trim())) found.add(index);
  return found.size === 0 ? undefined : found;
}

/** Whether the point of a cell could as well part thousands: the log, or the column, has decimal commas elsewhere. */
function isAmbiguousPoint(text: string, column: Column, commas: ReadonlySet<number> | undefined): boolean {
  if (commas === undefined) return false;
  const trimmed = text.trim();
  return thousandOrDecimals.test(trimmed) || (commas.has(column.index) && decimalPoint.test(trimmed));
}

/** A cell as SI, undefined where there is no value; otherwise why it is no number. */
function readCell(text: string, column: Column, separator: Separator): number | undefined | UnitIssue {
  const trimmed = text.trim();
  if (noValue.test(trimmed)) return undefined;
  const parsed = kindOf(column.name).parse(`${plainDecimals(trimmed, separator)} ${column.unit}`);
  return parsed.ok ? parsed.quantity : parsed.issue;
}

function cellProblem(issue: UnitIssue, where: string, line: number, column: ChannelName, given: string): JobIssue {
  const reason = issue.code === 'not_a_number' ? issue.reason : issue.code;
  return { code: 'log_cell', where, line, column, given: shortTitle(given), reason };
}

/** Whether a row has cells that belong to no column. In a comma-separated log even an empty one may be due to a decimal comma. */
function isTooLong(cells: readonly string[], columns: number, separator: Separator): boolean {
  if (separator === ',') return cells.length > columns;
  return cells.slice(columns).some((cell) => cell.trim() !== '');
}

function isSameRow(a: Row, b: Row): boolean {
  return channelNames.every((name) => a[name] === b[name]);
}

/**
 * Read a log: one header line with units in brackets, then one line per moment; comma, semicolon or tab between cells. With
 * semicolons or tabs a comma is the decimal sign. Cells that are empty, dashes, `n/a`, `NaN` or `null` hold no value; a line
 * without a time is left out. A line that repeats the one before it is left out, one with the same time and other values
 * counts, and time that goes back is refused. A number that is no reading, such as the all-ones of a lost signal or one beyond the
 * limits of a typed reading, is left out and reported. Where decimal commas are in use, a point before three digits is refused: it
 * could be a thousand. Never throws, whatever is given for the text; at most ten issues come back.
 */
export function readLog(text: string, where: string): LogResult {
  const table = readTable(text, (title) => isChannel(/^\w+/.exec(title.trim())?.[0] ?? ''));
  if (!table.ok) return { ok: false, issues: [{ code: 'log_unreadable', where, detail: table.detail }] };
  const { header, separator, lines } = table;
  const { columns, unused, issues } = readHeader(header, where);
  if (issues.length > 0) return { ok: false, issues };
  const rows: Row[] = [];
  const leftOut: LeftOutCell[] = [];
  const commas = commaColumns(lines, columns, separator);
  for (const { line, cells } of lines) {
    if (issues.length >= 10) break;
    if (isTooLong(cells, header.length, separator)) {
      issues.push({ code: 'log_row_too_long', where, line, cells: cells.length, columns: header.length, separator });
      continue;
    }
    const row: Row = { line };
    for (const column of columns) {
      const given = cells[column.index] ?? '';
      if (isAmbiguousPoint(given, column, commas)) {
        const reason = 'ambiguous_separator';
        issues.push({ code: 'log_cell', where, line, column: column.name, given: shortTitle(given), reason });
        continue;
      }
      const value = readCell(given, column, separator);
      if (typeof value === 'number') {
        const reason = senseless(column.name, given.trim(), value);
        if (reason === undefined) row[column.name] = value;
        else leftOut.push({ line, column: column.name, given: shortTitle(given), reason });
      } else if (value !== undefined) issues.push(cellProblem(value, where, line, column.name, given));
    }
    if (row.time === undefined) continue;
    const last = rows.at(-1);
    if (last !== undefined && isSameRow(last, row)) continue;
    if (last?.time !== undefined && row.time < last.time) issues.push({ code: 'log_time_order', where, line });
    rows.push(row);
  }
  if (issues.length > 0) return { ok: false, issues: issues.slice(0, 10) };
  return { ok: true, log: { rows, unused, leftOut } };
}
