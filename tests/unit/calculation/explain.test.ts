import { numberTex, textTex, unitTex } from '@wallflow/calculation';
import { describe, expect, it } from 'vitest';
import { good, heater } from './sample.js';

describe('explain', () => {
  const explained = heater.explain(good);
  const steps = explained.ok ? explained.steps : [];

  it('fills the numbers into the formula and keeps the left side in symbols', () => {
    expect(steps[0]).toMatchObject({
      gives: 'power',
      tex: '{P}={U}\\,{I}',
      numbersTex: '{P}=12\\,\\mathrm{V}\\cdot 2.5\\,\\mathrm{A}',
      valueText: '30.0 W',
      source: 'A. Author, A Book, Eq. 1, 1900',
    });
  });

  it('leaves out the step of an output that does not exist', () => {
    expect(steps.map((step) => step.gives)).toEqual(['power', 'energy']);
  });

  it('writes what a step in words refers to', () => {
    const withPressure = heater.explain({ ...good, backPressure: '2 psi' });
    expect(withPressure.ok ? withPressure.steps[1]?.text : '').toMatch(/^Only with a pressure: 137\.895 mbar\.$/);
  });

  it('returns the issues of a refused input', () => {
    expect(heater.explainUnknown({}).ok).toBe(false);
  });
});

describe('TeX', () => {
  it.each([
    [0, '0'],
    [30, '30'],
    [1.838e-5, '1.838\\times 10^{-5}'],
    [1e-7, '10^{-7}'],
    [-2.5e9, '-2.5\\times 10^{9}'],
    [123456.789, '123460'],
  ])('%d', (value, tex) => {
    expect(numberTex(value)).toBe(tex);
  });

  it('writes units upright with powers, degrees and per cent', () => {
    expect(unitTex('m³/h')).toBe('\\mathrm{m^{3}/h}');
    expect(unitTex('°C')).toBe('\\mathrm{{}^{\\circ}C}');
    expect(unitTex('%')).toBe('\\mathrm{\\%}');
    expect(unitTex('')).toBe('');
  });

  it('lets no word of a user become a command', () => {
    expect(textTex('50 % \\input{x} $y$')).toBe('\\text{50 \\% /input\\{x\\} \\$y\\$}');
  });
});
