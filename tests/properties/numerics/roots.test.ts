import { findRoot } from '@wallflow/numerics';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { finite, logUniform } from './arbitraries.js';

/** A function with exactly one change of sign, at the root, and its name. */
const shapes: Array<[string, (distance: number) => number]> = [
  ['line', (d) => d],
  ['cubic', (d) => d ** 3 + d],
  ['flat', (d) => d ** 3],
  ['steep', (d) => Math.cbrt(d)],
  ['tanh', (d) => Math.tanh(50 * d)],
  ['exponential', (d) => Math.expm1(Math.min(d, 500))],
  ['jump', (d) => (d < 0 ? -2 : 3)],
  ['staircase', (d) => Math.round(d * 100) + Math.sign(d)],
];

describe.each(shapes)('findRoot on a %s', (_, shape) => {
  it('ends within the tolerance of the sign change, in a bracket that still holds it', () => {
    fc.assert(
      fc.property(finite(-10, 10), logUniform(-6, 2), logUniform(-6, 2), logUniform(-14, -2), (root, left, right, tolerance) => {
        const f = (x: number) => shape(x - root);
        const found = findRoot(f, root - left, root + right, { absoluteTolerance: tolerance, relativeTolerance: 0 });
        expect(found.status).toBe('converged');
        const [a, b] = found.bracket;
        expect(a).toBeLessThanOrEqual(found.root);
        expect(found.root).toBeLessThanOrEqual(b);
        expect(f(a) * f(b)).toBeLessThanOrEqual(0);
        expect(found.residual).toBe(f(found.root));
        const allowed = tolerance + 4 * Number.EPSILON * Math.abs(found.root);
        expect(Math.abs(found.root - root)).toBeLessThanOrEqual(2 * allowed + 1e-15);
      }),
    );
  });

  it('never leaves the bracket and needs no more than a few times the steps of bisection', () => {
    fc.assert(
      fc.property(finite(-10, 10), logUniform(-6, 2), logUniform(-6, 2), (root, left, right) => {
        const [lower, upper] = [root - left, root + right];
        const seen: number[] = [];
        const found = findRoot(
          (x) => {
            seen.push(x);
            return shape(x - root);
          },
          lower,
          upper,
          { absoluteTolerance: 1e-9 },
        );
        expect(Math.min(...seen)).toBeGreaterThanOrEqual(lower);
        expect(Math.max(...seen)).toBeLessThanOrEqual(upper);
        const bisection = Math.max(1, Math.log2((upper - lower) / 1e-9));
        expect(found.evaluations).toBeLessThanOrEqual(4 * bisection + 10);
      }),
    );
  });
});

describe('findRoot', () => {
  it('does the same for a function and its negative, and mirrors with the axis', () => {
    fc.assert(
      fc.property(finite(-5, 5), finite(0.1, 5), finite(0.1, 5), (root, left, right) => {
        const f = (x: number) => Math.expm1(x - root) + (x - root) ** 3;
        const found = findRoot(f, root - left, root + right);
        expect(findRoot((x) => -f(x), root - left, root + right).root).toBe(found.root);
        const mirrored = findRoot((x) => f(-x), -(root + right), -(root - left));
        expect(Math.abs(mirrored.root + found.root)).toBeLessThanOrEqual(1e-14 * (1 + Math.abs(root)));
      }),
    );
  });

  it('says no bracket whenever both ends have the same sign', () => {
    fc.assert(
      fc.property(finite(-100, 100), finite(0, 100), finite(1e-3, 10), (lower, width, offset) => {
        expect(findRoot((x) => x * x + offset, lower, lower + width).status).toBe('no_bracket');
      }),
    );
  });
});
