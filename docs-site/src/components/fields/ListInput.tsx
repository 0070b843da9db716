import { type ReactNode, useState } from 'react';
import { entryAt, pastedRows, withRowAdded, withRowRemoved } from '../../calculator/edit-values.js';
import { isRows } from '../../calculator/form-values.js';
import { pathKey } from '../../calculator/path-key.js';
import type { ListFieldData, Rows } from '../../data/types.js';
import styles from './fields.module.css';
import { type FieldsProps, inputId } from './fields-props.js';

interface ListInputProps extends Omit<FieldsProps, 'fields' | 'path' | 'tools'> {
  readonly field: ListFieldData;
  readonly path: readonly (string | number)[];
  /** The inputs of one row. */
  readonly children: (row: number) => ReactNode;
}

function PasteRows({ field, onRows }: { readonly field: ListFieldData; onRows(rows: Rows): void }): ReactNode {
  const [text, setText] = useState('');
  const id = `paste-${field.key}`;
  const columns = field.item.map((column) =>
    column.type === 'quantity' ? `${column.label} in ${column.units[0]?.symbol ?? ''}` : column.label,
  );
  return (
    <details className={styles.paste}>
      <summary>Paste rows from a spreadsheet</summary>
      <label htmlFor={id}>One row per line: {columns.join(', ')}</label>
      <textarea id={id} rows={5} value={text} onChange={(event) => setText(event.target.value)} spellCheck={false} />
      <button
        type="button"
        disabled={text.trim() === ''}
        onClick={() =>
          onRows(
            pastedRows(
              text,
              field.item,
              field.item.map((column) => (column.type === 'quantity' ? (column.units[0]?.id ?? '') : '')),
            ),
          )
        }
      >
        Replace the rows with these
      </button>
    </details>
  );
}

/** Rows that can be added, removed and pasted, each with inputs of its own. */
export function ListInput({ field, path, form, messages, children }: ListInputProps): ReactNode {
  const found = entryAt(form.values, path);
  const list: Rows = isRows(found) ? found : { rows: [] };
  const key = pathKey(path);
  const error = messages.errors.get(key);
  const change = (rows: Rows) => form.change(path, rows);
  return (
    <fieldset id={inputId(key)} className={styles.list} aria-describedby={error === undefined ? undefined : `${inputId(key)}-error`}>
      <legend className={styles.listLegend}>{field.label}</legend>
      {field.description === undefined ? null : <p className={styles.hint}>{field.description}</p>}
      {error === undefined ? null : (
        <p id={`${inputId(key)}-error`} className={styles.error}>
          {error}
        </p>
      )}
      <ol className={styles.rows}>
        {list.rows.map((_, row) => (
          <li key={row} className={styles.listRow}>
            <div className={styles.rowHead}>
              <span>Row {row + 1}</span>
              <button
                type="button"
                className={styles.small}
                disabled={list.rows.length <= (field.optional ? 0 : field.min)}
                aria-label={`Remove row ${row + 1} of ${field.label}`}
                onClick={() => change(withRowRemoved(list, row))}
              >
                Remove
              </button>
            </div>
            <div className={styles.rowFields}>{children(row)}</div>
          </li>
        ))}
      </ol>
      <button
        type="button"
        className={styles.small}
        disabled={list.rows.length >= field.max}
        onClick={() => change(withRowAdded(list, field.item))}
      >
        Add a row
      </button>
      {field.max > 4 ? <PasteRows field={field} onRows={change} /> : null}
    </fieldset>
  );
}
