import type { ReactNode } from 'react';
import type { Form } from '../../calculator/use-form.js';
import styles from './fields.module.css';

/** Says what went at one tap, and brings it back at another. */
export function UndoNotice({ form, at }: { readonly form: Form; readonly at: string }): ReactNode {
  const undo = form.undo?.at === at ? form.undo : undefined;
  return (
    <div className={styles.undo}>
      <span role="status">{undo?.text ?? ''}</span>
      {undo === undefined ? null : (
        <button type="button" className={styles.small} onClick={form.undoWipe}>
          Undo
        </button>
      )}
    </div>
  );
}
