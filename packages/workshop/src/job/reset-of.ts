import { dropProven } from './comparison.js';
import { type Attempt, evaluate, si, succeeded } from './evaluation.js';
import type { MeasuredSide } from './measured-side.js';

/** The most soot that the readings after the work allow, as a mass. */
function mostSoot(after: MeasuredSide | undefined): Readonly<Record<string, unknown>> {
  if (after === undefined || !succeeded(after.soot)) return {};
  const { mostSootMass } = after.soot.result.outputs as Readonly<Record<string, unknown>>;
  return typeof mostSootMass === 'number' ? { mostSoot: si(mostSootMass, 'kg') } : {};
}

/** What may be reset, with the drop and the soot taken as proven only where the readings prove it, whatever was typed in. */
export function resetOf(
  given: Readonly<Record<string, unknown>> | undefined,
  comparison: Attempt | undefined,
  after: MeasuredSide | undefined,
): Attempt | undefined {
  if (given === undefined) return undefined;
  const { mostSoot: _, ...done } = given;
  return evaluate('reset-advice', { ...done, ...mostSoot(after), dropVerified: dropProven(comparison) });
}
