import type { ChoiceFieldData, FieldData, FormValues, ScalarFieldData } from '../data/types.js';
import { isRows } from './form-values.js';

interface Chosen {
  readonly field: ChoiceFieldData;
  /** Key of the option that counts now; undefined while none is chosen. */
  readonly option: string | undefined;
  /** Chosen by hand, not by the example, a default or a typed value. */
  readonly byHand: boolean;
}

function chosenFor(fields: readonly FieldData[], field: ScalarFieldData, values: FormValues): Chosen | undefined {
  const choice = fields.find((candidate) => candidate.key === field.onlyWith?.choice);
  if (choice?.type !== 'choice') return undefined;
  const entry = values[choice.key];
  const text = entry === undefined || isRows(entry) ? '' : entry.text;
  const option = text === '' ? choice.options.find(({ label }) => label === choice.default)?.key : text;
  return { field: choice, option, byHand: entry !== undefined && !isRows(entry) && entry.own === true };
}

/** The method that a field belongs to, to be chosen when something is typed there; not against a choice made by hand. */
export function methodFor(
  fields: readonly FieldData[],
  field: ScalarFieldData,
  values: FormValues,
): { readonly choice: string; readonly option: string } | undefined {
  const chosen = chosenFor(fields, field, values);
  const [option, ...others] = field.onlyWith?.options ?? [];
  if (chosen === undefined || chosen.byHand || option === undefined || others.length > 0 || chosen.option === option) return undefined;
  return { choice: chosen.field.key, option };
}

/** Said at a field that the chosen method leaves out. */
export interface LeftOut {
  readonly note: string;
  readonly choice: string;
  /** The one option that uses the field, with its label. */
  readonly option?: string;
  readonly label?: string;
}

export function unusedBy(fields: readonly FieldData[], field: ScalarFieldData, values: FormValues): LeftOut | undefined {
  const chosen = chosenFor(fields, field, values);
  const options = field.onlyWith?.options ?? [];
  if (chosen?.option === undefined || options.includes(chosen.option)) return undefined;
  const labelOf = (key: string) => chosen.field.options.find((option) => option.key === key)?.label;
  const note = `Not used: “${chosen.field.label}” is set to “${labelOf(chosen.option) ?? 'another'}”.`;
  const [only, ...others] = options;
  const label = only === undefined ? undefined : labelOf(only);
  if (only === undefined || label === undefined || others.length > 0) return { note, choice: chosen.field.key };
  return { note, choice: chosen.field.key, option: only, label };
}
