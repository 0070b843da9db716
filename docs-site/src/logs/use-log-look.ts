import type { Mapping } from '@wallflow/logs';
import { useEffect, useRef, useState } from 'react';
import { keepFiles } from '../offline/keep.js';
import { loadedFiles } from '../offline/loaded-files.js';
import type { LogAnswer, LogQuestion } from './log-worker.js';
import type { LogLookResult } from './look-at-log.js';

export type LookState =
  | { readonly state: 'reading'; readonly share: number }
  | { readonly state: 'read'; readonly result: LogLookResult }
  | { readonly state: 'stopped' }
  | { readonly state: 'failed' };

/** Read a log in a worker, told of its progress; `stop` ends the worker. */
export function useLogLook(text: string, mappings: readonly Mapping[]): { readonly look: LookState; stop(): void } {
  const [look, setLook] = useState<LookState>({ state: 'reading', share: 0 });
  const worker = useRef<Worker | undefined>(undefined);
  const shape = JSON.stringify(mappings);

  useEffect(() => {
    const fresh = new Worker(new URL('./log-worker.ts', import.meta.url));
    worker.current = fresh;
    setLook((before) => (before.state === 'read' ? before : { state: 'reading', share: 0 }));
    fresh.onerror = () => setLook({ state: 'failed' });
    fresh.onmessage = ({ data }: MessageEvent<LogAnswer>) => {
      if ('loaded' in data) return void keepFiles([...loadedFiles(), ...data.loaded]).catch(() => undefined);
      if ('result' in data) return setLook({ state: 'read', result: data.result });
      setLook((before) => (before.state === 'reading' ? { state: 'reading', share: data.progress } : before));
    };
    fresh.postMessage({ text, mappings: JSON.parse(shape) as Mapping[] } satisfies LogQuestion);
    return () => fresh.terminate();
  }, [text, shape]);

  const stop = () => {
    worker.current?.terminate();
    setLook({ state: 'stopped' });
  };
  return { look, stop };
}
