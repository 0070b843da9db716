import { expect } from 'vitest';

/** Every value differs from the expected one by at most `tolerance`. */
export function expectAllClose(actual: ArrayLike<number>, expected: ArrayLike<number>, tolerance: number): void {
  expect(actual).toHaveLength(expected.length);
  for (let i = 0; i < expected.length; i += 1) {
    const difference = Math.abs(actual[i]! - expected[i]!);
    expect(difference, `value ${i}: ${actual[i]} for ${expected[i]}`).toBeLessThanOrEqual(tolerance);
  }
}

/** Throws here when a result has another status, and narrows its type. */
export function requireStatus<Result extends { status: string }, Status extends Result['status']>(
  result: Result,
  status: Status,
): Extract<Result, { status: Status }> {
  expect(result.status).toBe(status);
  return result as Extract<Result, { status: Status }>;
}
