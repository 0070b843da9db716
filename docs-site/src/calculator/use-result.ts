import siteConfig from '@generated/docusaurus.config';
import { useEffect, useMemo, useRef, useState } from 'react';
import type { CalculationData, ResultView } from '../data/types.js';
import { keepFiles } from '../offline/keep.js';
import { loadedFiles } from '../offline/loaded-files.js';
import { startWorker } from './ask-worker.js';
import { isBlank } from './form-values.js';
import { rendererFile } from './formula-renderer.js';
import type { Calculating } from './latest-only.js';
import type { Form } from './use-form.js';
import type { InputTools } from './use-input-tools.js';

const pauseInTyping = 250;

export interface Live {
  /** Undefined while nothing is known of what stands in the form: an older result is never shown beside newer inputs. */
  readonly result: ResultView | undefined;
  /** The last one, for messages at the fields: they stay until the next is known, so that the form does not jump. */
  readonly last: ResultView | undefined;
  /** A result is on its way. */
  readonly pending: boolean;
  /** Everything that calculates is on the device. */
  readonly kept: boolean;
}

interface Answered extends Pick<Form, 'values' | 'units'> {
  readonly result: ResultView | undefined;
}

/** The result for what stands in the form, calculated in a worker; that of the example was made with the page. */
export function useResult(data: CalculationData, form: Form, tools: InputTools | undefined, onFailure: (failed: boolean) => void): Live {
  const { values, units, example } = form;
  const blank = isBlank(values);
  const isExample = values === example && Object.keys(units).length === 0;
  const [answered, setAnswered] = useState<Answered>({ result: undefined, values, units });
  const [kept, setKept] = useState(false);
  const worker = useRef<Calculating>(undefined);
  const needed = useMemo((): ResultView => ({ ok: false, issues: data.needed }), [data]);
  // What the worker was asked last; it answers nothing older.
  const asked = useRef({ values, units });

  useEffect(() => {
    worker.current = startWorker(
      (answer) => {
        if ('loaded' in answer) return;
        setAnswered({ result: 'view' in answer ? answer.view : undefined, ...asked.current });
        onFailure(!('view' in answer));
      },
      (files) =>
        void keepFiles([window.location.pathname, `${siteConfig.baseUrl}${rendererFile}`, ...loadedFiles(), ...files]).then(
          setKept,
          () => undefined,
        ),
    );
    return () => {
      worker.current?.close();
      worker.current = undefined;
    };
  }, [onFailure]);

  // What calculates is loaded while the visitor reads: the first answer comes sooner, and it is there without signal.
  useEffect(() => {
    if (tools !== undefined) worker.current?.prepare(data.id);
  }, [data, tools]);

  useEffect(() => {
    if (tools === undefined || isExample || blank) return;
    const timer = setTimeout(() => {
      asked.current = { values, units };
      worker.current?.ask({ id: data.id, fields: data.inputs, input: tools.toInput(data.inputs, values), units });
    }, pauseInTyping);
    return () => clearTimeout(timer);
  }, [blank, data, isExample, tools, units, values]);

  const ready = blank ? needed : isExample ? data.example : undefined;
  if (ready !== undefined) return { result: ready, last: ready, pending: false, kept };
  // Told from what stands in the form now, so that not even for a moment an older result passes for the newer one.
  const current = answered.values === values && answered.units === units;
  return { result: current ? answered.result : undefined, last: answered.result, pending: !current, kept };
}
