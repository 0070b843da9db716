import { type Mapping, mappingFor, type SignalGroup } from '@wallflow/logs';
import type { CanDatabase } from '@wallflow/logs/raw';
import { UnreadableFile } from '@wallflow/workshop';
import { type Io, UsageError } from './io.js';

/** A log as it is handed to a reader: its bytes, or the signals of a file that is no text. */
export type LoadedLog =
  | { readonly bytes: Uint8Array }
  | { readonly groups: readonly SignalGroup[]; readonly mapping?: Mapping; readonly passedOver?: number };

const startsWith = (bytes: Uint8Array, text: string) => [...text].every((sign, index) => bytes[index] === sign.charCodeAt(0));

/** Whether a file that begins like this has to be read as a whole. */
export function isNoText(start: Uint8Array): boolean {
  return startsWith(start, 'MDF ') || startsWith(start, 'UnFinMF') || startsWith(start, 'PAR1');
}

/** The CAN database that was named, if one was. */
export async function databaseFrom(io: Io, path: string | undefined): Promise<CanDatabase | undefined> {
  if (path === undefined) return undefined;
  const text = io.readFile(path);
  if (text === undefined) throw new UsageError(`there is no file ${path}`);
  const { readCanDatabase } = await import('@wallflow/logs/raw');
  const database = readCanDatabase(text);
  if (database.messages.length === 0) throw new UsageError(`${path} has no messages of a CAN database`);
  return database;
}

async function sayingWhy<T>(read: () => Promise<T>): Promise<T> {
  try {
    return await read();
  } catch (error) {
    throw new UnreadableFile((error as Error).message);
  }
}

/**
 * What a file holds, by how it begins and not by its name; readers of other formats are loaded when one is met. Rejects with the
 * reader's reason where a file of such a format cannot be read.
 */
export async function loadLog(bytes: Uint8Array, mappings: readonly Mapping[], database?: CanDatabase): Promise<LoadedLog> {
  if (startsWith(bytes, 'MDF ') || startsWith(bytes, 'UnFinMF')) {
    const { mdf4Signals } = await import('@wallflow/logs/mdf4');
    return { groups: await sayingWhy(() => mdf4Signals(bytes)) };
  }
  if (startsWith(bytes, 'PAR1')) {
    const { parquetSignals } = await import('@wallflow/logs/parquet');
    const file = bytes.buffer.slice(bytes.byteOffset, bytes.byteOffset + bytes.byteLength) as ArrayBuffer;
    const mapping = mappings[0];
    return { groups: [await sayingWhy(() => parquetSignals(file, mapping === undefined ? {} : { mapping }))] };
  }
  if (database !== undefined) {
    const { frameSignals, isFrameLog } = await import('@wallflow/logs/raw');
    const text = new TextDecoder().decode(bytes);
    if (isFrameLog(text)) {
      const { groups, mapping, unknownFrames } = frameSignals(text, database);
      const given = mappingFor(mapping.titles, mappings);
      const merged = given === undefined ? mapping : { ...given, columns: { ...mapping.columns, ...given.columns } };
      return { groups, mapping: merged, passedOver: unknownFrames };
    }
  }
  return { bytes };
}
