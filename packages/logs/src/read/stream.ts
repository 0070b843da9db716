import { type LogOptions, LogReader } from './reader.js';
import type { LogResult } from './reading.js';

/** How a log that comes in parts is read. */
export interface StreamOptions extends LogOptions {
  /** Ends the reading; its result is the problem `cancelled`. */
  readonly signal?: { readonly aborted: boolean };
  /** Called after each part with the bytes that were read so far. */
  readonly onProgress?: (bytes: number) => void;
}

/** Read a log from parts as they come: a file's stream in Node, `blob.stream()` in a browser's worker. */
export async function readLogStream(
  parts: AsyncIterable<Uint8Array> | Iterable<Uint8Array>,
  options: StreamOptions = {},
): Promise<LogResult> {
  const { signal, onProgress, ...rest } = options;
  const reader = new LogReader(rest);
  let bytes = 0;
  for await (const part of parts) {
    if (signal?.aborted === true) return { ok: false, problem: { code: 'cancelled' } };
    reader.push(part);
    bytes += part.length;
    onProgress?.(bytes);
  }
  return signal?.aborted === true ? { ok: false, problem: { code: 'cancelled' } } : reader.end();
}
