import { type Kind, type KindName, numbersFromSI } from '@wallflow/units';
import type { Failure } from '../definition.js';
import type { Warning } from '../issue.js';
import type { OutputField, Outputs } from '../outputs.js';
import type { ColumnResult, RowIssues, RowWarnings } from './types.js';

/** Which results are wanted as columns, and in which units; SI where none is named. */
export interface ColumnOptions {
  readonly results: readonly string[];
  readonly units?: Readonly<Record<string, string | undefined>>;
}

/** What a row gave, outputs and intermediates by key. */
export interface RowValues {
  readonly ok: true;
  readonly values: Readonly<Record<string, unknown>>;
  readonly warnings: readonly Warning[];
}

interface Filling {
  readonly key: string;
  readonly list: Float64Array | unknown[];
  put(row: number, value: unknown): void;
}

function fillingOf(key: string, field: OutputField, length: number, unit: string | undefined): Filling {
  if (field.type !== 'quantity' && field.type !== 'count') {
    const list: unknown[] = new Array(length).fill(undefined);
    return {
      key,
      list,
      put: (row, value) => {
        list[row] = value;
      },
    };
  }
  const list = new Float64Array(length).fill(Number.NaN);
  const shown =
    unit === undefined || field.type === 'count' ? (si: number) => si : numbersFromSI(field.kind as Kind<KindName>, unit as never);
  return {
    key,
    list,
    put: (row, value) => {
      if (value !== undefined) list[row] = shown(value as number);
    },
  };
}

/** Work out rows one after the other and put what they give into columns. */
export function columnResult(
  fields: Outputs,
  length: number,
  { results, units = {} }: ColumnOptions,
  rowAt: (row: number) => RowValues | Failure,
): ColumnResult<Outputs> {
  const fillings = results.map((key) => {
    const field = fields[key];
    if (field === undefined) throw new TypeError(`${key} is no result of this calculation`);
    return fillingOf(key, field, length, units[key]);
  });
  const issues: RowIssues[] = [];
  const warnings: RowWarnings[] = [];
  const warn = (row: number, said: readonly Warning[]) => {
    if (said.length > 0) warnings.push({ row, warnings: said });
  };
  for (let row = 0; row < length; row += 1) {
    const result = rowAt(row);
    if (!result.ok) {
      issues.push({ row, issues: result.issues });
      continue;
    }
    warn(row, result.warnings);
    for (let at = 0; at < fillings.length; at += 1) {
      const { key, put } = fillings[at] as Filling;
      put(row, result.values[key]);
    }
  }
  const columns = Object.fromEntries(fillings.map(({ key, list }) => [key, list]));
  return { rows: length, results: columns as ColumnResult<Outputs>['results'], issues, warnings };
}
