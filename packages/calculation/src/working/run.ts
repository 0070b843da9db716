import type { Writing } from '../formula/render.js';
import type { Given } from '../given.js';
import { unitTex } from '../tex.js';
import { type Names, symbolTex } from './scope.js';

type Values = Readonly<Record<string, unknown>>;

/** What of a result its working rests on. */
export interface WorkedResult {
  readonly values: Values;
  readonly inputDigits: number;
  /** Uncertainty of each value, SI. */
  readonly uncertainty: Readonly<Record<string, number>>;
}

/** One run, as its working sees it. */
export interface Run {
  readonly names: Names;
  readonly given: Given;
  readonly result: WorkedResult;
  /** Inputs whose change of unit has been shown. */
  readonly changed: Set<string>;
}

/** Names of a formula in symbols, units upright. */
export function symbols(names: Names): Writing {
  return {
    name: ({ key, column }) => {
      const symbol = symbolTex(column === undefined ? names.get(key)?.field : names.column(key, column), column ?? key);
      return key === 'previous' ? `{${symbol}}_{\\text{before}}` : symbol;
    },
    unit: (unit) => unitTex(unit),
  };
}

/** Names of a formula in words. */
export function words(names: Names): (name: { readonly key: string; readonly column?: string }) => string {
  return ({ key, column }) => (column === undefined ? names.get(key)?.field : names.column(key, column))?.label ?? column ?? key;
}
