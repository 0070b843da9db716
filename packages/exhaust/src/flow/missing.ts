import type { Refusal } from '@wallflow/calculation';

/** Refuse because the chosen method needs inputs that are unknown. */
export function missingInputs(...keys: readonly string[]): Refusal {
  return { refused: keys.map((key) => ({ code: 'missing_input', path: [key] })) };
}
