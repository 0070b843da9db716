import type { Path } from '@wallflow/calculation';
import { useMemo, useReducer } from 'react';
import type { Entry, FieldData, FormValues, Rows } from '../data/types.js';
import { withEntry } from './edit-values.js';
import { emptyValues } from './form-values.js';
import { pathKey } from './path-key.js';

export interface FormState {
  readonly values: FormValues;
  /** Units chosen for results. */
  readonly units: Readonly<Record<string, string>>;
  /** Fields that the user has left, by path; an empty field is complained about only then. */
  readonly touched: ReadonlySet<string>;
  /** Whether the user has changed anything since the page was opened. */
  readonly edited: boolean;
}

type Action =
  | { readonly type: 'entry'; readonly path: Path; readonly entry: Entry | Rows }
  | { readonly type: 'left'; readonly path: Path }
  | { readonly type: 'unit'; readonly key: string; readonly unit: string }
  | { readonly type: 'fill'; readonly values: FormValues; readonly units?: Readonly<Record<string, string>>; readonly edited: boolean };

const untouched: ReadonlySet<string> = new Set();

function reduce(state: FormState, action: Action): FormState {
  switch (action.type) {
    case 'entry':
      return { ...state, values: withEntry(state.values, action.path, action.entry), edited: true };
    case 'left':
      return { ...state, touched: new Set([...state.touched, pathKey(action.path)]) };
    case 'unit':
      return { ...state, units: { ...state.units, [action.key]: action.unit }, edited: true };
    case 'fill':
      return { values: action.values, units: action.units ?? {}, touched: untouched, edited: action.edited };
  }
}

export interface Form extends FormState {
  change(path: Path, entry: Entry | Rows): void;
  left(path: Path): void;
  chooseUnit(key: string, unit: string): void;
  fill(values: FormValues, units?: Readonly<Record<string, string>>): void;
  fillExample(): void;
  clear(): void;
}

/** The inputs of a form and what it may be filled with. */
export interface FormData {
  readonly inputs: readonly FieldData[];
  readonly exampleValues: FormValues;
}

/** What stands in the form. It starts with the worked example, as the built page does, unless other values are given. */
export function useForm(data: FormData, start: FormValues = data.exampleValues): Form {
  const [state, dispatch] = useReducer(reduce, { values: start, units: {}, touched: untouched, edited: false });
  const actions = useMemo(
    () => ({
      change: (path: Path, entry: Entry | Rows) => dispatch({ type: 'entry', path, entry }),
      left: (path: Path) => dispatch({ type: 'left', path }),
      chooseUnit: (key: string, unit: string) => dispatch({ type: 'unit', key, unit }),
      fill: (values: FormValues, units?: Readonly<Record<string, string>>) =>
        dispatch({ type: 'fill', values, edited: false, ...(units === undefined ? {} : { units }) }),
      fillExample: () => dispatch({ type: 'fill', values: data.exampleValues, edited: true }),
      clear: () => dispatch({ type: 'fill', values: emptyValues(data.inputs), edited: true }),
    }),
    [data],
  );
  return { ...state, ...actions };
}
