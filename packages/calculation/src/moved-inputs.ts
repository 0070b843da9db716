import type * as z from 'zod/mini';
import { fieldOf, type InputField } from './field.js';
import type { Path } from './issue.js';
import { itemSchema } from './walk.js';

/** How far to move one input, in SI. */
export interface Move {
  readonly path: Path;
  readonly by: number;
}

type Evaluate<I extends z.core.$ZodObject, V> = (input: z.output<I>) => V | undefined;

function isPossible(value: number, { limits }: Extract<InputField, { type: 'quantity' }>): boolean {
  const { min, max, minInclusive, maxInclusive } = limits;
  return (minInclusive ? value >= min : value > min) && (maxInclusive ? value <= max : value < max);
}

/**
 * What there is at inputs that nobody typed. The nominal evaluation has shown that the calculation works; where a solver or a
 * table gives up a little way off, there is no result there, and what was typed still has one.
 */
function resultThere<I, V>(evaluate: (input: I) => V | undefined, input: I): V | undefined {
  try {
    return evaluate(input);
  } catch {
    return undefined;
  }
}

/** A copy of checked input in which single numbers are replaced. Only the lists and records on the way to them are copied. */
class MovedCopy {
  readonly values: Record<string, unknown>;
  private readonly own: Set<unknown>;
  private readonly schema: z.core.$ZodObject;

  constructor(schema: z.core.$ZodObject, input: object) {
    this.schema = schema;
    this.values = { ...input };
    this.own = new Set([this.values]);
  }

  /** Adds to one number; false where the sum is not possible for that input. */
  add({ path, by }: Move): boolean {
    let schema: z.core.$ZodObject | undefined = this.schema;
    let record = this.values;
    // Groups and the entries of lists on the way.
    for (let at = 0; at + 1 < path.length; at += 1) {
      const key = String(path[at]);
      const index = path[at + 1];
      if (typeof index === 'number') {
        const list = this.ownCopy(record, key, (value: unknown[]) => [...value]);
        record = this.ownCopy(list, index, (value: Record<string, unknown>) => ({ ...value }));
        at += 1;
      } else record = this.ownCopy(record, key, (value: Record<string, unknown>) => ({ ...value }));
      schema = schema?._zod.def.shape[key] === undefined ? undefined : itemSchema(schema._zod.def.shape[key]);
    }
    const key = String(path[path.length - 1]);
    const field = schema?._zod.def.shape[key] === undefined ? undefined : fieldOf(schema._zod.def.shape[key]);
    if (field?.type !== 'quantity') return true;
    const sum = (record[key] as number) + by;
    record[key] = sum;
    return isPossible(sum, field);
  }

  private ownCopy<T>(holder: object, key: string | number, copy: (value: T) => T): T {
    const value = (holder as Record<string | number, unknown>)[key] as T;
    if (this.own.has(value)) return value;
    const copied = copy(value);
    (holder as Record<string | number, unknown>)[key] = copied;
    this.own.add(copied);
    return copied;
  }
}

/**
 * The values with some inputs moved by what they are uncertain by.
 *
 * @returns undefined where an input would leave the range in which it makes sense, or where there is no result
 */
export function evaluateMoved<I extends z.core.$ZodObject, V>(
  schema: I,
  input: z.output<I>,
  moves: readonly Move[],
  evaluate: Evaluate<I, V>,
): V | undefined {
  const copy = new MovedCopy(schema, input);
  let possible = true;
  for (const move of moves) possible = copy.add(move) && possible;
  return possible ? resultThere(evaluate, copy.values as z.output<I>) : undefined;
}
