import { channelOf, type LogReading, questionText, readLog as readAny, reasonText } from '@wallflow/logs';
import { type ChannelName, channelNames, type LogRow } from './channels.js';
import type { JobIssue } from './job-issue.js';
import { type Log, type LogResult, readLog } from './read-log.js';

/** A log as SI numbers, with sentences on what was left out of it. */
export interface AnyLog extends Log {
  readonly notes: readonly string[];
}

type AnyLogResult = { readonly ok: true; readonly log: AnyLog } | Extract<LogResult, { ok: false }>;

const required: readonly ChannelName[] = ['time', 'engineSpeed', 'pressureDrop', 'gasTemperature'];
/** What is wrong with titles and not with cells: another reader may understand them. */
const ofTitles: ReadonlySet<JobIssue['code']> = new Set(['log_column_missing', 'log_unit']);

function notesOf({ leftOut }: LogReading): string[] {
  return leftOut.map(({ reason, channel, count, firstLine }) => {
    const what = channel === undefined ? '' : `${channelOf(channel).label}, `;
    return `${what}${count === 1 ? `line ${firstLine}` : `${count} times, first in line ${firstLine}`}: ${reasonText(reason)}`;
  });
}

/**
 * Read a log of any tool. One with the job's own titles is read strictly; titles in the words of the trade, other layouts and clocks
 * are left to `@wallflow/logs`. What such a log leaves open is part of the issues, never guessed.
 */
export function readAnyLog(text: string, where: string): AnyLogResult {
  const own = readLog(text, where);
  if (own.ok) return { ok: true, log: { ...own.log, notes: [] } };
  if (typeof text !== 'string' || !own.issues.every(({ code }) => ofTitles.has(code))) return own;
  const rows: LogRow[] = [];
  const reading = readAny(text, {
    onBatch: (batch) => {
      for (let row = 0; row < batch.rows; row += 1) {
        const entry: { -readonly [K in ChannelName]?: number } & { line: number } = {
          line: batch.lines[row] ?? 0,
          time: batch.time[row] ?? 0,
        };
        for (const name of channelNames) {
          const value = name === 'time' ? undefined : batch.values.get(name)?.[row];
          if (value !== undefined && !Number.isNaN(value)) entry[name] = value;
        }
        rows.push(entry);
      }
    },
  });
  if (!reading.ok) return own;
  const found = new Set<string>(reading.channels.map(({ channel }) => channel));
  if (required.every((name) => found.has(name))) {
    // A channel whose decimal sign turned out to be open was handed over before that could be known.
    const open = new Set(channelNames.filter((name) => !found.has(name)));
    const sure =
      open.size === 0
        ? rows
        : rows.map(
            (row) => Object.fromEntries(Object.entries(row).filter(([name]) => !open.has(name as ChannelName))) as unknown as LogRow,
          );
    return { ok: true, log: { rows: sure, unused: reading.unused.map(({ column }) => column), leftOut: [], notes: notesOf(reading) } };
  }
  const missing = own.issues.filter((issue) => !(issue.code === 'log_column_missing' && found.has(issue.column)));
  const questions = reading.questions.map((question): JobIssue => ({ code: 'log_question', where, question: questionText(question) }));
  return { ok: false, issues: [...missing, ...questions].slice(0, 10) };
}
