import { type ReactNode, useEffect, useRef, useState } from 'react';
import { fitting, merged, type Remembered, stands, typedHere, withRemembered } from '../../calculator/remembered.js';
import { readRemembered, writeRemembered } from '../../calculator/remembered-store.js';
import type { Form } from '../../calculator/use-form.js';
import type { InputTools } from '../../calculator/use-input-tools.js';
import type { CalculationData, FieldData } from '../../data/types.js';
import { inputId } from '../fields/fields-props.js';
import styles from './calculator.module.css';

interface FilterFromBeforeProps {
  readonly data: CalculationData;
  readonly form: Form;
  readonly tools: InputTools | undefined;
  /** What was refused, by field; a refused value is not remembered. */
  readonly refused: ReadonlyMap<string, string>;
  /** Whether the result belongs to what stands in the form. */
  readonly settled: boolean;
  /** The inputs. */
  readonly children: ReactNode;
}

function shown(field: FieldData | undefined, value: Remembered[string], tools: InputTools | undefined): string {
  if (field?.type === 'choice') return field.options.find((option) => option.key === value.text)?.label ?? value.text;
  if (field?.type !== 'quantity' || /[a-z°%]/i.test(value.text)) return value.text;
  return `${value.text} ${tools?.symbolOf(field.kind, value.unit) ?? value.unit}`;
}

/** Keeps what was typed about filter and engine on this device, and offers it where it is asked for again. */
export function FilterFromBefore({ data, form, tools, refused, settled, children }: FilterFromBeforeProps): ReactNode {
  const [remembered, setRemembered] = useState<Remembered>({});
  const fromHere = useRef(new Set<string>());
  useEffect(() => setRemembered(readRemembered()), []);

  // A field counts when it was left, so that half a number is never kept.
  const { touched, values } = form;
  useEffect(() => {
    if (!settled) return;
    const typed = Object.fromEntries(Object.entries(typedHere(data.inputs, values, refused)).filter(([key]) => touched.has(key)));
    if (Object.keys(typed).length === 0) return;
    const before = readRemembered();
    const next = merged(before, typed, fromHere.current);
    for (const key of Object.keys(typed)) fromHere.current.add(key);
    if (JSON.stringify(next) === JSON.stringify(before)) return;
    writeRemembered(next);
    setRemembered(readRemembered());
  }, [data, refused, settled, touched, values]);

  const own = fitting(data.inputs, remembered);
  const keys = Object.keys(own);
  const known = keys.length > 0 && tools !== undefined;
  const there = known && stands(values, own);
  const take = () => {
    for (const key of keys) fromHere.current.add(key);
    form.replace(withRemembered(data.inputs, values, own), 'The filter you entered earlier is filled in.');
    document.getElementById(inputId(keys[0] ?? ''))?.focus();
  };
  const forget = () => {
    writeRemembered({});
    setRemembered({});
  };
  const said = Object.entries(own).map(([key, value]) => {
    const field = data.inputs.find((candidate) => candidate.key === key);
    return `${field?.label.toLowerCase()} ${shown(field, value, tools)}`;
  });
  return (
    <>
      {known && !there ? (
        <aside className={styles.before} aria-label="Filter and engine entered earlier">
          <p>You entered earlier: {said.join(', ')}.</p>
          <div className={styles.formButtons}>
            <button type="button" onClick={take}>
              Use the filter you entered earlier
            </button>
            <button type="button" onClick={forget}>
              Forget it
            </button>
          </div>
        </aside>
      ) : null}
      {children}
      {there ? (
        <aside className={styles.before} aria-label="Filter and engine entered earlier">
          <p>What you typed about the filter and the engine is kept on this device, for the next calculator that asks for it.</p>
          <button type="button" onClick={forget}>
            Forget it
          </button>
        </aside>
      ) : null}
    </>
  );
}
