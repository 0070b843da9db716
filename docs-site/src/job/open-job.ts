import { formFromJob } from '@wallflow/workshop';
import { fromInput } from '../calculator/form-input.js';
import type { FieldData, FormValues } from '../data/types.js';

/** What a parsed job file fills the form with; undefined where it is none that the form can hold. */
export function openJob(fields: readonly FieldData[], job: unknown): { readonly values: FormValues } | undefined {
  try {
    return { values: fromInput(fields, formFromJob(job)) };
  } catch {
    // A file from elsewhere may hold anything, such as an object whose text cannot be had.
    return undefined;
  }
}
