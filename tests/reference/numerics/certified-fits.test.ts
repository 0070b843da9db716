import { fitNonlinear } from '@wallflow/numerics/fit';
import { describe, expect, it } from 'vitest';
import { curveFits, linearFits, moments } from './certified-fits.cases.js';
import { curveFit, linearFit, momentsOf } from './certified-fits.ours.js';
import { expectCase } from './expect-case.js';

describe('linear least squares', () => {
  it.each(linearFits)('$id: $title', (reference) => {
    expectCase(reference, linearFit(reference));
  });
});

describe('non-linear least squares', () => {
  const runs = curveFits.flatMap((reference) => reference.given.starts.map((start) => ({ reference, start, id: reference.id })));
  it.each(runs)('$id from $start', ({ reference, start }) => {
    const ours = curveFit(reference, start);
    for (const key of ['b1', 'b2']) {
      expect(Math.abs(ours[key]! / Number(reference.expected[key]) - 1)).toBeLessThan(3e-10);
    }
    expectCase(reference, ours);
  });
});

describe('a start from which the search fails', () => {
  const runs = curveFits.flatMap((reference) => (reference.given.failing ?? []).map((start) => ({ reference, start, id: reference.id })));
  it.each(runs)('$id from $start says so', ({ reference, start }) => {
    const { model, x, y } = reference.given;
    const fit = fitNonlinear((parameters, i) => model(parameters, x[i]!), y, start);
    // The rate runs away until the model is flat and one parameter has no influence any more.
    expect(fit.status).toBe('rank_deficient');
    expect(fit.covariance).toBeUndefined();
  });
});

describe('mean and standard deviation', () => {
  it.each(moments)('$id: $title', (reference) => {
    expectCase(reference, momentsOf(reference));
  });
});
