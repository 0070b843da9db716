import { describe, expect, it } from 'vitest';
import { expectCase } from './expect-case.js';
import { independentCases, studentT } from './fits.independent.js';

describe('fits, interpolation and quantiles agree with other code', () => {
  it.each(independentCases)('$id: $title', (reference) => expectCase(reference, reference.ours()));

  it('leave no quantile out', () => {
    expect(studentT.flatMap((reference) => Object.keys(reference.expected))).toHaveLength(45);
  });
});
