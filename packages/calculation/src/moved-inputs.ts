import type * as z from 'zod';
import type { InputField } from './field.js';
import type { Path } from './issue.js';
import { mapQuantities } from './walk.js';

/** How far to move one input, in SI. */
export interface Move {
  readonly path: Path;
  readonly by: number;
}

type Evaluate<I extends z.ZodObject, V> = (input: z.output<I>) => V | undefined;

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

/**
 * The values with some inputs moved by what they are uncertain by.
 *
 * @returns undefined where an input would leave the range in which it makes sense, or where there is no result
 */
export function evaluateMoved<I extends z.ZodObject, V>(
  schema: I,
  input: z.output<I>,
  moves: readonly Move[],
  evaluate: Evaluate<I, V>,
): V | undefined {
  let possible = true;
  const by = new Map(moves.map((move) => [move.path.join('\n'), move.by]));
  const changed = mapQuantities(schema, input, (value, field, at) => {
    const move = by.get(at.join('\n'));
    if (move === undefined) return value;
    if (!isPossible(value + move, field)) possible = false;
    return value + move;
  });
  return possible ? resultThere(evaluate, changed) : undefined;
}
