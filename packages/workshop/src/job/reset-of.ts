import { type Attempt, evaluate, succeeded, wordOf } from './evaluation.js';

/** Results of the comparison that settle whether the drop is proven; any other leaves it open. */
const settled: Readonly<Record<string, boolean>> = {
  cleaned: true,
  improved: false,
  unchanged: false,
  worse: false,
  'no-signal': false,
  'too-low': false,
};

/** What may be reset, with the drop taken as proven only where the readings prove it, whatever was typed in. */
export function resetOf(given: Readonly<Record<string, unknown>> | undefined, comparison: Attempt | undefined): Attempt | undefined {
  if (given === undefined) return undefined;
  const proven = succeeded(comparison) ? settled[wordOf(comparison, 'verdict')] : undefined;
  return evaluate('reset-advice', { ...given, dropVerified: proven });
}
