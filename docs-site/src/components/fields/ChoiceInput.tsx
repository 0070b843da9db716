import type { ReactNode } from 'react';
import type { ChoiceFieldData, Entry, FlagFieldData } from '../../data/types.js';
import { describedBy, FieldNotes, type FieldProps, LabelText } from './FieldFrame.js';
import styles from './fields.module.css';

interface ChoiceInputProps extends FieldProps<ChoiceFieldData | FlagFieldData> {
  readonly entry: Entry;
  onText(text: string): void;
}

const mostRadios = 5;

function optionsOf(field: ChoiceFieldData | FlagFieldData): { readonly key: string; readonly label: string }[] {
  const own =
    field.type === 'choice'
      ? [...field.options]
      : [
          { key: 'yes', label: 'Yes' },
          { key: 'no', label: 'No' },
        ];
  if (field.default !== undefined) return [...own, { key: '', label: `Not stated (${field.default})` }];
  return field.optional ? [...own, { key: '', label: 'Not known' }] : own;
}

/** One of a few named possibilities; what may stay open can be set to not known. */
export function ChoiceInput({ field, id, error, warning, row, entry, onText }: ChoiceInputProps): ReactNode {
  const options = optionsOf(field);
  if (options.length > mostRadios) {
    return (
      <div className={styles.field}>
        <label htmlFor={id} className={styles.label}>
          <LabelText field={field} row={row} example={entry.example} />
        </label>
        <select
          id={id}
          className={styles.select}
          value={entry.text}
          aria-invalid={error !== undefined}
          aria-describedby={describedBy(id, error)}
          onChange={(event) => onText(event.target.value)}
        >
          {options.some((option) => option.key === '') ? null : <option value="">Choose…</option>}
          {options.map((option) => (
            <option key={option.key} value={option.key}>
              {option.label}
            </option>
          ))}
        </select>
        <FieldNotes field={field} id={id} error={error} warning={warning} />
      </div>
    );
  }
  return (
    <fieldset id={id} className={styles.field} aria-describedby={describedBy(id, error)}>
      <legend className={styles.label}>
        <LabelText field={field} row={row} example={entry.example} />
      </legend>
      <div className={styles.radios}>
        {options.map((option) => (
          <label key={option.key} className={styles.radio}>
            <input
              type="radio"
              name={id}
              value={option.key}
              checked={entry.text === option.key}
              onChange={(event) => onText(event.target.value)}
            />
            <span>{option.label}</span>
          </label>
        ))}
      </div>
      <FieldNotes field={field} id={id} error={error} warning={warning} />
    </fieldset>
  );
}
