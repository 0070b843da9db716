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
  /** The same for values near zero, in their own unit. */
  readonly absoluteTolerance?: number;
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

/** What we give for the expected values of a case, by the same keys. */
export type Ours = Readonly<Record<string, number | undefined>>;

export interface ComparedValue {
  readonly key: string;
  readonly printed: string;
  readonly ours: number;
  readonly tolerance: number;
  readonly agrees: boolean;
}

/** All expected values of a case beside ours; for the tests and for the site. */
export function compareNumerics(reference: NumericsCase, actual: Ours): ComparedValue[] {
  const { relativeTolerance, absoluteTolerance } = reference;
  return Object.entries(reference.expected).map(([key, printed]) => {
    const expected = Number(printed);
    const ours = actual[key] ?? Number.NaN;
    const tolerance =
      absoluteTolerance ?? (relativeTolerance === undefined ? halfLastDigit(printed) : relativeTolerance * Math.abs(expected));
    // An exact half of the last digit may have been rounded either way.
    return { key, printed, ours, tolerance, agrees: Math.abs(ours - expected) <= 1.000001 * tolerance };
  });
}
