/**
 * Logs from files, for Node: one by its path, many in threads.
 *
 * @packageDocumentation
 */
import { availableParallelism } from 'node:os';
import { Worker } from 'node:worker_threads';
import type { FileOutcome, FileTask } from './file-worker.js';

export { readLogFile } from './files/read-file.js';
export type { FileOutcome, FileTask };

/** How many logs are read at a time, and who is told. */
export interface FilesOptions extends Omit<FileTask, 'path'> {
  /** Threads; as many as the machine runs at a time unless given. */
  readonly threads?: number;
  /** Called now and then with what has been read so far, of all files together. */
  readonly onProgress?: (progress: { readonly files: number; readonly bytes: number }) => void;
  /** Ends the reading between two files. */
  readonly signal?: { readonly aborted: boolean };
}

/** Read many logs, several at a time, each in a thread. The outcomes come in the order of the paths. */
export async function readLogFiles(paths: readonly string[], options: FilesOptions = {}): Promise<FileOutcome[]> {
  const { threads = availableParallelism(), onProgress, signal, ...task } = options;
  const outcomes: FileOutcome[] = [];
  let next = 0;
  let files = 0;
  let finished = 0;
  const running = new Map<number, number>();
  const tell = () => onProgress?.({ files, bytes: finished + [...running.values()].reduce((sum, bytes) => sum + bytes, 0) });
  const lane = async (thread: number): Promise<void> => {
    // Not the caller's options: --input-type is meant for its own program.
    const worker = new Worker(new URL('./file-worker.js', import.meta.url), { execArgv: [] });
    try {
      while (next < paths.length && signal?.aborted !== true) {
        const place = next;
        next += 1;
        const path = paths[place] as string;
        outcomes[place] = await inThread(worker, { ...task, path }, (bytes) => {
          running.set(thread, bytes);
          tell();
        });
        finished += running.get(thread) ?? 0;
        running.delete(thread);
        files += 1;
        tell();
      }
    } finally {
      await worker.terminate();
    }
  };
  const count = Math.max(1, Math.min(threads, paths.length));
  await Promise.all(Array.from({ length: paths.length === 0 ? 0 : count }, (_, thread) => lane(thread)));
  return outcomes.filter((outcome) => outcome !== undefined);
}

function inThread(worker: Worker, task: FileTask, onBytes: (bytes: number) => void): Promise<FileOutcome> {
  return new Promise((resolve, reject) => {
    const listen = (message: { readonly bytes: number } | { readonly outcome: FileOutcome }) => {
      if ('bytes' in message) {
        onBytes(message.bytes);
        return;
      }
      worker.off('message', listen);
      worker.off('error', reject);
      resolve(message.outcome);
    };
    worker.on('message', listen);
    worker.once('error', reject);
    worker.postMessage(task);
  });
}
