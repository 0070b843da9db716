import { readFileSync } from 'node:fs';
import type { EvaluationRow } from '@wallflow/workshop/cases';

export interface StoredRow extends EvaluationRow {
  readonly version: number;
}

/** The answers to generated cases, as `npm run evaluate` stored them. */
export function readEvaluation(): StoredRow[] {
  const text = readFileSync(new URL('../evaluation/rows.jsonl', import.meta.url), 'utf8');
  return text
    .trimEnd()
    .split('\n')
    .map((line) => JSON.parse(line) as StoredRow);
}
