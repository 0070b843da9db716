/** What one test of a cleaned filter says. */
export type TestResult = 'pass' | 'fail' | 'unknown';

/** A figure that has to reach a limit, or stay below it; a figure that nobody measured is unknown. */
export function testAgainst(found: number | undefined, limit: number, direction: 'at-least' | 'at-most'): TestResult {
  if (found === undefined) return 'unknown';
  return (direction === 'at-least' ? found >= limit : found <= limit) ? 'pass' : 'fail';
}

export type AcceptanceVerdict = 'accepted' | 'rejected' | 'incomplete';

/** One failure rejects; accepted only when every test that is asked for was done and passed. */
export function acceptanceVerdict(tests: readonly { readonly result: TestResult; readonly asked: boolean }[]): AcceptanceVerdict {
  if (tests.some(({ result }) => result === 'fail')) return 'rejected';
  const asked = tests.filter((test) => test.asked);
  return asked.length > 0 && asked.every(({ result }) => result === 'pass') ? 'accepted' : 'incomplete';
}

/** Coefficient of variation of readings: sample standard deviation over mean. */
export function coefficientOfVariation(values: readonly number[]): number {
  const mean = values.reduce((sum, value) => sum + value, 0) / values.length;
  const squares = values.reduce((sum, value) => sum + (value - mean) ** 2, 0);
  return Math.sqrt(squares / (values.length - 1)) / mean;
}
