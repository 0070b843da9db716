import definitions from '@generated/wallflow-calculations/default/definitions.js';
import { loadedFiles } from '../offline/loaded-files.js';
import type { Answer, Preparation, Question } from './messages.js';
import { viewResult } from './result-view.js';

// Calculates beside the page, so that typing stays smooth while a long simulation runs on a slow phone.

interface Scope {
  onmessage: ((event: { readonly data: Question | Preparation }) => void) | null;
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

async function prepare(id: string): Promise<void> {
  try {
    await definitions[id]?.();
    scope.postMessage({ loaded: loadedFiles() });
  } catch {
    // Without signal there is nothing to prepare; the question itself will say so.
  }
}

scope.onmessage = ({ data }) => {
  if ('prepare' in data) void prepare(data.prepare);
  else void answer(data).then((result) => scope.postMessage(result));
};
