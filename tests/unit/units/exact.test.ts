import { convertExact, parseExact } from '@wallflow/units/exact';
import { describe, expect, it } from 'vitest';

describe('exact conversion', () => {
  it('gives all decimals where they end', () => {
    expect(convertExact('volume', '1', 'gal_US', 'L')).toEqual({ ok: true, text: '3.785411784', exact: true, rounded: false });
    expect(convertExact('differentialPressure', '36,0', 'kPa', 'mbar')).toMatchObject({ text: '360', exact: true });
    expect(convertExact('temperature', '20', 'degC', 'degF')).toMatchObject({ text: '68', exact: true });
    expect(convertExact('temperature', '0.1', 'degF', 'degF')).toMatchObject({ text: '0.1', exact: true });
    expect(convertExact('volumePerDistance', '20', 'km/L', 'L/100km')).toMatchObject({ text: '5', exact: true });
    expect(convertExact('mass', '0.1', 'lb', 'kg')).toMatchObject({ text: '0.045359237', exact: true });
    expect(convertExact('length', '123456789012345678901234567890.1', 'in', 'mil')).toMatchObject({
      text: '123456789012345678901234567890100',
      exact: true,
    });
  });

  it('rounds once, at the end, where the decimals do not end, and says so', () => {
    expect(convertExact('differentialPressure', '1', 'psi', 'Pa')).toEqual({
      ok: true,
      text: '6894.75729316836133672267344535',
      exact: false,
      rounded: true,
    });
    expect(convertExact('energy', '1', 'Btu_th', 'J', { digits: 10 })).toMatchObject({ text: '1054.350264', rounded: true });
    expect(convertExact('length', '2', 'm', 'ft', { digits: 0 })).toMatchObject({ text: '7', rounded: true });
  });

  it('says that a result is not exact where the factor is a measured one', () => {
    expect(convertExact('differentialPressure', '1', 'inH2O_4C', 'Pa')).toEqual({
      ok: true,
      text: '249.082',
      exact: false,
      rounded: false,
    });
    expect(convertExact('differentialPressure', '1', 'inH2O_4C', 'inH2O_4C')).toMatchObject({ text: '1', exact: true });
  });

  it('writes very large and very small numbers with a power of ten', () => {
    expect(convertExact('length', '1e300', 'km', 'm')).toMatchObject({ text: '1e+303', exact: true });
    expect(convertExact('length', '1e-60', 'mm', 'm')).toMatchObject({ text: '1e-63', exact: true });
    expect(convertExact('length', '-0', 'mm', 'm')).toMatchObject({ text: '0', exact: true });
  });

  it.each([
    ['', 'not_a_number'],
    ['12 mbar', 'not_a_number'],
    ['1,234', 'not_a_number'],
    ['NaN', 'not_a_number'],
    ['1e999', 'not_a_number'],
    ['1\u0000', 'not_a_number'],
    ['1'.repeat(1_000_000), 'not_a_number'],
  ])('refuses %.20j', (text, code) => {
    const result = convertExact('differentialPressure', text, 'mbar', 'kPa');
    expect(result.ok ? 'read' : result.issue.code).toBe(code);
  });

  it('refuses what cannot be, and units it does not know', () => {
    const code = (result: ReturnType<typeof convertExact>) => (result.ok ? 'read' : result.issue.code);
    expect(code(convertExact('temperature', '-273.16', 'degC', 'K'))).toBe('below_absolute_zero');
    expect(code(convertExact('temperature', '-273.15', 'degC', 'K'))).toBe('read');
    expect(code(convertExact('volumePerDistance', '0', 'mpg_US', 'L/100km'))).toBe('not_a_number');
    expect(code(convertExact('volumePerDistance', '0', 'L/100km', 'mpg_US'))).toBe('not_a_number');
    expect(code(convertExact('volume', '1', 'gal' as never, 'L'))).toBe('ambiguous_unit');
    expect(code(convertExact('volume', '1', 'L', 'furlong' as never))).toBe('unknown_unit');
    expect(() => convertExact('nonsense' as never, '1', 'L' as never, 'mL' as never)).toThrow(RangeError);
  });
});

describe('exact reading', () => {
  it('keeps the decimals as they were typed and gives SI as decimals', () => {
    expect(parseExact('differentialPressure', '36,0 ± 0,5 kPa')).toEqual({
      ok: true,
      value: { text: '36', exact: true, rounded: false },
      unit: 'kPa',
      significantDigits: 3,
      si: { text: '36000', exact: true, rounded: false },
      uncertainty: { text: '500', exact: true, rounded: false },
    });
    expect(parseExact('volume', '0.1 L')).toMatchObject({ si: { text: '0.0001' } });
    expect(parseExact('temperature', '20 °C ± 9 °F')).toMatchObject({ si: { text: '293.15' }, uncertainty: { text: '5' } });
    expect(parseExact('differentialPressure', '-360 mbar ± 2 %')).toMatchObject({ si: { text: '-36000' }, uncertainty: { text: '720' } });
  });

  it('keeps parts of a mix as a quotient', () => {
    expect(parseExact('dilutionRatio', '1:4')).toMatchObject({ si: { text: '4', exact: true } });
    expect(parseExact('dilutionRatio', '3:7', { digits: 5 })).toMatchObject({ si: { text: '2.3333', exact: false, rounded: true } });
  });

  it('carries the uncertainty of units that count the other way round', () => {
    // 0.003785411784/1609.344/30² = 2.6134953703703703…e-9
    expect(parseExact('volumePerDistance', '30 ± 1 mpg (US)', { digits: 12 })).toMatchObject({
      uncertainty: { text: '0.00000000261349537037' },
    });
    expect(parseExact('volumePerDistance', '0 ± 1 L/100km')).toMatchObject({ ok: true, si: { text: '0' } });
    expect(parseExact('volumePerDistance', '0 L/100km ± 1 mpg (US)').ok).toBe(false);
  });

  it('refuses as parse does', () => {
    const code = (text: string) => {
      const result = parseExact('differentialPressure', text);
      return result.ok ? 'read' : result.issue.code;
    };
    expect(['360', '5.00000 inH2O', '5 psig', '5 furlong', 'NaN'].map(code)).toEqual([
      'missing_unit',
      'ambiguous_unit',
      'wrong_kind',
      'unknown_unit',
      'not_a_number',
    ]);
    expect(parseExact('temperature', '-300 °C')).toMatchObject({ ok: false, issue: { code: 'below_absolute_zero', limit: -273.15 } });
  });
});
