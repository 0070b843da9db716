import type * as z from 'zod/mini';
import type { Constants, DefinitionSpec } from '../definition.js';
import type { Outputs } from '../outputs.js';

/** A definition whose own types do not matter here. */
export type AnySpec = DefinitionSpec<z.core.$ZodObject, Outputs, Outputs, Constants>;
