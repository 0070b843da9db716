import { type ReactNode, useContext } from 'react';
import { entryAt } from '../../calculator/edit-values.js';
import { isRows } from '../../calculator/form-values.js';
import { methodFor, unusedBy } from '../../calculator/method-of.js';
import { pathKey } from '../../calculator/path-key.js';
import type { Entry, ScalarFieldData } from '../../data/types.js';
import { ChoiceInput } from './ChoiceInput.js';
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
  const all = useContext(FormFieldsContext);
  const entry: Entry = found === undefined || isRows(found) ? { text: '', unit: '' } : found;
  const common = {
    id: inputId(key),
    error: messages.errors.get(key),
    offers: messages.offers.get(key),
    warning: messages.warnings.get(key),
    unused: path.length === 1 ? unusedNote(field, entry) : undefined,
    row: rowName(path),
  };
  function unusedNote(own: ScalarFieldData, { text }: Entry) {
    const unused = text.trim() === '' ? undefined : unusedBy(all, own, form.values);
    if (unused === undefined) return undefined;
    const { note, choice, option, label } = unused;
    if (option === undefined) return { text: note };
    const choose = () => form.change([choice], { text: option, unit: '', own: true });
    return { text: note, action: { text: `Use it: ${label}`, choose } };
  }
  const change = (next: Entry) => form.change(path, next);
  const entered = (next: Entry) => {
    const method = path.length === 1 && next.text.trim() !== '' ? methodFor(all, field, form.values) : undefined;
    if (method !== undefined) form.change([method.choice], { text: method.option, unit: '' });
    change(next);
  };
  const typed = (text: string, unit = '') => entered({ text, unit, own: true });
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
          onText={(text) => entered(tools?.typedEntry(field.kind, entry, text) ?? { text, unit: entry.unit, own: true })}
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

/** One input for every field. */
export function Fields({ fields, path = [], ...rest }: FieldsProps): ReactNode {
  return fields.map((field) =>
    field.type === 'list' ? (
      <ListInput key={field.key} field={field} path={[...path, field.key]} {...rest}>
        {(row) => <Fields fields={field.item} path={[...path, field.key, row]} {...rest} />}
      </ListInput>
    ) : (
      <ScalarField key={field.key} field={field} path={[...path, field.key]} {...rest} />
    ),
  );
}
