import { type ReactNode, useState } from 'react';
import type { FieldData } from '../../data/types.js';
import { Fields } from './Fields.js';
import styles from './fields.module.css';
import type { FieldsProps } from './fields-props.js';
import { FormFieldsContext } from './labels.js';

const fewest = 3;

function hasError(fields: readonly FieldData[], errors: ReadonlyMap<string, string>): boolean {
  return fields.some((field) => errors.has(field.key));
}

/** All inputs of a calculation: first what must be known, then, folded, what is assumed unless it is stated. */
export function FormFields(props: Omit<FieldsProps, 'path'>): ReactNode {
  return (
    <FormFieldsContext.Provider value={props.fields}>
      <Parts {...props} />
    </FormFieldsContext.Provider>
  );
}

function Parts({ fields, ...rest }: Omit<FieldsProps, 'path'>): ReactNode {
  const [open, setOpen] = useState(false);
  const assumed = fields.filter((field) => field.default !== undefined);
  if (assumed.length < fewest || assumed.length === fields.length) return <Fields fields={fields} {...rest} />;
  const needed = fields.filter((field) => field.default === undefined);
  return (
    <>
      <Fields fields={needed} {...rest} />
      <details
        className={styles.assumed}
        open={open || hasError(assumed, rest.messages.errors)}
        onToggle={(event) => setOpen(event.currentTarget.open)}
      >
        <summary>{assumed.length} more, each with a value that is assumed while it stays empty</summary>
        <Fields fields={assumed} {...rest} />
      </details>
    </>
  );
}
