import type { Path } from '@wallflow/calculation';
import type { FieldData } from '../data/types.js';

/** The input at a path such as `['readings', 2, 'flow']`. */
export function fieldAt(fields: readonly FieldData[], path: Path): FieldData | undefined {
  const [key, row, ...rest] = path;
  const field = fields.find((candidate) => candidate.key === key);
  return field?.type === 'list' && typeof row === 'number' ? fieldAt(field.item, rest) : field;
}

/** The words a person reads for a path: `Readings, row 2: Exhaust mass flow`. */
export function fieldLabel(fields: readonly FieldData[], path: Path): string | undefined {
  const [key, row, ...rest] = path;
  const field = fields.find((candidate) => candidate.key === key);
  if (field === undefined) return undefined;
  if (field.type !== 'list' || typeof row !== 'number') return field.label;
  const inner = fieldLabel(field.item, rest);
  // A list of one is a section of the form.
  if (field.max === 1) return inner === undefined ? field.label : `${field.label}: ${inner}`;
  return inner === undefined ? `${field.label}, row ${row + 1}` : `${field.label}, row ${row + 1}: ${inner}`;
}
