import { expect } from 'vitest';

/** One published value and what it belongs to. `expected` holds numbers as the source prints them. */
export interface NumericsCase<Given = unknown> {
  readonly id: string;
  readonly title: string;
  readonly source: {
    readonly by: string;
    readonly title: string;
    readonly year: number;
    readonly locator: string;
    /** `read` in the source or a copy of it, or `from memory` of it. */
    readonly mark: 'read' | 'from memory';
  };
  readonly origin: 'standard-example' | 'published-table' | 'textbook-example' | 'certified-value' | 'closed-form' | 'independent-code';
  readonly given: Given;
  readonly expected: Readonly<Record<string, string>>;
  /** Half a unit of the last printed digit unless given here, relative to the value. */
  readonly relativeTolerance?: number;
  /** Why the tolerance differs from the printed digits. */
  readonly toleranceReason?: string;
  /** Keys for which the source is known to state something else, and why. They must keep failing. */
  readonly disagreement?: { readonly keys: readonly string[]; readonly reason: string };
}

/** Half a unit of the last digit of a number as printed. */
export function halfLastDigit(printed: string): number {
  const [mantissa = '', exponent = '0'] = printed.toLowerCase().split('e');
  const decimals = mantissa.split('.')[1]?.length ?? 0;
  return 0.5 * 10 ** (Number(exponent) - decimals);
}

/** Compares all expected values of a case with ours. */
export function expectCase(reference: NumericsCase, actual: Readonly<Record<string, number | undefined>>): void {
  expect(Object.keys(actual).sort()).toEqual(Object.keys(reference.expected).sort());
  const misses = Object.entries(reference.expected).flatMap(([key, printed]) => {
    const expected = Number(printed);
    const ours = actual[key] ?? Number.NaN;
    const { relativeTolerance } = reference;
    const tolerance = relativeTolerance === undefined ? 1.000001 * halfLastDigit(printed) : relativeTolerance * Math.abs(expected);
    return Math.abs(ours - expected) <= tolerance ? [] : [key];
  });
  const known = reference.disagreement?.keys ?? [];
  const report = misses.map((key) => `${key}: ${reference.expected[key]} printed, ${actual[key]} here`).join('; ');
  expect(misses, `${reference.id}: ${report}`).toEqual([...known]);
}
