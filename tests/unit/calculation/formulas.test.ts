import { formula } from '@wallflow/calculation';
import { describe, expect, it } from 'vitest';
import { evaluate, type Scope } from '../../../packages/calculation/src/formula/evaluate.js';
import type { Expression } from '../../../packages/calculation/src/formula/expression.js';
import { parseFormula } from '../../../packages/calculation/src/formula/parse.js';
import { formulaTex, formulaText } from '../../../packages/calculation/src/formula/render.js';

const values: Readonly<Record<string, unknown>> = { a: 6, b: 3, c: -2, layout: 'alternate', flows: [{ q: 1 }, { q: 2 }, { q: 6 }] };

const scope: Scope = {
  value(key, column) {
    const value = values[key];
    return (column === undefined ? value : (value as Record<string, number>[]).map((row) => row[column])) as never;
  },
  quantity: (number) => number,
};

describe('a formula', () => {
  // Worked out by hand.
  it.each([
    ['a + b * c', 0],
    ['(a + b) * c', -18],
    ['a - b - c', 5],
    ['a / b / 2', 1],
    ['2 ^ 3 ^ 2', 512],
    ['-b ^ 2', -9],
    ['2 ^ -1', 0.5],
    ['a * -c', 12],
    ['sqrt(a + b) + abs(c)', 5],
    ['ln(exp(1.5)) + log(1000)', 4.5],
    ['sum(flows.q)', 9],
    ['mean(flows.q * 2)', 6],
    // Deviations −2, −1, 3: squares 14 over 2.
    ['deviation(flows.q) ^ 2', 7],
    ['max(a, b, c) - min(a, b, c)', 8],
    ['count(flows.q) + first(flows.q) + last(flows.q)', 10],
    ['1.5e-3 * 1000', 1.5],
    ['2 * pi / pi', 2],
    ['floor(2.7) + ceil(2.1) + round(2.5)', 8],
  ])('%s is %d', (text, value) => {
    expect(evaluate(parseFormula(text), scope)).toBeCloseTo(value, 12);
  });

  it.each([
    ["layout == 'alternate' and a > b", true],
    ['not a > b or c >= 0', false],
    ['known(a) and not known(missing)', true],
    ['missing > 3', false],
  ])('%s is %s', (text, value) => {
    expect(evaluate(parseFormula(text), scope)).toBe(value);
  });

  it('comes to nothing where a part of it is not given', () => {
    expect(evaluate(parseFormula('a + missing'), scope)).toBeUndefined();
  });

  it.each([
    ['a *', 'ends too early'],
    ['(a + b', 'ends too early'],
    ['a b', 'cannot have "b" at position 2'],
    ['sine(a)', 'has no function sine'],
    ['a $ b', 'cannot be read from "$ b"'],
  ])('%s is refused when the definition is made', (text, reason) => {
    expect(() => formula('x', text)).toThrow(reason);
  });

  const writing = { name: ({ key }: { key: string }) => key, unit: (unit: string) => unit };
  it.each([
    ['a * b / (c * (a + b))', '\\frac{{a}\\,{b}}{{c}\\,\\left({a}+{b}\\right)}'],
    ['a - (b - c)', '{a}-\\left({b}-{c}\\right)'],
    ['(a + b) ^ 2', '\\left({a}+{b}\\right)^{2}'],
    ['(a / b) ^ 2', '\\left(\\frac{{a}}{{b}}\\right)^{2}'],
    ['sqrt(a / b)', '\\sqrt{\\frac{{a}}{{b}}}'],
    ['2 * a', '2\\,{a}'],
    ['a * 2', '{a}\\cdot 2'],
    ['exp(-a / b)', 'e^{\\frac{-{a}}{{b}}}'],
    ['a >= b', '{a}\\ge {b}'],
    ['0.4e-4 * a', '4\\times 10^{-5}\\,{a}'],
    ['a / 1.5e3', '\\frac{{a}}{1500}'],
  ])('%s is set as TeX', (text, tex) => {
    expect(formulaTex(parseFormula(text), writing)).toBe(tex);
  });

  it.each([
    ['a * b / (c * (a + b))', 'a × b / (c × (a + b))'],
    ['a - (b - c)', 'a − (b − c)'],
    ['a / (b / c)', 'a / (b / c)'],
    ['(a + b) ^ 2', '(a + b)^2'],
    ['-(a + b)', '−(a + b)'],
    ['0.4e-4 * a', '4 × 10⁻⁵ × a'],
    ['a < 1e-5', 'a < 1 × 10⁻⁵'],
  ])('%s is written as one types it', (text, plain) => {
    expect(formulaText(parseFormula(text), ({ key }) => key)).toBe(plain);
  });

  it('keeps a power of ten together where it divides or is raised', () => {
    const tiny = { type: 'number', value: 1.5e-5, text: '1.5 × 10⁻⁵', tex: '1.5\\times 10^{-5}' } as const;
    const two = { type: 'number', value: 2, text: '2' } as const;
    const written = (sign: '*' | '/' | '^', left: Expression, right: Expression) =>
      formulaText({ type: 'pair', sign, left, right }, ({ key }) => key);
    expect(written('/', two, tiny)).toBe('2 / (1.5 × 10⁻⁵)');
    expect(written('^', tiny, two)).toBe('(1.5 × 10⁻⁵)^2');
    expect(written('*', two, tiny)).toBe('2 × 1.5 × 10⁻⁵');
  });
});
