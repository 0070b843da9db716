import { basename, join } from 'node:path';
import {
  type ChannelName,
  channelOf,
  type LogOptions,
  type LogReading,
  type LogResult,
  logData,
  logProblemText,
  type Mapping,
  makeMapping,
  questionText,
  readGroups,
  readLogStream,
  reasonText,
} from '@wallflow/logs';
import type { CanDatabase } from '@wallflow/logs/raw';
import { formatNumber, unitSymbol } from '@wallflow/units';
import { type ExitCode, type Io, json, UsageError } from '../io.js';
import { databaseFrom, isNoText, loadLog } from '../log-content.js';
import { mappingEnding, mappingFrom, mappingsBeside } from '../mapping-files.js';
import { megabytes, mostBytes } from '../read-file.js';
import { reasonOf } from '../reason.js';
import { drawPlot, PlotSeries } from './log-plot.js';

interface LogCommandOptions {
  readonly json: boolean;
  readonly map: string | undefined;
  readonly plot: boolean;
  /** A CAN database, for a log of frames. */
  readonly can: string | undefined;
}

async function* partsOf(io: Io, file: string): AsyncIterable<Uint8Array> {
  if (io.readParts !== undefined) {
    yield* io.readParts(file);
    return;
  }
  const text = io.readFile(file);
  if (text === undefined) throw Object.assign(new Error(`there is no file ${file}`), { code: 'ENOENT' });
  yield new TextEncoder().encode(text);
}

function systemReason(file: string, error: unknown): UsageError {
  if ((error as NodeJS.ErrnoException).code === 'ENOENT') return new UsageError(`there is no file ${file}`);
  return new UsageError(`${file} cannot be read: ${reasonOf(error)}`);
}

function columnsText(reading: LogReading): string {
  const width = Math.min(48, Math.max(0, ...reading.channels.map(({ column }) => column.length)));
  return reading.channels
    .map(({ column, channel, unit, how, sure }) => {
      const { kind, label, perStroke } = { perStroke: false, ...channelOf(channel) };
      const sign = `${unitSymbol(kind, unit)}${perStroke ? ' per stroke' : ''}`;
      return `  ${column.padEnd(width)}  ${label}${sign === '' ? '' : ` in ${sign}`} (${sure}: ${how})\n`;
    })
    .join('');
}

function windowsText(reading: LogReading): string {
  const { windows } = logData(reading);
  const lines = windows.map(({ from, to, values }) => {
    const cells = Object.entries(values).map(([channel, { mean, plusMinus, unit }]) => {
      const digits = plusMinus > 0 ? Math.min(6, Math.max(0, 1 - Math.floor(Math.log10(plusMinus)))) : 1;
      return `${channelOf(channel as ChannelName).label} ${mean.toFixed(digits)} ± ${plusMinus.toFixed(digits)}${unit === '' ? '' : ` ${unit}`}`;
    });
    return `  ${formatNumber(from)} to ${formatNumber(to)} s: ${cells.join('; ')}\n`;
  });
  return lines.length === 0 ? '  none: no stretch of steady engine speed was long enough\n' : lines.join('');
}

/** Answers to start from: the first choice of every question, to be corrected. */
function answersToStartFrom(reading: LogReading): Mapping {
  const columns = reading.questions.flatMap((question) =>
    (question.ask === 'channel' || question.ask === 'unit') && question.choices[0] !== undefined
      ? [
          [
            question.column,
            { channel: question.choices[0].channel, ...(question.choices[0].unit === undefined ? {} : { unit: question.choices[0].unit }) },
          ] as const,
        ]
      : [],
  );
  return makeMapping(reading.titles, Object.fromEntries(columns));
}

function asText(file: string, reading: LogReading): string {
  const { time, restarts } = reading;
  const span =
    time === undefined
      ? ''
      : `, ${formatNumber(time.from)} to ${formatNumber(time.to)} s${time.begins === undefined ? '' : ` from ${time.begins}`}`;
  const parts = [
    `${file}: ${reading.rows} rows${span}${restarts === 0 ? '' : `; the time started anew ${restarts === 1 ? 'once' : `${restarts} times`}`}\n`,
    `\nColumns\n${columnsText(reading) || '  none\n'}`,
  ];
  if (reading.unused.length > 0) {
    const shown = reading.unused.slice(0, 20).map(({ column, why }) => `  ${column}: ${why}\n`);
    const more = reading.unused.length - shown.length;
    parts.push(`\nNot used\n${shown.join('')}${more > 0 ? `  and ${more} more\n` : ''}`);
  }
  if (reading.questions.length > 0) {
    parts.push(
      `\nOpen questions: these columns are not used until they are answered\n${reading.questions.map((question) => `  ${questionText(question)}\n`).join('')}`,
    );
    parts.push(
      `\nTo answer, correct these lines and keep them beside the log as ${basename(file)}${mappingEnding}; logs with the same titles then find them.\n${json(answersToStartFrom(reading))}`,
    );
  }
  if (reading.leftOut.length > 0) {
    const lines = reading.leftOut.map(({ reason, channel, count, firstLine }) => {
      const what = channel === undefined ? '' : `${channelOf(channel).label}: `;
      return `  ${what}${reasonText(reason)}, ${count === 1 ? 'once' : `${count} times`}, ${count === 1 ? 'in' : 'first in'} line ${firstLine}\n`;
    });
    parts.push(`\nLeft out\n${lines.join('')}`);
  }
  parts.push(`\nSteady stretches\n${windowsText(reading)}`);
  return parts.join('');
}

