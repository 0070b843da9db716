import type { Kind, KindName } from '@wallflow/units';
import Papa from 'papaparse';
import { type ChannelName, channels, type LogRow } from './channels.js';
import type { JobIssue } from './job-issue.js';

interface Column {
  readonly index: number;
  readonly name: ChannelName;
  readonly unit: string;
}

export interface Log {
  readonly rows: readonly LogRow[];
  /** Columns that are in the file but not used. */
  readonly unused: readonly string[];
}

export type LogResult = { readonly ok: true; readonly log: Log } | { readonly ok: false; readonly issues: readonly JobIssue[] };

const required: readonly ChannelName[] = ['time', 'engineSpeed', 'pressureDrop', 'gasTemperature'];
const noValue = new Set(['', '-', 'n/a', 'na', 'nan', 'null']);

function kindOf(name: ChannelName): Kind<KindName> {
  return channels[name].kind as unknown as Kind<KindName>;
}

function isChannel(name: string): name is ChannelName {
  return Object.hasOwn(channels, name);
}

/** `pressureDrop [mbar]`: a channel's name and the unit of all its cells. */
function readHeader(header: readonly string[], where: string): { columns: Column[]; unused: string[]; issues: JobIssue[] } {
  const columns: Column[] = [];
  const unused: string[] = [];
  const issues: JobIssue[] = [];
  header.forEach((title, index) => {
    const match = /^\s*(\w+)\s*\[([^\]]*)\]\s*$/.exec(title);
    const name = match?.[1] ?? '';
    if (!isChannel(name)) {
      unused.push(title.trim());
      return;
    }
    const kind = kindOf(name);
    const unit = kind.parse(1, match?.[2] ?? '');
    if (unit.ok) columns.push({ index, name, unit: unit.unit });
    else issues.push({ code: 'log_unit', where, column: name, given: match?.[2] ?? '', candidates: kind.units.slice(0, 8) });
  });
  for (const name of required) {
    const seen = columns.some((column) => column.name === name) || issues.some((issue) => 'column' in issue && issue.column === name);
    if (!seen) issues.push({ code: 'log_column_missing', where, column: name, found: header.map((title) => title.trim()) });
  }
  return { columns, unused, issues };
}

/** A cell as SI, undefined where there is no value, null where it is no number. */
function readCell(text: string, column: Column): number | undefined | null {
  const trimmed = text.trim();
  if (noValue.has(trimmed.toLowerCase())) return undefined;
  const parsed = kindOf(column.name).parse(`${trimmed} ${column.unit}`);
  return parsed.ok ? parsed.quantity : null;
}

/** Read a log: one header line with units in brackets, then one line per moment; comma, semicolon or tab between cells. */
export function readLog(text: string, where: string): LogResult {
  const table = Papa.parse<string[]>(text.replace(/^\ufeff/, ''), { skipEmptyLines: 'greedy', delimitersToGuess: [',', ';', '\t'] });
  const [header, ...lines] = table.data;
  if (header === undefined) return { ok: false, issues: [{ code: 'log_unreadable', where, detail: 'it is empty' }] };
  const { columns, unused, issues } = readHeader(header, where);
  if (issues.length > 0) return { ok: false, issues };
  const rows: LogRow[] = [];
  let lastTime = Number.NEGATIVE_INFINITY;
  lines.forEach((cells, position) => {
    const line = position + 2;
    const row: { -readonly [K in ChannelName]?: number } = {};
    for (const column of columns) {
      const given = cells[column.index] ?? '';
      const value = readCell(given, column);
      if (value === null) issues.push({ code: 'log_cell', where, line, column: column.name, given });
      else if (value !== undefined) row[column.name] = value;
    }
    if (row.time === undefined) return;
    if (row.time <= lastTime) issues.push({ code: 'log_time_order', where, line });
    lastTime = row.time;
    rows.push(row);
  });
  if (issues.length > 0) return { ok: false, issues: issues.slice(0, 10) };
  return { ok: true, log: { rows, unused } };
}
