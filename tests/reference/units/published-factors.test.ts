import { describe, expect, it } from 'vitest';
import { compareUnitCase } from './support/compare-unit-case.js';
import { readUnitCases } from './support/unit-case.js';

const files = readUnitCases();

describe.each(files)('$source.title, $source.mark ($name)', ({ cases }) => {
  it.each(cases)('$given is $expected $unit: $locator', (reference) => {
    const { exact, within } = compareUnitCase(reference);
    const shouldAgree = reference.disagreement === undefined;
    expect(within, `gives ${exact}`).toEqual([shouldAgree, shouldAgree]);
  });
});

describe('the cases', () => {
  const all = files.flatMap((file) => file.cases);

  it('have ids of their own within a file', () => {
    for (const { cases } of files) expect(new Set(cases.map(({ id }) => id)).size).toBe(cases.length);
  });

  it('give a reason for every tolerance of their own', () => {
    const silent = all.filter(({ tolerance, toleranceReason }) => (tolerance === undefined) !== (toleranceReason === undefined));
    expect(silent).toEqual([]);
  });

  it('hold every factor that does not follow from a definition, as a printed table gives it', () => {
    const printed = files.filter(({ origin }) => origin === 'published-table').flatMap(({ cases }) => cases);
    for (const unit of ['inH2O_4C', 'inH2O_60F', 'ftH2O_4C', 'inHg_32F', 'inHg_60F']) {
      expect(printed.some(({ given }) => given === `1 ${unit}`)).toBe(true);
    }
  });
});
