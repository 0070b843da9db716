import type { ReactNode } from 'react';
import type { UnitNote } from '../../calculator/unit-text.js';
import type { Entry, QuantityFieldData, UnitOffer } from '../../data/types.js';
import { describedBy, FieldNotes, type FieldProps, LabelText } from './FieldFrame.js';
import styles from './fields.module.css';
import { useKeypad } from './Keypad.js';

interface QuantityInputProps extends FieldProps<QuantityFieldData> {
  readonly entry: Entry;
  /** The sign of a unit; undefined until the units are loaded. */
  readonly symbolOf: ((kind: string, unit: string) => string) | undefined;
  /** What the last change of unit did with the number. */
  readonly note: UnitNote | undefined;
  onNote(entry: Entry): void;
  onText(text: string): void;
  onOffer(offer: UnitOffer): void;
  onUnit(unit: string): void;
  onLeave(): void;
}

/** A unit that was typed but is not offered still shows in the select. */
function offered(field: QuantityFieldData, unit: string, symbolOf: QuantityInputProps['symbolOf']): QuantityFieldData['units'] {
  return field.units.some((choice) => choice.id === unit)
    ? field.units
    : [...field.units, { id: unit, symbol: symbolOf?.(field.kind, unit) ?? unit }];
}

/** Whether a change of unit kept the number or converted it, and the other of the two at one tap. */
function ChangeOfUnit({ id, note, onNote }: { readonly id: string } & Pick<QuantityInputProps, 'note' | 'onNote'>): ReactNode {
  return (
    <div className={styles.unitNote}>
      <span id={`${id}-note`} role="status">
        {note?.text ?? ''}
      </span>
      {note === undefined ? null : (
        <button type="button" className={styles.small} onClick={() => onNote(note.entry)}>
          {note.action}
        </button>
      )}
    </div>
  );
}

/** A number with its unit in a select beside it; a unit typed behind the number counts instead. */
export function QuantityInput(props: QuantityInputProps): ReactNode {
  const { field, id, error, offers, warning, row, entry, note, symbolOf, onText, onOffer, onNote, onUnit, onLeave } = props;
  const { inputMode } = useKeypad();
  const units = offered(field, entry.unit, symbolOf);
  const unitless = units.length === 1 && (units[0]?.id === '1' || units[0]?.symbol === '');
  return (
    <div className={styles.field}>
      <label htmlFor={id} className={styles.label}>
        <LabelText field={field} row={row} example={entry.example} />
      </label>
      <div className={styles.row}>
        <input
          id={id}
          className={styles.text}
          type="text"
          inputMode={field.mayBeNegative ? 'text' : inputMode}
          autoComplete="off"
          autoCapitalize="off"
          spellCheck={false}
          value={entry.text}
          placeholder={`e.g. ${field.example}`}
          aria-invalid={error !== undefined}
          aria-describedby={describedBy(id, error)}
          onChange={(event) => onText(event.target.value)}
          onBlur={onLeave}
        />
        {unitless ? null : (
          <select
            className={styles.unit}
            aria-label={row === undefined ? `Unit of ${field.label}` : `Unit of ${field.label}, ${row}`}
            aria-describedby={note === undefined ? undefined : `${id}-note`}
            value={entry.unit}
            onChange={(event) => onUnit(event.target.value)}
          >
            {units.map((unit) => (
              <option key={unit.id} value={unit.id}>
                {unit.symbol}
              </option>
            ))}
          </select>
        )}
      </div>
      {unitless ? null : <ChangeOfUnit id={id} note={note} onNote={onNote} />}
      <FieldNotes field={field} id={id} error={error} offers={offers} warning={warning} onOffer={onOffer} />
    </div>
  );
}
