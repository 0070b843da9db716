import definitions from '@generated/wallflow-calculations/default/definitions.js';
import type { Answer, Question } from './messages.js';
import { viewResult } from './result-view.js';

// Calculates beside the page, so that typing stays smooth while a long simulation runs on a slow phone.

interface Scope {
  onmessage: ((event: { readonly data: Question }) => void) | null;
  postMessage(answer: Answer): void;
}

const scope = self as unknown as Scope;

async function answer({ turn, id, fields, input, units }: Question): Promise<Answer> {
  try {
    const calculation = await definitions[id]?.();
    if (calculation === undefined) return { turn, failed: true };
    return { turn, view: viewResult(calculation, fields, input, units) };
  } catch {
    return { turn, failed: true };
  }
}

scope.onmessage = (event) => void answer(event.data).then((result) => scope.postMessage(result));
