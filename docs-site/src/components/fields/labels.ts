import { createContext, useContext } from 'react';
import type { FieldData } from '../../data/types.js';

/** The inputs of the form, for hints that name others. */
export const FormFieldsContext = createContext<readonly FieldData[]>([]);

/** Turns keys of inputs into what stands above them. */
export function useLabels(): (keys: readonly string[]) => string[] {
  const fields = useContext(FormFieldsContext);
  return (keys) => keys.flatMap((key) => fields.find((field) => field.key === key)?.label.toLowerCase() ?? []);
}
