import { createReadStream } from 'node:fs';
import type { LogResult } from '../read/reading.js';
import { readLogStream, type StreamOptions } from '../read/stream.js';

/** Read a log from a file, part by part. Rejects with the system's error where the file cannot be read. */
export function readLogFile(path: string, options: StreamOptions = {}): Promise<LogResult> {
  return readLogStream(createReadStream(path, { highWaterMark: 262_144 }), options);
}
