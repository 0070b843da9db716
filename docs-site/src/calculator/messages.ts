import type { FieldData, ResultView } from '../data/types.js';

/** What the page asks of the worker: one run of the calculation that it was started for. */
export interface Question {
  readonly turn: number;
  readonly id: string;
  readonly fields: readonly FieldData[];
  readonly input: Readonly<Record<string, unknown>>;
  readonly units: Readonly<Record<string, string>>;
}

/** Asks the worker to load a calculation before it is needed. */
export interface Preparation {
  readonly prepare: string;
}

/** What the worker answers; `failed` when the calculation itself could not be loaded, `loaded` the files that it took. */
export type Answer =
  | { readonly turn: number; readonly view: ResultView }
  | { readonly turn: number; readonly failed: true }
  | { readonly loaded: readonly string[] };
