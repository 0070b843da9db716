import { closeSync, constants, createReadStream, fstatSync, openSync, readSync, realpathSync, statSync } from 'node:fs';
import { join, sep } from 'node:path';
import { UnreadableFile } from '@wallflow/workshop';
import { reasonOf } from './reason.js';

/** No job, no input of a calculation and no log that can be worked through is larger. */
export const mostBytes = 200_000_000;

/** Bytes as a person reads them. */
export const megabytes = (bytes: number) => `${Math.round(bytes / 1e6)} MB`;

function readAll(path: string): Buffer {
  // Without waiting: a pipe with no writer would hold an opening for ever.
  const file = openSync(path, constants.O_RDONLY | (constants.O_NONBLOCK ?? 0));
  try {
    const info = fstatSync(file);
    if (info.isDirectory()) throw new UnreadableFile('it is a folder');
    if (!info.isFile()) throw new UnreadableFile('it is a pipe or a device, not a file');
    if (info.size > mostBytes) throw new UnreadableFile(`it is larger than ${megabytes(mostBytes)}`);
    const bytes = Buffer.alloc(info.size);
    let filled = 0;
    for (;;) {
      const read = filled < info.size ? readSync(file, bytes, filled, info.size - filled, null) : 0;
      if (read === 0) return bytes.subarray(0, filled);
      filled += read;
    }
  } finally {
    closeSync(file);
  }
}

/** Do something with a file: undefined when there is none, `UnreadableFile` with the reason when the system refuses. */
function sayingWhy<T>(work: () => T): T | undefined {
  try {
    return work();
  } catch (error) {
    if (error instanceof UnreadableFile) throw error;
    if ((error as NodeJS.ErrnoException).code === 'ENOENT') return undefined;
    throw new UnreadableFile(reasonOf(error));
  }
}

/** The text of a file, undefined when there is none. */
export function readFile(path: string): string | undefined {
  return sayingWhy(() => readAll(path).toString('utf8'));
}

/** The same for a file in a folder or below it; a link that leads out of there is refused. */
export function readFileWithin(folder: string, name: string): string | undefined {
  const bytes = readBytesWithin(folder, name);
  return bytes === undefined ? undefined : Buffer.from(bytes).toString('utf8');
}

/** Its bytes. */
export function readBytesWithin(folder: string, name: string): Uint8Array | undefined {
  return sayingWhy(() => {
    const home = realpathSync(folder);
    const path = realpathSync(join(folder, name));
    if (!path.startsWith(home.endsWith(sep) ? home : home + sep))
      throw new UnreadableFile('it is a link that leads out of the folder of the job');
    return readAll(path);
  });
}

/** The bytes of a file part by part, of any size; rejects with the system's error or with the reason. */
export async function* readParts(path: string): AsyncIterable<Uint8Array> {
  const info = statSync(path);
  if (info.isDirectory()) throw new UnreadableFile('it is a folder');
  // A pipe with no writer would hold the reading for ever.
  if (!info.isFile()) throw new UnreadableFile('it is a pipe or a device, not a file');
  yield* createReadStream(path, { highWaterMark: 262_144 });
}

/** All of a stream as text. */
export async function readStream(stream: AsyncIterable<unknown>, most = mostStreamBytes): Promise<string> {
  const chunks: Buffer[] = [];
  let bytes = 0;
  for await (const chunk of stream) {
    chunks.push(chunk as Buffer);
    bytes += (chunk as Buffer).length;
    if (bytes > most) throw new UnreadableFile(`it is larger than ${megabytes(most)}`);
  }
  return Buffer.concat(chunks).toString('utf8');
}

/** The input of one calculation, its longest lists included, has a tenth of it. */
const mostStreamBytes = 20_000_000;
