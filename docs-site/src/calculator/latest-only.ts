import type { Answer, Preparation, Question } from './messages.js';

type Asked = Omit<Question, 'turn'>;

/** A worker that calculates; of questions that come faster than answers, only the latest is asked. */
export interface Calculating {
  ask(question: Asked): void;
  /** Load the calculation before it is needed. */
  prepare(id: string): void;
  close(): void;
}

/** What is needed of a worker, so that a test can stand in for it. */
export interface WorkerLike {
  postMessage(message: Question | Preparation): void;
  terminate(): void;
  onmessage: ((event: { readonly data: Answer }) => void) | null;
  onerror: (() => void) | null;
}

/**
 * Ask a worker. One that broke is ended and replaced at the next question, so that a failure lasts no longer than its
 * cause, such as a moment without signal.
 */
export function latestOnly(
  make: () => WorkerLike,
  onAnswer: (answer: Answer) => void,
  onLoaded: (files: readonly string[]) => void,
): Calculating {
  let worker: WorkerLike | undefined;
  let turn = 0;
  let busy = false;
  let waiting: Asked | undefined;

  const end = () => {
    worker?.terminate();
    worker = undefined;
    busy = false;
    waiting = undefined;
  };
  const started = (): WorkerLike => {
    if (worker !== undefined) return worker;
    worker = make();
    worker.onmessage = ({ data }) => {
      if ('loaded' in data) return onLoaded(data.loaded);
      busy = false;
      const next = waiting;
      waiting = undefined;
      if (next !== undefined) return send(next);
      onAnswer(data);
      if ('failed' in data) end();
    };
    worker.onerror = () => {
      const asked = busy;
      end();
      if (asked) onAnswer({ turn, failed: true });
    };
    return worker;
  };
  const send = (question: Asked) => {
    busy = true;
    turn += 1;
    started().postMessage({ ...question, turn } satisfies Question);
  };
  return {
    ask(question) {
      if (busy) waiting = question;
      else send(question);
    },
    prepare: (id) => started().postMessage({ prepare: id }),
    close: end,
  };
}
