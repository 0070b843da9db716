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
      field.type === 'group'
        ? [field.key, { rows: [emptyValues(field.item)] }]
        : field.type === 'list'
          ? [field.key, { rows: Array.from({ length: field.optional ? 0 : field.min }, () => emptyValues(field.item)) }]
          : [field.key, emptyEntry(field)],
    ),
  );
}

/** What was put into the scalar fields of a form, rows included. */
function entered(values: FormValues): Entry[] {
  return Object.values(values)
    .flatMap((entry) => (isRows(entry) ? entry.rows.flatMap(entered) : [entry]))
    .filter((entry) => entry.text.trim() !== '');
}

/** Whether nothing stands in the form. */
export function isBlank(values: FormValues): boolean {
  return entered(values).length === 0;
}

function marked(entry: Entry | Rows): Entry | Rows {
  if (isRows(entry)) return { rows: entry.rows.map(asExample) };
  return entry.text.trim() === '' ? entry : { ...entry, example: true };
}

/** The values of the worked example, each marked as such, so that none passes for a reading later. */
export function asExample(values: FormValues): FormValues {
  return Object.fromEntries(Object.entries(values).map(([key, entry]) => [key, marked(entry)]));
}

/** Keys of the fields that still hold something of the example. */
export function keysOfExample(values: FormValues): string[] {
  return Object.entries(values)
    .filter(([, entry]) => (isRows(entry) ? entry.rows.flatMap(entered).some(({ example }) => example) : entry.example === true))
    .map(([key]) => key);
}
