import { useEffect, useRef, useState } from 'react';
import type { CalculationData, ResultView } from '../data/types.js';
import { type Calculating, startWorker } from './ask-worker.js';
import type { Form } from './use-form.js';
import type { InputTools } from './use-input-tools.js';

const pauseInTyping = 250;

export interface Live {
  readonly result: ResultView;
  /** A newer result is on its way. */
  readonly pending: boolean;
}

/** The result for what stands in the form, calculated in a worker; that of the example was made with the page. */
export function useResult(data: CalculationData, form: Form, tools: InputTools | undefined, onFailure: () => void): Live {
  const [live, setLive] = useState<Live>({ result: data.example, pending: false });
  const worker = useRef<Calculating>(undefined);
  // Counts what was typed and what was asked: an answer to an older question is no longer the result.
  const typed = useRef(0);
  const asked = useRef(0);
  const { values, units } = form;

  useEffect(
    () => () => {
      worker.current?.close();
      worker.current = undefined;
    },
    [],
  );

  useEffect(() => {
    typed.current += 1;
    if (values === data.exampleValues && Object.keys(units).length === 0) return setLive({ result: data.example, pending: false });
    setLive((before) => ({ ...before, pending: true }));
    if (tools === undefined) return;
    const timer = setTimeout(() => {
      worker.current ??= startWorker((answer) => {
        if (!('view' in answer)) onFailure();
        else if (asked.current === typed.current) setLive({ result: answer.view, pending: false });
      });
      asked.current = typed.current;
      worker.current.ask({ id: data.id, fields: data.inputs, input: tools.toInput(data.inputs, values), units });
    }, pauseInTyping);
    return () => clearTimeout(timer);
  }, [data, onFailure, tools, units, values]);

  return live;
}
