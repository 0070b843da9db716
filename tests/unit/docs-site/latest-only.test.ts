import { describe, expect, it } from 'vitest';
import { latestOnly, type WorkerLike } from '../../../docs-site/src/calculator/latest-only.js';
import type { Answer, Preparation, Question } from '../../../docs-site/src/calculator/messages.js';

const view = { ok: false, issues: [] } as const;
const question = (id: string) => ({ id, fields: [], input: {}, units: {} });

interface Bench extends WorkerLike {
  readonly asked: (Question | Preparation)[];
  ended: boolean;
}

/** Workers that keep what they are asked; the test answers for them. */
function bench() {
  const made: Bench[] = [];
  const make = () => {
    const worker: Bench = {
      asked: [],
      ended: false,
      onmessage: null,
      onerror: null,
      postMessage: (message) => void worker.asked.push(message),
      terminate: () => {
        worker.ended = true;
      },
    };
    made.push(worker);
    return worker;
  };
  const answers: Answer[] = [];
  const calculating = latestOnly(
    make,
    (answer) => answers.push(answer),
    () => undefined,
  );
  const answer = (data: Answer) => made.at(-1)?.onmessage?.({ data });
  const breakDown = () => made.at(-1)?.onerror?.();
  return { made, answers, calculating, answer, breakDown };
}

describe('a worker that calculates', () => {
  it('is asked only the latest of questions that come faster than answers', () => {
    const { made, answers, calculating, answer } = bench();
    for (const id of ['a', 'b', 'c']) calculating.ask(question(id));
    answer({ turn: 1, view });
    expect(made[0]?.asked.map((asked) => 'id' in asked && asked.id)).toEqual(['a', 'c']);
    expect(answers).toEqual([]);
    answer({ turn: 2, view });
    expect(answers).toEqual([{ turn: 2, view }]);
  });

  it('that broke is replaced, and the next question is answered', () => {
    const { made, answers, calculating, answer, breakDown } = bench();
    calculating.ask(question('a'));
    breakDown();
    expect(answers).toEqual([{ turn: 1, failed: true }]);
    expect(made[0]?.ended).toBe(true);
    calculating.ask(question('b'));
    expect(made).toHaveLength(2);
    answer({ turn: 2, view });
    expect(answers.at(-1)).toEqual({ turn: 2, view });
  });

  it('that could not load the calculation is asked anew, as when the signal is back', () => {
    const { made, answers, calculating, answer } = bench();
    calculating.ask(question('a'));
    answer({ turn: 1, failed: true });
    calculating.ask(question('a'));
    expect(made).toHaveLength(2);
    answer({ turn: 2, view });
    expect(answers).toEqual([
      { turn: 1, failed: true },
      { turn: 2, view },
    ]);
  });
});
