import type * as z from 'zod/mini';
import {
  type ComputeContext,
  type Constants,
  type ConstantValues,
  type DefinitionSpec,
  isRefusal,
  noSolution,
  type Refusal,
} from './definition.js';
import type { Warning } from './issue.js';
import type { OutputField, Outputs } from './outputs.js';
import { say, spoken } from './words/say.js';

type Values = Readonly<Record<string, unknown>>;

/** What `compute` gave, with all that it said beside its values. */
export interface Evaluation {
  readonly values: Values;
  readonly warnings: Warning[];
  readonly assumptions: { code: string; text: string }[];
  readonly method: string;
}

/** The first output that is missing or not a finite number, by its label, if any. */
function firstBad(fields: readonly (readonly [string, OutputField])[], values: Values): string | undefined {
  for (const [key, field] of fields) {
    const value = values[key];
    // Nearly all there are, and there may be many rows of them.
    if (typeof value === 'number' && Number.isFinite(value) && (field.type === 'quantity' || field.type === 'count')) continue;
    const bad = badValue(field, value);
    if (bad !== undefined) return bad;
  }
  return undefined;
}

function badValue(field: OutputField, value: unknown): string | undefined {
  const { label } = field;
  if (value === undefined) return field.optional ? undefined : label;
  if (field.type === 'quantity' || field.type === 'count') return Number.isFinite(value) ? undefined : label;
  if (field.type === 'choice') return typeof value === 'string' && Object.hasOwn(field.options, value) ? undefined : label;
  if (field.type !== 'table') return typeof value === 'string' ? undefined : label;
  const columns = Object.entries(field.columns);
  for (const [index, row] of (value as Values[]).entries()) {
    const bad = firstBad(columns, row);
    if (bad !== undefined) return say`${label}, row ${index + 1}: ${bad}`;
  }
  return undefined;
}

/** The computing of a definition: from checked input to values that are all there and finite, or a refusal. Never throws. */
export function computing<I extends z.core.$ZodObject, O extends Outputs, M extends Outputs, C extends Constants>(
  spec: DefinitionSpec<I, O, M, C>,
): (input: z.output<I>, constants: ConstantValues<C>) => Evaluation | Refusal {
  const fields = Object.entries<OutputField>({ ...spec.intermediates, ...spec.outputs });

  /** What `compute` gives; an error in it is no reason for a program to stop. */
  function computed(input: z.output<I>, context: ComputeContext<C>) {
    try {
      return spec.compute(input, context);
    } catch (error) {
      return noSolution(say`the calculation failed (${error instanceof Error ? error.message : String(error)})`);
    }
  }

  return (input, constants) => {
    const warnings: Warning[] = [];
    const assumptions: { code: string; text: string }[] = [];
    let method = spec.method;
    const context: ComputeContext<C> = {
      constants,
      warn: (code, text, path) => void warnings.push({ code, text: spoken(text), ...(path === undefined ? {} : { path }) }),
      assume: (code, text) => void assumptions.push({ code, text: spoken(text) }),
      method: (name) => {
        method = spoken(name);
      },
    };
    const values = computed(input, context);
    if (isRefusal(values)) return values;
    const bad = firstBad(fields, values as Values);
    if (bad !== undefined) {
      return {
        refused: [{ code: 'no_solution', path: [], cause: 'not_finite', reason: say`${bad} has no finite value for these inputs` }],
      };
    }
    return { values: values as Values, warnings, assumptions, method };
  };
}

/** Values of the constants of a definition, as `compute` gets them. */
export function constantValues<C extends Constants>(constants: C): ConstantValues<C> {
  return Object.fromEntries(Object.entries(constants).map(([key, { value }]) => [key, value])) as ConstantValues<C>;
}
