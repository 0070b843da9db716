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

interface Answered extends Pick<Form, 'values' | 'units'> {
  readonly result: ResultView;
}

/** The result for what stands in the form, calculated in a worker; that of the example was made with the page. */
export function useResult(data: CalculationData, form: Form, tools: InputTools | undefined, onFailure: () => void): Live {
  const { values, units } = form;
  const isExample = values === data.exampleValues && Object.keys(units).length === 0;
  const [answered, setAnswered] = useState<Answered>({ result: data.example, values, units });
  const worker = useRef<Calculating>(undefined);
  // What the worker was asked last; it answers nothing older.
  const asked = useRef({ values, units });

  useEffect(
    () => () => {
      worker.current?.close();
      worker.current = undefined;
    },
    [],
  );

  useEffect(() => {
    if (isExample) return setAnswered({ result: data.example, values, units });
    if (tools === undefined) return;
    const timer = setTimeout(() => {
      worker.current ??= startWorker((answer) => ('view' in answer ? setAnswered({ result: answer.view, ...asked.current }) : onFailure()));
      asked.current = { values, units };
      worker.current.ask({ id: data.id, fields: data.inputs, input: tools.toInput(data.inputs, values), units });
    }, pauseInTyping);
    return () => clearTimeout(timer);
  }, [data, isExample, onFailure, tools, units, values]);

  if (isExample) return { result: data.example, pending: false };
  // Told from what stands in the form now, so that not even for a moment an older result passes for the newer one.
  return { result: answered.result, pending: answered.values !== values || answered.units !== units };
}
