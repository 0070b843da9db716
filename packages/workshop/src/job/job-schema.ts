import { inputsJsonSchema } from '@wallflow/calculation/json-schema';
import * as z from 'zod/mini';
import { fileSchema } from './job-file.js';

/** A group of inputs as the schema shows it: nothing in it has to be there, for what is missing is said when the job is run. */
const described = (fields: z.core.$ZodObject) => z.partial(z.strictObject(fields._zod.def.shape));

/** JSON Schema (draft 2020-12) of a job file, made from the description of the job. */
export function jobSchema(): Record<string, unknown> {
  return { ...inputsJsonSchema(fileSchema(described)), title: 'Job file' };
}
