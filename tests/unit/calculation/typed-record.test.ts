import { issueText } from '@wallflow/calculation';
import { prepare } from '@wallflow/calculation/prepare';
import { gasDensityCalculation } from '@wallflow/exhaust/calculations/gas';
import { dilutionRatio, length, parseNumber, temperature } from '@wallflow/units';
import { describe, expect, it } from 'vitest';

const others = { gasTemperature: '0 °C', molarMass: '22.41396954 g/mol' };
const densityOf = (gasPressure: unknown) => gasDensityCalculation.runUnknown({ ...others, gasPressure });

describe('a record with its numbers as they were typed', () => {
  it('gives the same as one text, ± and digits included', () => {
    for (const value of ['1,01325', '1.01325', ' 1.01325 ', '101325e-5']) {
      const apart = densityOf({ value, unit: 'bar', uncertainty: '0,01' });
      expect(apart).toEqual(densityOf(`${value.trim()} ± 0,01 bar`));
      expect(apart.ok && apart.outputs.density).toBeCloseTo(1, 8);
      expect(apart.ok && apart.uncertainty?.values.density).toBeCloseTo(0.01 / 1.01325, 8);
    }
    expect(densityOf({ value: '1.01325', unit: 'bar', uncertainty: 0.01 })).toEqual(
      densityOf({ value: 1.01325, unit: 'bar', uncertainty: '0.01' }),
    );
  });

  it('names the number and never takes its letters for a unit', () => {
    const refused = densityOf({ value: '6o', unit: 'mbar' });
    const issues = refused.ok ? [] : refused.issues;
    expect(issues).toMatchObject([{ code: 'not_a_number', path: ['gasPressure'], part: 'value', reason: 'not_numeric' }]);
    expect(issues.map((issue) => issueText(issue)).join()).toContain('Absolute pressure of the gas: "6o" is not a number;');
  });

  it.each([
    [
      { value: '', unit: 'mbar' },
      { code: 'not_a_number', part: 'value', reason: 'empty' },
    ],
    [
      { value: '1 bar', unit: 'bar' },
      { code: 'not_a_number', part: 'value', reason: 'not_numeric' },
    ],
    [
      { value: '95 ± 2', unit: 'mbar' },
      { code: 'not_a_number', part: 'value', reason: 'not_numeric' },
    ],
    [
      { value: '1,013', unit: 'bar' },
      { code: 'not_a_number', part: 'value', reason: 'ambiguous_separator' },
    ],
    [
      { value: '1', unit: 'kg' },
      { code: 'wrong_kind', part: 'unit', unit: 'kg' },
    ],
    [
      { value: 1, unit: 'brr' },
      { code: 'unknown_unit', part: 'unit', unit: 'brr' },
    ],
    [
      { value: '1', unit: '' },
      { code: 'missing_unit', part: 'unit' },
    ],
    [
      { value: '1.0', unit: 'bar', uncertainty: 'x' },
      { code: 'not_a_number', part: 'uncertainty', reason: 'not_numeric' },
    ],
    [
      { value: '1.0', unit: 'bar', uncertainty: '-0.1' },
      { code: 'not_a_number', part: 'uncertainty', reason: 'negative_uncertainty' },
    ],
    [
      { value: '1.0', unit: 'bar', uncertainty: -0.1 },
      { code: 'not_a_number', part: 'uncertainty', reason: 'negative_uncertainty' },
    ],
    [{ value: '900', unit: 'bar' }, { code: 'out_of_range' }],
  ])('says of %j what part is wrong', (given, issue) => {
    const refused = densityOf(given);
    expect(refused.ok ? [] : refused.issues).toMatchObject([{ path: ['gasPressure'], ...issue }]);
    for (const one of refused.ok ? [] : refused.issues) expect(issueText(one).length).toBeLessThan(400);
  });

  it('compiles', () => {
    expect(gasDensityCalculation.run({ ...others, gasPressure: { value: '1,5', unit: 'bar', uncertainty: '0,1' } }).ok).toBe(true);
  });

  it('is what texts in the rows of a prepared calculation are', () => {
    const row = prepare(gasDensityCalculation, { units: { gasPressure: 'bar' }, given: others }).row({ gasPressure: '1,01325' });
    expect(row.ok && row.outputs.density).toBeCloseTo(1, 8);
  });
});

describe('a number and a unit that are read apart', () => {
  it('reads parts of a mix, and asks for a point that can part thousands', () => {
    expect(dilutionRatio.parse('1:4', '')).toMatchObject({ ok: true, quantity: 4 });
    expect(length.parse('184.000', 'km')).toMatchObject({ ok: false, issue: { code: 'not_a_number', reason: 'ambiguous_separator' } });
    expect(length.parse('184.000', 'mm')).toMatchObject({ ok: true, value: 184, significantDigits: 6 });
    expect(temperature.parse('-300', 'degC')).toMatchObject({ ok: false, issue: { code: 'below_absolute_zero' } });
  });

  it('reads a number alone', () => {
    expect(parseNumber('1.234,5')).toEqual({ ok: true, value: 1234.5, significantDigits: 5 });
    expect(parseNumber('1,234')).toEqual({ ok: false, reason: 'ambiguous_separator' });
    expect(parseNumber('12 bar')).toEqual({ ok: false, reason: 'not_numeric' });
    expect(parseNumber('x'.repeat(300))).toEqual({ ok: false, reason: 'too_long' });
    expect(parseNumber('1\u0000')).toEqual({ ok: false, reason: 'control_character' });
    expect(parseNumber('184.000', 'km')).toEqual({ ok: false, reason: 'ambiguous_separator' });
  });
});
