import { type ReactNode, useState } from 'react';
import { countingFields } from '../../calculator/counting.js';
import { pathKey } from '../../calculator/path-key.js';
import type { FieldData } from '../../data/types.js';
import { Fields } from './Fields.js';
import styles from './fields.module.css';
import type { FieldsProps } from './fields-props.js';
import { FormFieldsContext } from './labels.js';

const fewest = 3;

function hasError(fields: readonly FieldData[], errors: ReadonlyMap<string, string>, path: NonNullable<FieldsProps['path']>): boolean {
  return fields.some((field) => errors.has(pathKey([...path, field.key])));
}

/** All inputs of a calculation, or of a section: first what must be known, then, folded, what is assumed unless it is stated. */
export function FormFields(props: FieldsProps): ReactNode {
  return (
    <FormFieldsContext.Provider value={{ fields: props.fields, path: props.path ?? [] }}>
      <Parts {...props} />
    </FormFieldsContext.Provider>
  );
}

function Parts({ fields: all, path = [], ...rest }: FieldsProps): ReactNode {
  const record = { fields: all, path };
  const fields = countingFields(all, record, record, rest.form.values);
  const [open, setOpen] = useState(false);
  const assumed = fields.filter((field) => field.default !== undefined);
  if (assumed.length < fewest || assumed.length === fields.length) return <Fields fields={fields} path={path} {...rest} />;
  const needed = fields.filter((field) => field.default === undefined);
  return (
    <>
      <Fields fields={needed} path={path} {...rest} />
      <details
        className={styles.assumed}
        open={open || hasError(assumed, rest.messages.errors, path)}
        onToggle={(event) => setOpen(event.currentTarget.open)}
      >
        <summary>{assumed.length} more, each with a value that is assumed while it stays empty</summary>
        <Fields fields={assumed} path={path} {...rest} />
      </details>
    </>
  );
}
