/**
 * What a thread of `readLogFiles` runs: it takes paths and gives back what was understood of each log.
 *
 * @packageDocumentation
 */
import { parentPort } from 'node:worker_threads';
import { readLogFile } from './files/read-file.js';
import type { Mapping } from './mapping/mapping.js';
import type { LogResult } from './read/reading.js';
import type { SteadyRule } from './steady/rule.js';
import type { SumsDefinition } from './sums/definition.js';
import { addBatch, type PartialSums, startSums } from './sums/partial-sums.js';

/** One file for a thread. */
export interface FileTask {
  readonly path: string;
  readonly mappings?: readonly Mapping[];
  readonly rule?: SteadyRule;
  readonly sums?: SumsDefinition;
}

/** What a thread gives back: the log, or the system's complaint, and the sums where they were asked for. */
export type FileOutcome =
  | { readonly path: string; readonly result: LogResult; readonly sums?: PartialSums }
  | { readonly path: string; readonly error: string };

/** Read one file; never rejects. */
export async function readTask(task: FileTask, onProgress?: (bytes: number) => void): Promise<FileOutcome> {
  const { path, mappings, rule } = task;
  const sums = task.sums === undefined ? undefined : startSums(task.sums, path);
  try {
    const result = await readLogFile(path, {
      ...(mappings === undefined ? {} : { mappings }),
      ...(rule === undefined ? {} : { rule }),
      ...(sums === undefined ? {} : { onBatch: (batch) => addBatch(sums, batch) }),
      ...(onProgress === undefined ? {} : { onProgress }),
    });
    return { path, result, ...(sums === undefined ? {} : { sums }) };
  } catch (error) {
    return { path, error: (error as Error).message };
  }
}

parentPort?.on('message', async (task: FileTask) => {
  const outcome = await readTask(task, (bytes) => parentPort?.postMessage({ bytes }));
  parentPort?.postMessage({ outcome });
});
