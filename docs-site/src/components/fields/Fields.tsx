import { type ReactNode, useContext } from 'react';
import { countingFields } from '../../calculator/counting.js';
import { entryAt } from '../../calculator/edit-values.js';
import { isRows } from '../../calculator/form-values.js';
import { pathKey } from '../../calculator/path-key.js';
import type { Entry, ScalarFieldData } from '../../data/types.js';
import { ChoiceInput } from './ChoiceInput.js';
import styles from './fields.module.css';
import { type FieldsProps, inputId } from './fields-props.js';
import { ListInput } from './ListInput.js';
import { FormFieldsContext } from './labels.js';
import { PlainInput } from './PlainInput.js';
import { QuantityInput } from './QuantityInput.js';

/** `row 2` for an input in a list, so that inputs of the same name are told apart. */
function rowName(path: readonly (string | number)[]): string | undefined {
  const row = path.findLast((part) => typeof part === 'number');
  return row === undefined ? undefined : `row ${row + 1}`;
}

function ScalarField({
  field,
  form,
  tools,
  messages,
  path,
}: Omit<FieldsProps, 'fields'> & { readonly field: ScalarFieldData; readonly path: readonly (string | number)[] }): ReactNode {
  const key = pathKey(path);
  const found = entryAt(form.values, path);
  const entry: Entry = found === undefined || isRows(found) ? { text: '', unit: '' } : found;
  const common = {
    id: inputId(key),
    error: messages.errors.get(key),
    offers: messages.offers.get(key),
    warning: messages.warnings.get(key),
    row: rowName(path),
  };
  const change = (next: Entry) => form.change(path, next);
  const typed = (text: string, unit = '') => change({ text, unit, own: true });
  const left = () => form.left(path);
  switch (field.type) {
    case 'quantity':
      return (
        <QuantityInput
          {...common}
          field={field}
          entry={entry}
          symbolOf={tools?.symbolOf}
          note={tools?.unitNote(field.kind, entry)}
          onNote={change}
          onText={(text) => change(tools?.typedEntry(field.kind, entry, text) ?? { text, unit: entry.unit, own: true })}
          onOffer={({ text, unit }) => typed(text, unit)}
          onUnit={(unit) => change(tools?.changeUnit(field.kind, entry, unit) ?? { text: entry.text, unit })}
          onLeave={left}
        />
      );
    case 'choice':
    case 'flag':
      return (
        <ChoiceInput
          {...common}
          field={field}
          entry={entry}
          onText={(text) => {
            typed(text);
            left();
          }}
        />
      );
    case 'count':
    case 'text':
      return <PlainInput {...common} field={field} entry={entry} onText={(text) => typed(text)} onLeave={left} />;
  }
}

/** One input for every field that counts with what is chosen. */
export function Fields({ fields, path = [], ...rest }: FieldsProps): ReactNode {
  const around = useContext(FormFieldsContext);
  const samePlace = pathKey(path) === pathKey(around.path);
  return countingFields(fields, samePlace ? around : { fields, path }, around, rest.form.values).map((field) => {
    const own = [...path, field.key];
    if (field.type === 'group') {
      return (
        <fieldset key={field.key} className={styles.list}>
          <legend className={styles.listLegend}>{field.label}</legend>
          {field.description === undefined ? null : <p className={styles.hint}>{field.description}</p>}
          <Fields fields={field.item} path={own} {...rest} />
        </fieldset>
      );
    }
    if (field.type !== 'list') return <ScalarField key={field.key} field={field} path={own} {...rest} />;
    return (
      <ListInput key={field.key} field={field} path={own} {...rest}>
        {(row) => <Fields fields={field.item} path={[...own, row]} {...rest} />}
      </ListInput>
    );
  });
}
