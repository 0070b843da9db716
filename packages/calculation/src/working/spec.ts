import type * as z from 'zod';
import type { Constants, DefinitionSpec } from '../definition.js';
import type { Outputs } from '../outputs.js';

/** A definition whose own types do not matter here. */
export type AnySpec = DefinitionSpec<z.ZodObject, Outputs, Outputs, Constants>;
