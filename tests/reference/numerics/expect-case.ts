import { expect } from 'vitest';
import { compareNumerics, type NumericsCase, type Ours } from './numerics-case.js';

/** Holds all expected values of a case against ours. */
export function expectCase(reference: NumericsCase, actual: Ours): void {
  expect(Object.keys(actual).sort()).toEqual(Object.keys(reference.expected).sort());
  const misses = compareNumerics(reference, actual).filter(({ agrees }) => !agrees);
  const report = misses.map(({ key, printed, ours }) => `${key}: ${printed} printed, ${ours} here`).join('; ');
  expect(
    misses.map(({ key }) => key),
    `${reference.id}: ${report}`,
  ).toEqual([...(reference.disagreement?.keys ?? [])]);
}
