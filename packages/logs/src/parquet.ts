/**
 * Logs in Parquet files. The library that reads them is loaded when the first one is read.
 *
 * @packageDocumentation
 */
import { channelOf } from './channels/channels.js';
import { scaleOf } from './channels/scale.js';
import { readTitle } from './columns/recognise.js';
import { readGroups, type SignalGroup } from './read/from-groups.js';
import type { LogOptions } from './read/reader.js';
import type { LogReading } from './read/reading.js';

/** Bytes that can be asked for in parts, such as an `ArrayBuffer` or a file on a server. */
export interface BytesInParts {
  readonly byteLength: number;
  slice(from: number, to?: number): ArrayBuffer | Promise<ArrayBuffer>;
}

/** Why a Parquet file cannot be read as a log. */
export class ParquetLogError extends Error {
  readonly code: 'not_parquet' | 'no_time';
  constructor(code: ParquetLogError['code'], message: string) {
    super(message);
    this.name = 'ParquetLogError';
    this.code = code;
  }
}

/** A cell as a number: a moment in s since 1970, a yes as 1; NaN where it is none. */
function numberOf(cell: unknown): number {
  if (typeof cell === 'number') return cell;
  if (typeof cell === 'bigint') return Number(cell);
  if (typeof cell === 'boolean') return cell ? 1 : 0;
  return cell instanceof Date ? cell.getTime() / 1000 : Number.NaN;
}

/** The column that gives the time, with what makes seconds of it. */
function timeColumn(columns: ReadonlyMap<string, { readonly values: Float64Array; readonly moments: boolean }>, options: LogOptions) {
  for (const [name, { moments }] of columns) {
    const answer = options.mapping?.columns[name];
    const candidate = readTitle(name).candidates.find(({ channel }) => channel === 'time');
    const unit = answer !== undefined && answer.channel === 'time' && answer.unit !== undefined ? answer.unit : candidate?.unit?.id;
    if (moments && candidate !== undefined) return { name, factor: 1 };
    const scale = unit === undefined ? undefined : scaleOf(channelOf('time').kind, unit);
    if (scale !== undefined && (candidate !== undefined || answer !== undefined)) return { name, factor: scale.factor };
  }
  return undefined;
}

/** The signals of a Parquet file with a column for each channel; rejects as {@link readParquetLog} does. */
export async function parquetSignals(file: BytesInParts, options: LogOptions = {}): Promise<SignalGroup> {
  const start = new Uint8Array(await file.slice(0, Math.min(4, file.byteLength)));
  if (String.fromCharCode(...start) !== 'PAR1') throw new ParquetLogError('not_parquet', 'it does not begin as a Parquet file does');
  // Its entry for browsers: the one for Node asks for the file system, which nothing here needs.
  const { parquetMetadataAsync, parquetRead } = await import('hyparquet/src/index.js');
  const metadata = await parquetMetadataAsync(file);
  const rows = Number(metadata.num_rows);
  const columns = new Map<string, { values: Float64Array; moments: boolean }>();
  await parquetRead({
    file,
    metadata,
    onChunk: ({ columnName, columnData, rowStart }) => {
      let column = columns.get(columnName);
      if (column === undefined) {
        column = { values: new Float64Array(rows).fill(Number.NaN), moments: false };
        columns.set(columnName, column);
      }
      for (let row = 0; row < columnData.length; row += 1) {
        const cell: unknown = columnData[row];
        if (cell instanceof Date) column.moments = true;
        column.values[rowStart + row] = numberOf(cell);
      }
    },
  });
  const time = timeColumn(columns, options);
  if (time === undefined) throw new ParquetLogError('no_time', 'no column gives a time with its unit');
  const origin = columns.get(time.name)?.values ?? new Float64Array(0);
  // Seconds since 1970 leave few digits for a fraction.
  const base = (origin[0] ?? 0) * time.factor > 3e8 ? (origin[0] ?? 0) : 0;
  return {
    time: origin.map((value) => (value - base) * time.factor),
    signals: [...columns].filter(([name]) => name !== time.name).map(([name, { values }]) => ({ name, unit: '', values })),
  };
}

/**
 * Understand a Parquet file with a column for each channel as any log; titles hold the units. In `leftOut` a line is the number of the
 * row. Rejects with `ParquetLogError` where it is none or has no time that is plain, and with the library's error where it is damaged
 * or compressed in a way that the library does not know.
 */
export async function readParquetLog(file: BytesInParts, options: LogOptions = {}): Promise<LogReading> {
  return readGroups([await parquetSignals(file, options)], options);
}
