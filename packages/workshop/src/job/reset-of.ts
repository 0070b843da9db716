import type { FilterEstimate } from '../estimate/index.js';
import { dropProven } from './comparison.js';
import { type Attempt, evaluate, si } from './evaluation.js';

/** The upper end of the soot that the estimate allows after the work: rounded up to whole grams, as a control unit takes it. */
function mostSoot(after: FilterEstimate | undefined): Readonly<Record<string, unknown>> {
  return after === undefined ? {} : { mostSoot: si(Math.ceil(after.sootMass.p95 * 1000), 'g') };
}

/** What may be reset, with the drop and the soot taken as proven only where the readings prove it, whatever was typed in. */
export function resetOf(
  given: Readonly<Record<string, unknown>> | undefined,
  comparison: Attempt | undefined,
  after: FilterEstimate | undefined,
): Attempt | undefined {
  if (given === undefined) return undefined;
  const { mostSoot: _, ...done } = given;
  return evaluate('reset-advice', { ...done, ...mostSoot(after), dropVerified: dropProven(comparison) });
}
