import type { ReactNode } from 'react';
import type { CountFieldData, Entry, TextFieldData } from '../../data/types.js';
import { describedBy, FieldNotes, type FieldProps, LabelText } from './FieldFrame.js';
import styles from './fields.module.css';

interface PlainInputProps extends FieldProps<CountFieldData | TextFieldData> {
  readonly entry: Entry;
  onText(text: string): void;
  onLeave(): void;
}

/** A whole number or a short text. */
export function PlainInput({ field, id, error, warning, row, entry, onText, onLeave }: PlainInputProps): ReactNode {
  return (
    <div className={styles.field}>
      <label htmlFor={id} className={styles.label}>
        <LabelText field={field} row={row} example={entry.example} />
      </label>
      <input
        id={id}
        className={styles.text}
        type="text"
        inputMode={field.type === 'count' ? 'numeric' : 'text'}
        autoComplete="off"
        value={entry.text}
        placeholder={`e.g. ${field.example}`}
        aria-invalid={error !== undefined}
        aria-describedby={describedBy(id, error)}
        onChange={(event) => onText(event.target.value)}
        onBlur={onLeave}
      />
      <FieldNotes field={field} id={id} error={error} warning={warning} />
    </div>
  );
}
