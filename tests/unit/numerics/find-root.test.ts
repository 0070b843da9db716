import { findRoot, NumericsError } from '@wallflow/numerics';
import { describe, expect, it } from 'vitest';

describe('findRoot', () => {
  it('finds the root of a straight line in two or three steps', () => {
    const found = findRoot((x) => 3 * x - 6, 0, 10);
    expect(found.status).toBe('converged');
    expect(found.root).toBeCloseTo(2, 14);
    expect(found.iterations).toBeLessThanOrEqual(3);
  });

  it('takes a root that lies at an end of the bracket', () => {
    expect(findRoot((x) => x - 1, 1, 4)).toMatchObject({ status: 'converged', root: 1, residual: 0 });
    expect(findRoot((x) => x - 4, 1, 4)).toMatchObject({ status: 'converged', root: 4, residual: 0 });
  });

  it('accepts the ends in either order', () => {
    const found = findRoot((x) => x * x - 2, 2, 0);
    expect(found.root).toBeCloseTo(Math.SQRT2, 14);
    expect(found.bracket[0]).toBeLessThanOrEqual(found.bracket[1]);
  });

  it('says when there is no bracket and gives the end that is nearer to zero', () => {
    const found = findRoot((x) => x * x + 1, -1, 2);
    expect(found).toMatchObject({ status: 'no_bracket', root: -1, residual: 2, bracket: [-1, 2], evaluations: 2 });
  });

  it('says when the iterations ran out and keeps a valid bracket', () => {
    const found = findRoot((x) => Math.tanh(1000 * (x - 0.123)), 0, 1, { maxIterations: 3 });
    expect(found.status).toBe('max_iterations');
    expect(found.bracket[0]).toBeLessThanOrEqual(0.123);
    expect(found.bracket[1]).toBeGreaterThanOrEqual(0.123);
  });

  it.each([
    ['an end', (x: number) => x, Number.NaN, 1],
    ['an infinite end', (x: number) => x, -1, Infinity],
    ['the value at an end', (x: number) => Math.log(x), -1, 2],
    ['a value inside', (x: number) => (Math.abs(x) === 1 ? x : Number.NaN), -1, 1],
  ])('says that %s is not finite', (_, f, lower, upper) => {
    expect(findRoot(f, lower, upper).status).toBe('not_finite');
  });

  it('ends at a pole with a residual that gives it away', () => {
    const found = findRoot((x) => 1 / (x - 0.3), 0, 1);
    expect(found.status).toBe('converged');
    expect(Math.abs(found.residual)).toBeGreaterThan(1e12);
  });

  it('resolves a very small root next to a wide bracket to full relative accuracy', () => {
    const found = findRoot((x) => Math.log(x / 3e-13), 1e-20, 1e-3);
    expect(Math.abs(found.root / 3e-13 - 1)).toBeLessThan(2e-15);
  });

  it('ends at a triple root at zero', () => {
    const found = findRoot((x) => x ** 3, -1, 2);
    expect(found.status).toBe('converged');
    expect(Math.abs(found.root)).toBeLessThan(1e-30);
  });

  it('works over the whole range of doubles', () => {
    const found = findRoot((x) => Math.atan(x - 7), -1.7e308, 1.7e308, { absoluteTolerance: 1e-12 });
    expect(found.status).toBe('converged');
    expect(found.root).toBeCloseTo(7, 12);
  });

  it('honours a coarse tolerance with fewer evaluations', () => {
    const f = (x: number) => Math.exp(x) - 5;
    const coarse = findRoot(f, 0, 10, { absoluteTolerance: 1e-3 });
    const fine = findRoot(f, 0, 10);
    expect(Math.abs(coarse.root - Math.log(5))).toBeLessThanOrEqual(2e-3);
    expect(coarse.evaluations).toBeLessThan(fine.evaluations);
  });

  it.each([
    ['a root of multiplicity 19', (x: number) => x ** 19, -1, 4],
    // From the test set of Alefeld, Potra and Shi, ACM Trans. Math. Softw. 21 (1995) 327–344 (from memory).
    ['a function with all derivatives zero at its root', (x: number) => (x === 0 ? 0 : x * Math.exp(-(x ** -2))), -1, 4],
  ] as const)('falls back on bisection in time for %s', (_, f, lower, upper) => {
    const found = findRoot(f, lower, upper, { absoluteTolerance: 1e-12 });
    expect(found.status).toBe('converged');
    expect(found.evaluations).toBeLessThan(150);
  });

  it('counts every call of the function', () => {
    let calls = 0;
    const found = findRoot(
      (x) => {
        calls += 1;
        return Math.cos(x) - x;
      },
      0,
      1,
    );
    expect(found.evaluations).toBe(calls);
  });

  it('refuses options without meaning', () => {
    for (const options of [{ relativeTolerance: -1 }, { absoluteTolerance: Number.NaN }, { maxIterations: -1 }]) {
      expect(() => findRoot((x) => x, -1, 1, options)).toThrow(NumericsError);
    }
  });
});
