import { useEffect, useRef, useState } from 'react';
import type { Form } from '../calculator/use-form.js';
import type { InputTools } from '../calculator/use-input-tools.js';
import type { FieldData } from '../data/types.js';
import type { JobAnswer, JobQuestion, Logs, SheetView } from './messages.js';

const pauseInTyping = 600;

/** The sheet for what stands in the form, made in a worker after a pause in typing; undefined until the first is made. */
export function useSheet(
  fields: readonly FieldData[],
  form: Form,
  logs: Logs,
  tools: InputTools | undefined,
  onFailure: () => void,
): SheetView | undefined {
  const [view, setView] = useState<SheetView>();
  const worker = useRef<Worker>(undefined);
  const turn = useRef(0);
  const { values } = form;

  useEffect(
    () => () => {
      worker.current?.terminate();
      worker.current = undefined;
    },
    [],
  );

  useEffect(() => {
    if (tools === undefined) return;
    const timer = setTimeout(() => {
      if (worker.current === undefined) {
        worker.current = new Worker(new URL('./job-worker.ts', import.meta.url));
        worker.current.onerror = onFailure;
        worker.current.onmessage = ({ data }: MessageEvent<JobAnswer>) => {
          if (data.turn !== turn.current) return;
          if ('view' in data) setView(data.view);
          else onFailure();
        };
      }
      turn.current += 1;
      const question: JobQuestion = { turn: turn.current, fields, input: tools.toInput(fields, values), logs };
      worker.current.postMessage(question);
    }, pauseInTyping);
    return () => clearTimeout(timer);
  }, [fields, logs, onFailure, tools, values]);

  return view;
}
