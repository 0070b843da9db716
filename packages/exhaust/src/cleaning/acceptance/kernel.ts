/** What one test of a cleaned filter says; implausible is a figure that no clean filter can have. */
export type TestResult = 'pass' | 'fail' | 'implausible' | 'unknown';

/** Figures between these pass; those beyond the worst fail, those beyond the best are not believed. */
export interface TestLimits {
  readonly worst: number;
  /** Left out where no figure is too good to be true. */
  readonly best?: number | undefined;
}

/** A figure against its limits, whichever way is better; a figure that nobody measured is unknown. */
export function figureAgainstLimits(found: number | undefined, { worst, best }: TestLimits, direction: 'at-least' | 'at-most'): TestResult {
  if (found === undefined) return 'unknown';
  const sign = direction === 'at-least' ? 1 : -1;
  if (sign * found < sign * worst) return 'fail';
  return best !== undefined && sign * found > sign * best ? 'implausible' : 'pass';
}

/** The result of a test that looks at single places: a place that fails is enough to fail, too few places never pass. */
export function testOfPlaces(result: TestResult, places: number, least: number): TestResult {
  return result === 'pass' && places < least ? 'unknown' : result;
}

export type AcceptanceVerdict = 'accepted' | 'rejected' | 'implausible' | 'incomplete';

/** One failure rejects, one figure that cannot be holds it up; accepted only when every test asked for was done and passed. */
export function acceptanceVerdict(tests: readonly { readonly result: TestResult; readonly asked: boolean }[]): AcceptanceVerdict {
  if (tests.some(({ result }) => result === 'fail')) return 'rejected';
  if (tests.some(({ result }) => result === 'implausible')) return 'implausible';
  const asked = tests.filter((test) => test.asked);
  return asked.length > 0 && asked.every(({ result }) => result === 'pass') ? 'accepted' : 'incomplete';
}

/** Coefficient of variation of readings: sample standard deviation over mean. */
export function coefficientOfVariation(values: readonly number[]): number {
  const mean = values.reduce((sum, value) => sum + value, 0) / values.length;
  const squares = values.reduce((sum, value) => sum + (value - mean) ** 2, 0);
  return Math.sqrt(squares / (values.length - 1)) / mean;
}
