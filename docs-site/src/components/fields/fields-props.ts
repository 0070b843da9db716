import type { Form } from '../../calculator/use-form.js';
import type { InputTools } from '../../calculator/use-input-tools.js';
import type { FieldData, UnitOffer } from '../../data/types.js';

export interface FieldMessages {
  readonly errors: ReadonlyMap<string, string>;
  readonly offers: ReadonlyMap<string, readonly UnitOffer[]>;
  readonly warnings: ReadonlyMap<string, string>;
}

export interface FieldsProps {
  readonly fields: readonly FieldData[];
  readonly form: Form;
  readonly tools: InputTools | undefined;
  readonly messages: FieldMessages;
  readonly path?: readonly (string | number)[];
}

/** The id of the input at a path, so that messages elsewhere can lead there. */
export function inputId(path: string): string {
  return `input-${path.replaceAll(/[[\].]+/g, '-').replace(/-$/, '')}`;
}
