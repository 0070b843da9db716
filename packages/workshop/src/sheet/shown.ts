import { type Outputs, type Presented, presentValue } from '@wallflow/calculation';
import type { Evaluation } from '../job/evaluation.js';

/** Digits that log averages carry at most: more would claim what the sensors do not give. */
const measuredDigits = 3;

/** An output or intermediate of an evaluation as text, in the first or a named unit. */
export function shown(evaluation: Evaluation, key: string, unit?: string): string {
  const { spec } = evaluation.calculation;
  const fields: Outputs = { ...spec.intermediates, ...spec.outputs };
  const field = fields[key];
  const value = ({ ...evaluation.result.intermediates, ...evaluation.result.outputs } as Readonly<Record<string, unknown>>)[key];
  if (field === undefined) throw new Error(`${evaluation.calculation.id} has no ${key}`);
  if (value === undefined) return 'not known';
  const digits = Math.min(measuredDigits, evaluation.result.inputDigits);
  // The scatter of the readings stands beside them, and in the verdicts; on every figure it would claim more than it knows.
  const presented: Presented = presentValue(field, value, digits, undefined, unit);
  return presented.type === 'table' ? `${presented.rows.length} rows` : presented.text;
}
