import type { Entry, FieldData, FormValues, Rows, ScalarFieldData } from '../data/types.js';

/** Whether an entry holds the rows of a list. */
export function isRows(entry: Entry | Rows | undefined): entry is Rows {
  return entry !== undefined && 'rows' in entry;
}

function emptyEntry(field: ScalarFieldData): Entry {
  return { text: '', unit: field.type === 'quantity' ? field.unit : '' };
}

/** A form with nothing filled in; lists keep the rows that they need at least, unless they may be left out. */
export function emptyValues(fields: readonly FieldData[]): FormValues {
  return Object.fromEntries(
    fields.map((field) =>
      field.type === 'list'
        ? [field.key, { rows: Array.from({ length: field.optional ? 0 : field.min }, () => emptyValues(field.item)) }]
        : [field.key, emptyEntry(field)],
    ),
  );
}