function refuse(io: Io, result: Extract<LogResult, { ok: false }>, file: string, asJson: boolean): ExitCode {
  const text = logProblemText(result.problem);
  if (asJson) io.out(json({ ok: false, file, problem: { ...result.problem, text } }));
  else io.error(`${file} is no log that can be read. ${text}\n`);
  return 1;
}

async function wholeFolder(io: Io, folder: string, names: readonly string[], options: LogCommandOptions): Promise<ExitCode> {
  const paths = names.filter((name) => /\.(?:csv|tsv|txt|log)$/i.test(name)).map((name) => join(folder, name));
  if (paths.length === 0) throw new UsageError(`${folder} has no logs: no file ends with .csv, .tsv, .txt or .log`);
  if (io.readLogs === undefined) throw new UsageError(`${folder} is a folder; name a log`);
  const mappings = [...(options.map === undefined ? [] : [mappingFrom(io, options.map)]), ...mappingsBeside(io, join(folder, 'x'))];
  const outcomes = await io.readLogs(paths, mappings, ({ files, bytes }) => {
    const done = Math.round((24 * files) / paths.length);
    io.progress?.(`[${'='.repeat(done)}${' '.repeat(24 - done)}] ${files} of ${paths.length} logs, ${(bytes / 1e6).toFixed(1)} MB`);
  });
  io.progress?.('');
  const good = outcomes.filter((outcome) => 'result' in outcome && outcome.result.ok).length;
  if (options.json) {
    io.out(
      json(
        outcomes.map((outcome) => {
          if ('error' in outcome) return { file: outcome.path, ok: false, error: outcome.error };
          return outcome.result.ok
            ? { file: outcome.path, ok: true, ...logData(outcome.result) }
            : { file: outcome.path, ok: false, problem: { ...outcome.result.problem, text: logProblemText(outcome.result.problem) } };
        }),
      ),
    );
  } else {
    for (const outcome of outcomes) {
      const name = basename(outcome.path);
      if ('error' in outcome) io.out(`${name}: ${outcome.error}\n`);
      else if (!outcome.result.ok) io.out(`${name}: ${logProblemText(outcome.result.problem)}\n`);
      else {
        const { rows, windows, questions, leftOut } = outcome.result;
        const left = leftOut.reduce((sum, { count }) => sum + count, 0);
        io.out(`${name}: ${rows} rows, ${windows.length} steady stretches, ${questions.length} open questions, ${left} left out\n`);
      }
    }
  }
  return good === outcomes.length ? 0 : 1;
}

/** Text is read as it comes; what is no text, and frames, as a whole. */
async function understood(io: Io, file: string, database: CanDatabase | undefined, options: LogOptions): Promise<LogResult> {
  const parts = partsOf(io, file)[Symbol.asyncIterator]();
  const first = await parts.next();
  const start = first.done === true ? new Uint8Array(0) : first.value;
  const rest = async function* (): AsyncIterable<Uint8Array> {
    yield start;
    for (let next = await parts.next(); next.done !== true; next = await parts.next()) yield next.value;
  };
  if (!isNoText(start) && database === undefined) return readLogStream(rest(), options);
  const held: Uint8Array[] = [];
  let size = 0;
  for await (const part of rest()) {
    held.push(part);
    size += part.length;
    if (size > mostBytes) throw new UsageError(`${file} is larger than ${megabytes(mostBytes)}`);
  }
  const mappings = options.mapping === undefined ? (options.mappings ?? []) : [options.mapping];
  const loaded = await loadLog(Buffer.concat(held), mappings, database);
  if ('bytes' in loaded) return readLogStream([loaded.bytes], options);
  return readGroups(loaded.groups, { ...options, ...(loaded.mapping === undefined ? {} : { mapping: loaded.mapping }) });
}

/** `wallflow log <file>`: what was understood of a log, what was left out, and its steady stretches. */
export async function log(io: Io, file: string | undefined, options: LogCommandOptions): Promise<ExitCode> {
  if (file === undefined) throw new UsageError('name a log, such as examples/demo-job/before.csv');
  const names = io.filesIn?.(file);
  if (names !== undefined) return wholeFolder(io, file, names, options);
  const mapping = options.map === undefined ? undefined : mappingFrom(io, options.map);
  const series = options.plot ? new PlotSeries(['engineSpeed', 'pressureDrop']) : undefined;
  const database = await databaseFrom(io, options.can);
  let result: LogResult;
  try {
    result = await understood(io, file, database, {
      ...(mapping === undefined ? { mappings: mappingsBeside(io, file) } : { mapping }),
      ...(series === undefined ? {} : { onBatch: (batch) => series.add(batch) }),
    });
  } catch (error) {
    if (error instanceof UsageError) throw error;
    throw systemReason(file, error);
  }
  if (!result.ok) return refuse(io, result, file, options.json);
  if (options.json) io.out(json({ ok: true, ...logData(result) }));
  else io.out(asText(file, result) + (series === undefined ? '' : drawPlot(series, result)));
  return 0;
}
