import { countingKeys, type Path } from '@wallflow/calculation';
import type { FieldData, FormValues } from '../data/types.js';
import { entryAt } from './edit-values.js';
import { isRows } from './form-values.js';

/** Inputs of one record, and where in the form it stands. */
export interface InputPlace {
  readonly fields: readonly FieldData[];
  readonly path: Path;
}

/** What stands in a record of the form: in all of it, in a group, or in one row of a list. */
function valuesAt(values: FormValues, path: Path): FormValues {
  if (path.length === 0) return values;
  const row = path.at(-1);
  const found = entryAt(values, typeof row === 'number' ? path.slice(0, -1) : path);
  return (isRows(found) ? found.rows[typeof row === 'number' ? row : 0] : undefined) ?? {};
}

function given(field: FieldData | undefined, values: FormValues): unknown {
  const entry = field === undefined ? undefined : values[field.key];
  if (field === undefined || entry === undefined || isRows(entry) || entry.text.trim() === '') return undefined;
  return field.type === 'flag' ? entry.text === 'yes' : entry.text;
}

/** The inputs of a record that count with what stands in the form; conditions may name inputs of the record around it. */
export function countingFields(fields: readonly FieldData[], own: InputPlace, around: InputPlace, values: FormValues): FieldData[] {
  const others = around.fields.filter(({ key }) => !own.fields.some((field) => field.key === key));
  const [here, there] = [valuesAt(values, own.path), valuesAt(values, around.path)];
  const all = [...others, ...own.fields].map(({ key, when, standard }) => ({ key, when: when ?? [], standard }));
  const counting = countingKeys({ fields: all }, (key) => {
    const field = own.fields.find((one) => one.key === key);
    return field === undefined
      ? given(
          others.find((one) => one.key === key),
          there,
        )
      : given(field, here);
  });
  return fields.filter(({ key }) => counting.has(key));
}
