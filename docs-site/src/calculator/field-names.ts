import type { Path } from '@wallflow/calculation';
import type { FieldData } from '../data/types.js';

/** The input at a path such as `['readings', 2, 'flow']` or `['ambient', 'pressure']`. */
export function fieldAt(fields: readonly FieldData[], path: Path): FieldData | undefined {
  const [key, row, ...rest] = path;
  const field = fields.find((candidate) => candidate.key === key);
  if (field?.type === 'group' && row !== undefined) return fieldAt(field.item, [row, ...rest]);
  return field?.type === 'list' && typeof row === 'number' ? fieldAt(field.item, rest) : field;
}

/** The words a person reads for a path: `Readings, row 2: Exhaust mass flow`. */
export function fieldLabel(fields: readonly FieldData[], path: Path): string | undefined {
  const [key, row, ...rest] = path;
  const field = fields.find((candidate) => candidate.key === key);
  if (field?.type === 'group') {
    const inner = row === undefined ? undefined : fieldLabel(field.item, [row, ...rest]);
    return inner === undefined ? field.label : `${field.label}: ${inner}`;
  }
  if (field?.type !== 'list' || typeof row !== 'number') return field?.label;
  const inner = fieldLabel(field.item, rest);
  return inner === undefined ? `${field.label}, row ${row + 1}` : `${field.label}, row ${row + 1}: ${inner}`;
}
