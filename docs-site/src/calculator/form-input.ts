import type { Entry, FieldData, FormValues, Rows, ScalarFieldData } from '../data/types.js';
import { emptyValues, isRows } from './form-values.js';
import { quantityEntry, quantityText } from './unit-text.js';

function plainText(field: ScalarFieldData, entry: Entry): string {
  return field.type === 'quantity' ? quantityText(entry) : entry.text;
}

/** The input that the calculation gets: fields that were left empty are left out, and nothing is guessed. */
export function toInput(fields: readonly FieldData[], values: FormValues): Record<string, unknown> {
  const input: Record<string, unknown> = {};
  for (const field of fields) {
    const entry = values[field.key];
    if (entry === undefined) continue;
    if (field.type === 'group') {
      input[field.key] = toInput(field.item, isRows(entry) ? (entry.rows[0] ?? {}) : {});
    } else if (field.type === 'list') {
      if (isRows(entry) && (entry.rows.length > 0 || !field.optional)) input[field.key] = entry.rows.map((row) => toInput(field.item, row));
    } else if (!isRows(entry) && entry.text.trim() !== '') {
      input[field.key] = plainText(field, entry);
    }
  }
  return input;
}

function scalarEntry(field: ScalarFieldData, raw: unknown): Entry {
  if (field.type === 'flag' && typeof raw === 'boolean') return { text: raw ? 'yes' : 'no', unit: '' };
  if (field.type !== 'quantity') return { text: typeof raw === 'object' ? JSON.stringify(raw) : String(raw), unit: '' };
  const text = typeof raw === 'object' && raw !== null ? recordText(raw) : String(raw);
  return quantityEntry(field.kind, text, field.unit);
}

function recordText(raw: object): string {
  const { value, unit, uncertainty } = raw as { value?: unknown; unit?: unknown; uncertainty?: unknown };
  const spread = uncertainty === undefined ? '' : ` ± ${String(uncertainty)}`;
  return `${String(value)}${spread} ${String(unit)}`;
}

function isRecord(raw: unknown): raw is Readonly<Record<string, unknown>> {
  return typeof raw === 'object' && raw !== null && !Array.isArray(raw);
}

/** Fill the form from an input as a definition, a reference case or a link writes it. */
export function fromInput(fields: readonly FieldData[], input: Readonly<Record<string, unknown>>): FormValues {
  const values: Record<string, Entry | Rows> = { ...emptyValues(fields) };
  for (const field of fields) {
    if (!Object.hasOwn(input, field.key)) continue;
    const raw = input[field.key];
    if (raw === undefined || raw === null) continue;
    if (field.type === 'group') values[field.key] = { rows: [fromInput(field.item, isRecord(raw) ? raw : {})] };
    else if (field.type !== 'list') values[field.key] = scalarEntry(field, raw);
    else if (Array.isArray(raw)) {
      values[field.key] = { rows: raw.map((row) => fromInput(field.item, (row ?? {}) as Record<string, unknown>)) };
    }
  }
  return values;
}
