import type { Kind, KindName, UnitIssue } from '@wallflow/units';
import { type ChannelName, channels, type LogRow } from './channels.js';
import type { JobIssue } from './job-issue.js';
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
}

/** What reading a log gives: its rows, or what is wrong with it, with line and column. */
export type LogResult = { readonly ok: true; readonly log: Log } | { readonly ok: false; readonly issues: readonly JobIssue[] };

type Row = { -readonly [K in ChannelName]?: number };
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
  return Object.keys(channels).every((name) => a[name as ChannelName] === b[name as ChannelName]);
}

/**
 * Read a log: one header line with units in brackets, then one line per moment; comma, semicolon or tab between cells. With
 * semicolons or tabs a comma is the decimal sign. Cells that are empty, dashes, `n/a`, `NaN` or `null` hold no value; a line
 * without a time is left out. A line that repeats the one before it is left out, one with the same time and other values
 * counts, and time that goes back is refused. Never throws, whatever is given for the text; at most ten issues come back.
 */
export function readLog(text: string, where: string): LogResult {
  const table = readTable(text, (title) => isChannel(/^\w+/.exec(title.trim())?.[0] ?? ''));
  if (!table.ok) return { ok: false, issues: [{ code: 'log_unreadable', where, detail: table.detail }] };
  const { header, separator, lines } = table;
  const { columns, unused, issues } = readHeader(header, where);
  if (issues.length > 0) return { ok: false, issues };
  const rows: Row[] = [];
  for (const { line, cells } of lines) {
    if (issues.length >= 10) break;
    if (isTooLong(cells, header.length, separator)) {
      issues.push({ code: 'log_row_too_long', where, line, cells: cells.length, columns: header.length, separator });
      continue;
    }
    const row: Row = {};
    for (const column of columns) {
      const given = cells[column.index] ?? '';
      const value = readCell(given, column, separator);
      if (typeof value === 'number') row[column.name] = value;
      else if (value !== undefined) issues.push(cellProblem(value, where, line, column.name, given));
    }
    if (row.time === undefined) continue;
    const last = rows.at(-1);
    if (last !== undefined && isSameRow(last, row)) continue;
    if (last?.time !== undefined && row.time < last.time) issues.push({ code: 'log_time_order', where, line });
    rows.push(row);
  }
  if (issues.length > 0) return { ok: false, issues: issues.slice(0, 10) };
  return { ok: true, log: { rows, unused } };
}
