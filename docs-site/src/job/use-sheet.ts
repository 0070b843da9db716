import { useCallback, useEffect, useRef, useState } from 'react';
import type { Form } from '../calculator/use-form.js';
import type { InputTools } from '../calculator/use-input-tools.js';
import type { FieldData } from '../data/types.js';
import { keepFiles } from '../offline/keep.js';
import { loadedFiles } from '../offline/loaded-files.js';
import type { JobAnswer, JobQuestion, JobToOpen, Logs, SheetView } from './messages.js';

const pauseInTyping = 600;

type Opened = Extract<JobAnswer, { readonly opened: unknown }>['opened'];

export interface Sheets {
  /** The last sheet, or what was wrong; undefined until there is one. */
  readonly view: SheetView | undefined;
  /** It is not of what stands in the form now. */
  readonly pending: boolean;
  /** Everything that makes the sheet is on the device. */
  readonly kept: boolean;
  /** What a parsed job file fills the form with. */
  open(job: unknown): Promise<Opened>;
}

interface Answered {
  readonly view: SheetView;
  readonly of: unknown;
}

/** The sheet for what stands in the form, made in a worker after a pause in typing. */
export function useSheet(
  fields: readonly FieldData[],
  form: Form,
  logs: Logs,
  tools: InputTools | undefined,
  onFailure: (failed: boolean) => void,
): Sheets {
  const [answered, setAnswered] = useState<Answered>();
  const [kept, setKept] = useState(false);
  const worker = useRef<Worker>(undefined);
  const turn = useRef(0);
  const asked = useRef<unknown>(undefined);
  const opening = useRef<((opened: Opened) => void) | undefined>(undefined);
  const { values } = form;
  const of = useRef<{ values: unknown; logs: unknown }>({ values, logs });
  if (of.current.values !== values || of.current.logs !== logs) of.current = { values, logs };
  const current = of.current;

  const end = useCallback(() => {
    worker.current?.terminate();
    worker.current = undefined;
    opening.current?.(undefined);
    opening.current = undefined;
  }, []);
  useEffect(() => end, [end]);

  const started = useCallback((): Worker => {
    if (worker.current !== undefined) return worker.current;
    const fresh = new Worker(new URL('./job-worker.ts', import.meta.url));
    worker.current = fresh;
    // One that broke is replaced at the next question.
    fresh.onerror = () => {
      end();
      onFailure(true);
    };
    fresh.onmessage = ({ data }: MessageEvent<JobAnswer>) => {
      if ('loaded' in data)
        return void keepFiles([window.location.pathname, ...loadedFiles(), ...data.loaded]).then(setKept, () => undefined);
      if ('opened' in data) return opening.current?.(data.opened);
      if (data.turn !== turn.current) return;
      if ('view' in data) setAnswered({ view: data.view, of: asked.current });
      onFailure(!('view' in data));
    };
    return fresh;
  }, [end, onFailure]);

  useEffect(() => {
    if (tools === undefined) return;
    const timer = setTimeout(() => {
      turn.current += 1;
      asked.current = current;
      const input = tools.toInput(fields, values);
      const question: JobQuestion = { turn: turn.current, fields, input, logs };
      started().postMessage(question);
    }, pauseInTyping);
    return () => clearTimeout(timer);
  }, [current, fields, logs, started, tools, values]);

  const open = useCallback(
    (job: unknown) =>
      new Promise<Opened>((resolve) => {
        opening.current = resolve;
        started().postMessage({ open: job, fields } satisfies JobToOpen);
      }),
    [fields, started],
  );

  return { view: answered?.view, pending: answered?.of !== current, kept, open };
}
