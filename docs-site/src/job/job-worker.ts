import { makeSheet } from './make-sheet.js';
import type { JobAnswer, JobQuestion } from './messages.js';

interface Scope {
  onmessage: ((event: { readonly data: JobQuestion }) => void) | null;
  postMessage(answer: JobAnswer): void;
}

const scope = self as unknown as Scope;

scope.onmessage = ({ data: { turn, fields, input, logs } }) => {
  try {
    scope.postMessage({ turn, view: makeSheet(fields, input, logs) });
  } catch {
    scope.postMessage({ turn, failed: true });
  }
};
