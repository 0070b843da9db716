import { describe, expect, it } from 'vitest';
import { allCalculations, registry } from '../support/calculations.js';
import { compareCase } from '../support/compare-case.js';
import { readCaseFiles } from '../support/reference-case.js';

const files = readCaseFiles();

describe.each(files)('$calculation', ({ calculation: id, cases }) => {
  const calculation = registry.get(id);

  it('is a published calculation', () => {
    expect(calculation?.id).toBe(id);
  });

  it.each(cases)('$id: $title', (reference) => {
    if (calculation === undefined) throw new Error(`no calculation ${id}`);
    const comparisons = compareCase(calculation, reference);
    const misses = comparisons.filter((comparison) => !comparison.agrees);
    if (reference.disagreement === undefined) expect(misses).toEqual([]);
    // A known disagreement that has gone away is news: the reason given for it no longer holds.
    else expect(misses.length).toBeGreaterThan(0);
  });
});

describe('coverage by reference cases', () => {
  it.each(allCalculations.map((calculation) => [calculation.id]))('%s has three cases, one of them not from code', (id) => {
    const cases = files.filter((file) => file.calculation === id).flatMap((file) => file.cases);
    expect(cases.length).toBeGreaterThanOrEqual(3);
    expect(cases.some((reference) => reference.origin !== 'independent-code')).toBe(true);
  });

  it('gives every case an id of its own', () => {
    const ids = files.flatMap((file) => file.cases.map((reference) => `${file.calculation}/${reference.id}`));
    expect(new Set(ids).size).toBe(ids.length);
  });

  it('gives a reason for every tolerance wider than the printed digits', () => {
    const silent = files
      .flatMap((file) => file.cases)
      .filter((reference) => reference.tolerance !== undefined && reference.toleranceReason === undefined)
      .map((reference) => reference.id);
    expect(silent).toEqual([]);
  });
});
