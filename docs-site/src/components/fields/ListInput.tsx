import { type ReactNode, useRef, useState } from 'react';
import { entryAt, pastedRows, withRowAdded, withRowRemoved } from '../../calculator/edit-values.js';
import { isRows } from '../../calculator/form-values.js';
import { pathKey } from '../../calculator/path-key.js';
import type { InputTools } from '../../calculator/use-input-tools.js';
import type { FieldData, ListFieldData, Rows } from '../../data/types.js';
import styles from './fields.module.css';
import { type FieldsProps, inputId } from './fields-props.js';
import { UndoNotice } from './UndoNotice.js';

interface ListInputProps extends Omit<FieldsProps, 'fields' | 'path'> {
  readonly field: ListFieldData;
  readonly path: readonly (string | number)[];
  /** The inputs of one row. */
  readonly children: (row: number) => ReactNode;
}

interface PasteRowsProps {
  readonly field: ListFieldData;
  readonly list: Rows;
  readonly tools: InputTools | undefined;
  onRows(rows: Rows): void;
}

/** The unit that a pasted number without one gets: the one that is chosen in the last row. */
function columnUnit(column: FieldData, list: Rows): string {
  if (column.type !== 'quantity') return '';
  const last = list.rows.at(-1)?.[column.key];
  return last === undefined || isRows(last) ? column.unit : last.unit;
}

function PasteRows({ field, list, tools, onRows }: PasteRowsProps): ReactNode {
  const [text, setText] = useState('');
  const id = `paste-${field.key}`;
  const columns = field.item.map((column) =>
    column.type === 'quantity'
      ? `${column.label} in ${tools?.symbolOf(column.kind, columnUnit(column, list)) ?? columnUnit(column, list)}`
      : column.label,
  );
  return (
    <details className={styles.paste}>
      <summary>Paste rows from a spreadsheet</summary>
      <label htmlFor={id}>One row per line: {columns.join(', ')}</label>
      <textarea id={id} rows={5} value={text} onChange={(event) => setText(event.target.value)} spellCheck={false} />
      <button
        type="button"
        disabled={text.trim() === '' || tools === undefined}
        onClick={() =>
          onRows(
            pastedRows(
              text,
              field.item,
              field.item.map((column) => columnUnit(column, list)),
              tools?.quantityEntry,
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
export function ListInput({ field, path, form, tools, messages, children }: ListInputProps): ReactNode {
  const found = entryAt(form.values, path);
  const list: Rows = isRows(found) ? found : { rows: [] };
  const key = pathKey(path);
  const error = messages.errors.get(key);
  const box = useRef<HTMLFieldSetElement>(null);
  const remove = (row: number) => {
    form.changeRows(path, withRowRemoved(list, row), `Row ${row + 1} is removed.`);
    // The button that had the focus goes with its row: the focus moves to the row that took its place, else to adding one.
    requestAnimationFrame(() => {
      const left = [...(box.current?.querySelectorAll<HTMLButtonElement>('[data-remove-row]:not(:disabled)') ?? [])];
      (left[Math.min(row, left.length - 1)] ?? box.current?.querySelector<HTMLButtonElement>('[data-add-row]'))?.focus();
    });
  };
  return (
    <fieldset
      ref={box}
      id={inputId(key)}
      className={styles.list}
      aria-describedby={error === undefined ? undefined : `${inputId(key)}-error`}
    >
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
                data-remove-row
                disabled={list.rows.length <= (field.optional ? 0 : field.min)}
                aria-label={`Remove row ${row + 1} of ${field.label}`}
                onClick={() => remove(row)}
              >
                Remove
              </button>
            </div>
            <div className={styles.rowFields}>{children(row)}</div>
          </li>
        ))}
      </ol>
      <UndoNotice form={form} at={key} />
      <button
        type="button"
        className={styles.small}
        data-add-row
        disabled={list.rows.length >= field.max}
        onClick={() => form.change(path, withRowAdded(list, field.item))}
      >
        Add a row
      </button>
      {field.max > 4 ? (
        <PasteRows field={field} list={list} tools={tools} onRows={(rows) => form.changeRows(path, rows, 'The rows are replaced.')} />
      ) : null}
    </fieldset>
  );
}
