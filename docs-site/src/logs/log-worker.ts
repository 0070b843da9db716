import type { Mapping } from '@wallflow/logs';
import { loadedFiles } from '../offline/loaded-files.js';
import { type LogLookResult, lookAtLog } from './look-at-log.js';

export interface LogQuestion {
  readonly text: string;
  readonly mappings: readonly Mapping[];
}

export type LogAnswer = { readonly progress: number } | { readonly result: LogLookResult } | { readonly loaded: readonly string[] };

interface Scope {
  onmessage: ((event: { readonly data: LogQuestion }) => void) | null;
  postMessage(answer: LogAnswer): void;
}

const scope = self as unknown as Scope;

scope.onmessage = ({ data }) => {
  const result = lookAtLog(data.text, data.mappings, (progress) => scope.postMessage({ progress }));
  scope.postMessage({ result });
};
scope.postMessage({ loaded: loadedFiles() });
