import { loadedFiles } from '../offline/loaded-files.js';
import { makeSheet } from './make-sheet.js';
import type { JobAnswer, JobQuestion, JobToOpen } from './messages.js';
import { openJob } from './open-job.js';

interface Scope {
  onmessage: ((event: { readonly data: JobQuestion | JobToOpen }) => void) | null;
  postMessage(answer: JobAnswer): void;
}

const scope = self as unknown as Scope;

function answer(data: JobQuestion | JobToOpen): JobAnswer {
  if ('open' in data) return { opened: openJob(data.fields, data.open) };
  const { turn, fields, input, logs } = data;
  try {
    return { turn, view: makeSheet(fields, input, logs) };
  } catch {
    return { turn, failed: true };
  }
}

scope.onmessage = ({ data }) => scope.postMessage(answer(data));
scope.postMessage({ loaded: loadedFiles() });
