import { type Calculating, latestOnly, type WorkerLike } from './latest-only.js';
import type { Answer } from './messages.js';

/** The worker of a calculator; it is made when it is first needed. */
export function startWorker(onAnswer: (answer: Answer) => void, onLoaded: (files: readonly string[]) => void): Calculating {
  return latestOnly(() => new Worker(new URL('./worker.ts', import.meta.url)) as unknown as WorkerLike, onAnswer, onLoaded);
}
