import type { Path } from '@wallflow/calculation';
import { useMemo, useReducer } from 'react';
import type { Entry, FieldData, FormValues, Rows } from '../data/types.js';
import { withEntry } from './edit-values.js';
import { asExample, emptyValues } from './form-values.js';
import { pathKey } from './path-key.js';

export interface FormState {
  readonly values: FormValues;
  /** Units chosen for results. */
  readonly units: Readonly<Record<string, string>>;
  /** Fields that the user has left, by path; an empty field is complained about only then. */
  readonly touched: ReadonlySet<string>;
  /** Whether the user has changed anything since the page was opened. */
  readonly edited: boolean;
  /** What the last wipe took away, so that it can be brought back. */
  readonly undo?: Undo;
}

/** A form as it stood before several values went at once. */
export interface Undo {
  readonly values: FormValues;
  readonly units: Readonly<Record<string, string>>;
  /** Where the way back is offered: the path of a list, or empty for the whole form. */
  readonly at: string;
  /** What happened, as a sentence. */
  readonly text: string;
}

type Action =
  | { readonly type: 'entry'; readonly path: Path; readonly entry: Entry | Rows }
  | { readonly type: 'wipe'; readonly values: FormValues; readonly at: string; readonly text: string }
  | { readonly type: 'rows'; readonly path: Path; readonly rows: Rows; readonly text: string }
  | { readonly type: 'undo' }
  | { readonly type: 'left'; readonly path: Path }
  | { readonly type: 'unit'; readonly key: string; readonly unit: string }
  | { readonly type: 'fill'; readonly values: FormValues; readonly units?: Readonly<Record<string, string>> };

const untouched: ReadonlySet<string> = new Set();

function taken({ values, units }: FormState, at: string, text: string): Undo {
  return { values, units, at, text };
}

function reduce(state: FormState, action: Action): FormState {
  switch (action.type) {
    case 'entry':
      return { ...state, values: withEntry(state.values, action.path, action.entry), edited: true };
    case 'left':
      return { ...state, touched: new Set([...state.touched, pathKey(action.path)]) };
    case 'unit':
      return { ...state, units: { ...state.units, [action.key]: action.unit }, edited: true };
    case 'fill':
      return { values: action.values, units: action.units ?? {}, touched: untouched, edited: false };
    case 'wipe':
      return { values: action.values, units: {}, touched: untouched, edited: true, undo: taken(state, action.at, action.text) };
    case 'rows':
      return {
        ...state,
        values: withEntry(state.values, action.path, action.rows),
        edited: true,
        undo: taken(state, pathKey(action.path), action.text),
      };
    case 'undo': {
      if (state.undo === undefined) return state;
      const { values, units, at } = state.undo;
      return { values, units, touched: untouched, edited: true, undo: taken(state, at, 'Brought back.') };
    }
  }
}

export interface Form extends FormState {
  /** The form filled with the worked example; the same object each time. */
  readonly example: FormValues;
  change(path: Path, entry: Entry | Rows): void;
  left(path: Path): void;
  chooseUnit(key: string, unit: string): void;
  /** Replace or remove rows of a list; `text` says what happened. */
  changeRows(path: Path, rows: Rows, text: string): void;
  fill(values: FormValues, units?: Readonly<Record<string, string>>): void;
  /** Replace values by others that the user asked for; `text` says what happened. */
  replace(values: FormValues, text: string): void;
  fillExample(): void;
  clear(): void;
  /** Bring back what the last wipe took away; once more, and the wipe is done again. */
  undoWipe(): void;
}

/** The inputs of a form and what it may be filled with. */
export interface FormData {
  readonly inputs: readonly FieldData[];
  readonly exampleValues: FormValues;
}

/** What stands in the form. It starts empty: a number that nobody has read is never there by itself. */
export function useForm(data: FormData): Form {
  const [empty, example] = useMemo(() => [emptyValues(data.inputs), asExample(data.exampleValues)], [data]);
  const [state, dispatch] = useReducer(reduce, { values: empty, units: {}, touched: untouched, edited: false });
  const actions = useMemo(
    () => ({
      change: (path: Path, entry: Entry | Rows) => dispatch({ type: 'entry', path, entry }),
      left: (path: Path) => dispatch({ type: 'left', path }),
      chooseUnit: (key: string, unit: string) => dispatch({ type: 'unit', key, unit }),
      fill: (values: FormValues, units?: Readonly<Record<string, string>>) =>
        dispatch({ type: 'fill', values, ...(units === undefined ? {} : { units }) }),
      changeRows: (path: Path, rows: Rows, text: string) => dispatch({ type: 'rows', path, rows, text }),
      replace: (values: FormValues, text: string) => dispatch({ type: 'wipe', values, at: '', text }),
      fillExample: () => dispatch({ type: 'wipe', values: example, at: '', text: 'The example is filled in.' }),
      clear: () => dispatch({ type: 'wipe', values: empty, at: '', text: 'Everything is cleared.' }),
      undoWipe: () => dispatch({ type: 'undo' }),
    }),
    [empty, example],
  );
  return { ...state, ...actions, example };
}
