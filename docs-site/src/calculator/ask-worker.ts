import type { Answer, Question } from './messages.js';

type Asked = Omit<Question, 'turn'>;

/** A worker that calculates; of questions that come faster than answers, only the latest is asked. */
export interface Calculating {
  ask(question: Asked): void;
  close(): void;
}

export function startWorker(onAnswer: (answer: Answer) => void): Calculating {
  const worker = new Worker(new URL('./worker.ts', import.meta.url));
  let turn = 0;
  let busy = false;
  let waiting: Asked | undefined;
  const send = (question: Asked) => {
    busy = true;
    turn += 1;
    worker.postMessage({ ...question, turn } satisfies Question);
  };
  worker.onmessage = (event: MessageEvent<Answer>) => {
    busy = false;
    const next = waiting;
    waiting = undefined;
    if (next === undefined) onAnswer(event.data);
    else send(next);
  };
  worker.onerror = () => onAnswer({ turn, failed: true });
  return {
    ask(question) {
      if (busy) waiting = question;
      else send(question);
    },
    close: () => worker.terminate(),
  };
}
