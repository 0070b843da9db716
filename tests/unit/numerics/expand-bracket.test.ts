import { expandBracket, findRoot, NumericsError } from '@wallflow/numerics';
import { describe, expect, it } from 'vitest';

describe('expandBracket', () => {
  it('keeps an interval that already brackets a root', () => {
    expect(expandBracket((x) => x, -1, 2)).toEqual({
      status: 'bracketed',
      lower: -1,
      upper: 2,
      values: [-1, 2],
      evaluations: 2,
    });
  });

  it.each([
    ['above', 1000],
    ['below', -1000],
  ])('finds a root far %s', (_, root) => {
    const f = (x: number) => x - root;
    const found = expandBracket(f, 0, 1);
    expect(found.status).toBe('bracketed');
    expect(findRoot(f, found.lower, found.upper).root).toBeCloseTo(root, 10);
  });

  it('stays within the limits and says when they hold no root', () => {
    const seen: number[] = [];
    const found = expandBracket(
      (x) => {
        seen.push(x);
        return x + 5;
      },
      1,
      2,
      { minimum: 0, maximum: 100 },
    );
    expect(found).toMatchObject({ status: 'no_bracket', lower: 0, upper: 100 });
    expect(Math.min(...seen)).toBe(0);
    expect(Math.max(...seen)).toBe(100);
  });

  it.each([
    // Nearer to zero on the side of the limit, but the root is on the other side.
    ['below', (x: number) => (x < 10 ? 1 + x : -1), { minimum: 0 }],
    ['above', (x: number) => (x > -10 ? 2 - x : -1), { maximum: 1 }],
  ])('turns to the other side once a limit %s stops it', (_, f, options) => {
    expect(expandBracket(f, 0, 1, options).status).toBe('bracketed');
  });

  it('ends when the number of expansions is used up', () => {
    expect(expandBracket(() => 1, 0, 1, { maxExpansions: 4 }).evaluations).toBe(6);
  });

  it.each([
    ['at the start', (x: number) => Math.sqrt(x), -1],
    ['on the way', (x: number) => (x > 5 ? Number.NaN : -1), 0],
    ['by overflow', () => 1, -1e308],
  ])('says that a value is not finite %s', (_, f, lower) => {
    expect(expandBracket(f, lower, 1, { maxExpansions: 2000 }).status).toBe('not_finite');
  });

  it('refuses an empty interval, a factor of one and limits inside the interval', () => {
    expect(() => expandBracket((x) => x, 1, 1)).toThrow(NumericsError);
    expect(() => expandBracket((x) => x, 0, 1, { factor: 1 })).toThrow(NumericsError);
    expect(() => expandBracket((x) => x, 0, 1, { minimum: 0.5 })).toThrow(NumericsError);
  });
});
