import { cumulativeTrapezoid, interpolateLinearly, interpolateMonotonically, NumericsError } from '@wallflow/numerics';
import { describe, expect, it } from 'vitest';
import { requireStatus } from './expect-close.js';

const kinds = [
  ['linear', interpolateLinearly],
  ['monotone', interpolateMonotonically],
] as const;

describe.each(kinds)('%s interpolation', (_, interpolate) => {
  const x = [0, 1, 3, 7];
  const y = [2, 4, 8, 16];

  it('goes through its points and follows a straight line exactly', () => {
    const { interpolant } = requireStatus(interpolate(x, y, 'refuse'), 'ready');
    for (const [i, point] of x.entries()) expect(interpolant.at(point)).toBe(y[i]);
    for (const at of [0.3, 2, 6.99]) expect(interpolant.at(at)).toBeCloseTo(2 + 2 * at, 14);
    expect([interpolant.from, interpolant.to]).toEqual([0, 7]);
  });

  it('gives the same whatever the order of the questions', () => {
    const values = [1, 5, 2, 9];
    const forward = requireStatus(interpolate(x, values, 'refuse'), 'ready').interpolant;
    const backward = requireStatus(interpolate(x, values, 'refuse'), 'ready').interpolant;
    const places = Array.from({ length: 71 }, (_unused, i) => i / 10);
    const one = places.map(forward.at);
    const other = [...places].reverse().map(backward.at).reverse();
    expect(one).toEqual(other);
  });

  it('refuses, holds or extends outside, as asked', () => {
    const refuse = requireStatus(interpolate(x, y, 'refuse'), 'ready').interpolant;
    const hold = requireStatus(interpolate(x, y, 'hold'), 'ready').interpolant;
    const extend = requireStatus(interpolate(x, y, 'extend'), 'ready').interpolant;
    expect([refuse.at(-1), refuse.at(8), refuse.at(Number.NaN)]).toEqual([undefined, undefined, undefined]);
    expect([hold.at(-1), hold.at(8), hold.at(Infinity)]).toEqual([2, 16, 16]);
    expect([extend.at(-1), extend.at(8)]).toEqual([0, 18]);
    expect(hold.at(Number.NaN)).toBeNaN();
    expect(extend.at(Number.NaN)).toBeNaN();
  });

  it('says what is wrong with the points, and where', () => {
    expect(interpolate([1], [1], 'hold')).toEqual({ status: 'too_few_points', index: 1 });
    expect(interpolate([1, 1], [1, 2], 'hold')).toEqual({ status: 'not_increasing', index: 1 });
    expect(interpolate([1, 2, 0], [1, 2, 3], 'hold')).toEqual({ status: 'not_increasing', index: 2 });
    expect(interpolate([1, 2], [1, Number.NaN], 'hold')).toEqual({ status: 'not_finite', index: 1 });
    expect(interpolate([1, Infinity], [1, 2], 'hold')).toEqual({ status: 'not_finite', index: 1 });
    expect(() => interpolate([1, 2], [1], 'hold')).toThrow(NumericsError);
  });

  it('keeps its own copy of the points', () => {
    const mine = [1, 2];
    const { interpolant } = requireStatus(interpolate([0, 1], mine, 'refuse'), 'ready');
    mine[0] = 99;
    expect(interpolant.at(0)).toBe(1);
  });
});

describe('monotone interpolation', () => {
  it('has a turning point only where the points have one', () => {
    const { interpolant } = requireStatus(interpolateMonotonically([0, 1, 2, 3, 4], [0, 0, 1, 1, 0.5], 'refuse'), 'ready');
    for (let s = 0; s <= 1; s += 0.01) {
      expect(interpolant.at(s)).toBe(0);
      expect(interpolant.at(2 + s)).toBe(1);
    }
  });

  it('reproduces a parabola at the ends to second order: slope by the three-point formula', () => {
    const square = (x: number) => x * x + x;
    const points = [1, 2, 4, 5];
    const { interpolant } = requireStatus(interpolateMonotonically(points, points.map(square), 'extend'), 'ready');
    // Derivative of x² + x at 1 and 5.
    expect(interpolant.at(1) - interpolant.at(0)).toBeCloseTo(3, 12);
    expect(interpolant.at(6) - interpolant.at(5)).toBeCloseTo(11, 12);
  });

  it('joins two points by a straight line', () => {
    const { interpolant } = requireStatus(interpolateMonotonically([0, 2], [1, 5], 'extend'), 'ready');
    expect(interpolant.at(1)).toBe(3);
    expect(interpolant.at(3)).toBe(7);
  });
});

describe('cumulativeTrapezoid', () => {
  it('integrates straight lines exactly', () => {
    const result = cumulativeTrapezoid([0, 1, 3], [1, 2, 4]);
    expect(result).toEqual({ status: 'done', integral: Float64Array.of(0, 1.5, 7.5), total: 7.5 });
  });

  it('allows a jump', () => {
    expect(cumulativeTrapezoid([0, 1, 1, 2], [1, 1, 3, 3]).total).toBe(4);
  });

  it('gives nothing for no points and for one', () => {
    expect(cumulativeTrapezoid([], []).total).toBe(0);
    expect(cumulativeTrapezoid([5], [5]).total).toBe(0);
  });

  it('stops at the first point at fault', () => {
    expect(cumulativeTrapezoid([0, 1, 0.5], [1, 1, 1])).toEqual({
      status: 'not_increasing',
      integral: Float64Array.of(0, 1),
      total: 1,
    });
    expect(cumulativeTrapezoid([0, 1, 2], [1, 1, Number.NaN])).toMatchObject({ status: 'not_finite', total: 1 });
    expect(() => cumulativeTrapezoid([0], [])).toThrow(NumericsError);
  });
});
