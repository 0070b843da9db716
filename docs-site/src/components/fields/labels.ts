import { createContext, useContext } from 'react';
import type { InputPlace } from '../../calculator/counting.js';
import type { FieldData } from '../../data/types.js';

/** The inputs of the form or of a section of it, for hints that name others and for what counts. */
export const FormFieldsContext = createContext<InputPlace>({ fields: [], path: [] });

function labelOf(fields: readonly FieldData[], key: string): string | undefined {
  for (const field of fields) {
    const found = field.key === key ? field.label : 'item' in field ? labelOf(field.item, key) : undefined;
    if (found !== undefined) return found;
  }
  return undefined;
}

/** Turns keys of inputs into what stands above them. */
export function useLabels(): (keys: readonly string[]) => string[] {
  const { fields } = useContext(FormFieldsContext);
  return (keys) => keys.flatMap((key) => labelOf(fields, key)?.toLowerCase() ?? []);
}
