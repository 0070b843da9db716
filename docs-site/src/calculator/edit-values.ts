import type { Path } from '@wallflow/calculation';
import type { Entry, FieldData, FormValues, Rows } from '../data/types.js';
import { emptyValues, isRows } from './form-values.js';

/** What stands at a path such as `['readings', 2, 'flow']`. */
export function entryAt(values: FormValues, path: Path): Entry | Rows | undefined {
  const [key, row, ...rest] = path;
  const found = values[String(key)];
  if (row === undefined || !isRows(found)) return found;
  // Of a group there is one record, and its inputs stand right behind its key.
  const inner = found.rows[typeof row === 'number' ? row : 0];
  return inner === undefined ? undefined : entryAt(inner, typeof row === 'number' ? rest : [row, ...rest]);
}

/** The form with one entry or list replaced. */
export function withEntry(values: FormValues, path: Path, entry: Entry | Rows): FormValues {
  const [key, row, ...rest] = path;
  const name = String(key);
  if (row === undefined) return { ...values, [name]: entry };
  const list = values[name];
  if (!isRows(list)) return values;
  const [at, below] = typeof row === 'number' ? [row, rest] : [0, [row, ...rest]];
  return { ...values, [name]: { rows: list.rows.map((inner, index) => (index === at ? withEntry(inner, below, entry) : inner)) } };
}

/** The list with an empty row behind the last; units are taken over from it, as readings come in one unit. */
export function withRowAdded(list: Rows, item: readonly FieldData[]): Rows {
  const empty = emptyValues(item);
  const last = list.rows.at(-1);
  const row = Object.fromEntries(
    Object.entries(empty).map(([key, entry]) => {
      const above = last?.[key];
      return [key, above !== undefined && !isRows(above) && !isRows(entry) ? { text: '', unit: above.unit } : entry];
    }),
  );
  return { rows: [...list.rows, row] };
}

export function withRowRemoved(list: Rows, row: number): Rows {
  return { rows: list.rows.filter((_, index) => index !== row) };
}

/** What a cell says: a choice may be written by its words as well as by its key. */
function cellText(field: FieldData, cell: string): string {
  if (field.type !== 'choice') return cell;
  return field.options.find((option) => option.label.toLowerCase() === cell.toLowerCase())?.key ?? cell;
}

type ReadQuantity = (kind: string, text: string, unit: string) => Entry;

/** A pasted cell in its field; a unit that stands in the cell moves into the select. */
function cellEntry(field: FieldData, cell: string, unit: string, read: ReadQuantity | undefined): Entry {
  if (field.type === 'quantity' && read !== undefined && cell !== '') return { ...read(field.kind, cell, unit), own: true };
  return { text: cellText(field, cell), unit, own: true };
}

/** Rows pasted from a spreadsheet: one per line, cells parted by tabs, else semicolons, else commas. */
export function pastedRows(text: string, item: readonly FieldData[], units: readonly string[], read?: ReadQuantity): Rows {
  const lines = text.split(/\r?\n/).filter((line) => line.trim() !== '');
  const rows = lines.map((line) => {
    const separator = line.includes('\t') ? '\t' : line.includes(';') ? ';' : ',';
    const cells = line.split(separator).map((cell) => cell.trim());
    return Object.fromEntries(item.map((field, index) => [field.key, cellEntry(field, cells[index] ?? '', units[index] ?? '', read)]));
  });
  return { rows };
}
