import { useEffect, useMemo, useState } from 'react';
import type { CalculationData, ResultView } from '../data/types.js';
import type { Engine } from './use-engine.js';
import type { Form } from './use-form.js';

const pauseInTyping = 250;

/** A value that follows another one after a pause. */
function useSettled<T>(value: T, delay: number): T {
  const [settled, setSettled] = useState(value);
  useEffect(() => {
    const timer = setTimeout(() => setSettled(value), delay);
    return () => clearTimeout(timer);
  }, [value, delay]);
  return settled;
}

/** The result for what stands in the form. Until the calculation is loaded, only the example has one. */
export function useResult(data: CalculationData, form: Form, engine: Engine | undefined): ResultView | undefined {
  const current = useMemo(() => ({ values: form.values, units: form.units }), [form.values, form.units]);
  const { values, units } = useSettled(current, pauseInTyping);
  return useMemo(() => {
    if (values === data.exampleValues && Object.keys(units).length === 0) return data.example;
    if (engine === undefined) return undefined;
    return engine.viewResult(engine.calculation, data.inputs, engine.toInput(data.inputs, values), units);
  }, [data, engine, units, values]);
}
