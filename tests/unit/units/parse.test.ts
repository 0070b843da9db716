import {
  absolutePressure,
  differentialPressure,
  dilutionRatio,
  electricResistance,
  fraction,
  gaugePressure,
  getKind,
  type KindName,
  length,
  mass,
  massPerEnergy,
  power,
  spaceVelocity,
  standardVolumeFlow,
  temperature,
  temperatureDifference,
  torque,
  volume,
  volumeFlow,
  volumePerDistance,
} from '@wallflow/units';
import { describe, expect, it } from 'vitest';

describe('a pressure drop as people write it', () => {
  it.each([
    ['360 mbar', 36_000],
    ['360mbar', 36_000],
    ['36.0 kPa', 36_000],
    ['36,0 kPa', 36_000],
    ['36.0\u00a0kPa', 36_000],
    ['36.0\u2009kPa', 36_000],
    ['36.0\u202fkPa', 36_000],
    ['36 KPA', 36_000],
    ['0.36 bar', 36_000],
    ['.36 bar', 36_000],
    ['+0.36 bar', 36_000],
    ['36 000 Pa', 36_000],
    ["36'000 Pa", 36_000],
    ['36,000.0 Pa', 36_000],
    ['36.000,0 Pa', 36_000],
    ['3.6e4 Pa', 36_000],
    ['3,6E+4 Pa', 36_000],
    ['3.6 x 10^4 Pa', 36_000],
    ['3.6·10⁴ Pa', 36_000],
    ['3.6 × 10⁴ Pa', 36_000],
    ['-5 mbar', -500],
    ['−5 mbar', -500],
    ['- 5 mbar', -500],
    ['１０ mbar', 1000],
    ['10 inH2O (conv.)', 2490.8891],
    ['10 in. H₂O (4 °C)', 2490.82],
    ['10 mmH2O', 98.0665],
    ['10 lbf/in²', 68_947.572_931_683_61],
  ])('%s', (text, pascal) => {
    const result = differentialPressure.parse(text);
    expect(result.ok && result.quantity).toBeCloseTo(pascal, 6);
  });

  it('keeps the number, the unit and how many digits were typed', () => {
    expect(differentialPressure.parse('36,0 kPa')).toEqual({ ok: true, quantity: 36_000, value: 36, unit: 'kPa', significantDigits: 3 });
    expect(differentialPressure.parse('0.050 bar')).toMatchObject({ significantDigits: 2 });
    expect(differentialPressure.parse('360 mbar')).toMatchObject({ significantDigits: 3 });
    expect(differentialPressure.parse(360.5, 'mbar')).toMatchObject({ significantDigits: 4, value: 360.5 });
  });

  it.each([
    ['360 ± 5 mbar', 500, 5],
    ['360±5 mbar', 500, 5],
    ['360 +/- 5 mbar', 500, 5],
    ['360+/−5 mbar', 500, 5],
    ['360 +- 5 mbar', 500, 5],
    ['(360 ± 5) mbar', 500, 5],
    ['360 mbar ± 5 mbar', 500, 5],
    ['360 mbar ± 0.5 kPa', 500, 5],
    ['360 mbar ± 5', 500, 5],
    ['360 mbar ± 2 %', 720, 7.2],
    ['-360 mbar ± 2 %', 720, 7.2],
  ])('%s', (text, pascal, mbar) => {
    const result = differentialPressure.parse(text);
    if (!result.ok) throw new Error(result.issue.code);
    expect(result.uncertainty).toBeCloseTo(pascal, 9);
    expect(result.uncertaintyInUnit).toBeCloseTo(mbar, 9);
  });
});

describe('other kinds as people write them', () => {
  it.each<readonly [KindName, string, string, number]>([
    ['temperature', '-11 °C', 'degC', 262.15],
    ['temperature', '−11 ℃', 'degC', 262.15],
    ['temperature', '20 C', 'degC', 293.15],
    ['temperature', '20 degC', 'degC', 293.15],
    ['temperature', '20 ºC', 'degC', 293.15],
    ['temperature', '20 deg C', 'degC', 293.15],
    ['temperature', '300 K', 'K', 300],
    ['temperature', '68 F', 'degF', 293.15],
    ['temperatureDifference', '5 °C', 'degC', 5],
    ['temperatureDifference', '5 K', 'K', 5],
    ['temperatureDifference', '9 °F', 'degF', 5],
    ['volumeFlow', '3600 m³/h', 'm3/h', 1],
    ['volumeFlow', '3600 m^3/h', 'm3/h', 1],
    ['volumeFlow', '3600 M3/H', 'm3/h', 1],
    ['volumeFlow', '60 l/min', 'L/min', 0.001],
    ['standardVolumeFlow', '3600 Nm³/h', 'm3/h_0C', 1],
    ['standardVolumeFlow', '3600 m3/h (0 °C)', 'm3/h_0C', 1],
    ['massConcentration', '8 g/l', 'g/L', 8],
    ['rotationalSpeed', '3000 RPM', 'rpm', 50],
    ['rotationalSpeed', '3000 1/min', 'rpm', 50],
    ['rotationalSpeed', '3000 min⁻¹', 'rpm', 50],
    ['spaceVelocity', '5 1/h', '1/h', 5 / 3600],
    ['spaceVelocity', '36000 1/h', '1/h', 10],
    ['spaceVelocity', '36 000 /h', '1/h', 10],
    ['absorptionCoefficient', '2.5 m-1', '1/m', 2.5],
    ['particleNumberConcentration', '1·10⁶ #/cm³', '1/cm3', 1e12],
    ['massPerEnergy', '1 g/bhp-hr', 'g/(hp.h)', 0.001 / 2_684_519.537_696_17],
    ['torque', '1 lb-ft', 'lbf.ft', 1.355_817_948_331_4],
    ['torque', '1 ft·lb', 'lbf.ft', 1.355_817_948_331_4],
    ['specificHeatCapacity', '1 kJ/kg K', 'kJ/(kg.K)', 1000],
    ['specificHeatCapacity', '1 J/(g·K)', 'kJ/(kg.K)', 1000],
    ['volumePerDistance', '7 l/100 km', 'L/100km', 7e-8],
    ['length', '5.66"', 'in', 0.143_764],
    ['length', '5.66 ″', 'in', 0.143_764],
    ['length', '6 ft.', 'ft', 1.8288],
    ['length', '2 meters', 'm', 2],
    ['length', '80 µm', 'um', 8e-5],
    ['length', '80 microns', 'um', 8e-5],
    ['volume', '2 fl oz (US)', 'floz_US', 0.000_059_147_059_125],
    ['electricResistance', '4.7 kΩ', 'kohm', 4700],
    ['electricResistance', '4.7 MΩ', 'Mohm', 4_700_000],
    ['electricResistance', '4.7 mΩ', 'mohm', 0.0047],
    ['massFraction', '32.5 wt.-%', '%m', 0.325],
    ['fraction', '35 %', '%', 0.35],
    ['fraction', '0.35', '1', 0.35],
    ['moleFraction', '500 ppm', 'ppm', 0.0005],
  ])('%s %s', (kind, text, unit, si) => {
    const result = getKind(kind)?.parse(text);
    if (result?.ok !== true) throw new Error(JSON.stringify(result));
    expect(result.unit).toBe(unit);
    expect(result.quantity / si).toBeCloseTo(1, 12);
  });

  it('counts the ± of a percentage in percent, not in percent of it', () => {
    const result = fraction.parse('80 % ± 2 %');
    expect(result.ok && result.uncertainty).toBeCloseTo(0.02, 12);
  });

  it('carries the ± of a temperature by scale alone', () => {
    expect(temperature.parse('20 °C ± 2 K')).toMatchObject({ uncertainty: 2, uncertaintyInUnit: 2 });
    const result = temperature.parse('68 ± 9 °F');
    expect(result.ok && result.uncertainty).toBeCloseTo(5, 12);
  });

  it('carries the ± of a unit that counts the other way round by its slope', () => {
    // 235.2145833 L/100 km at 1 mpg: d(L/100km) = 235.2145833/mpg² · d(mpg).
    const mpg = volumePerDistance.parse('30 ± 1 mpg (US)');
    expect(mpg.ok && mpg.uncertainty).toBeCloseTo((235.214_583_333_333 / 900) * 1e-8, 18);
    const litres = volumePerDistance.parse('7 L/100km ± 1 mpg (US)');
    expect(litres.ok && litres.uncertaintyInUnit).toBeCloseTo(49 / 235.214_583_333_333, 10);
  });
});

describe('parts of a mix', () => {
  it.each([
    ['1:4', 4],
    ['1 : 4', 4],
    ['1:0', 0],
    ['1:0.5', 0.5],
    ['2:3', 1.5],
    ['1:2,5', 2.5],
    ['4', 4],
  ])('%s is %d parts of diluent to one of concentrate', (text, parts) => {
    const result = dilutionRatio.parse(text);
    expect(result.ok && result.quantity).toBe(parts);
  });

  it('asks which way round 4:1 is meant', () => {
    expect(dilutionRatio.parse('4:1')).toEqual({
      ok: false,
      issue: { code: 'ambiguous_unit', text: '4:1', unit: '4:1', candidates: ['1:4', '1:0.25'] },
    });
  });

  it.each(['0:1', '1:-4', '1:', ':4', '1:2:3', '1:x', 'one to four'])('refuses %s', (text) => {
    expect(dilutionRatio.parse(text).ok).toBe(false);
  });
});

describe('what is refused', () => {
  it.each([
    ['', 'empty'],
    ['   ', 'empty'],
    ['mbar', 'not_numeric'],
    ['NaN mbar', 'not_finite'],
    ['Infinity mbar', 'not_finite'],
    ['-inf mbar', 'not_finite'],
    ['1e999 mbar', 'not_finite'],
    ['1e-999 mbar', 'too_small'],
    ['0x10 mbar', 'not_numeric'],
    ['5x1000 Pa', 'not_numeric'],
    ['10³ Pa', 'not_numeric'],
    ['1,234 mbar', 'ambiguous_separator'],
    ['1.2.3 mbar', 'not_numeric'],
    ['12 5 mbar', 'not_numeric'],
    ['5 3/8 mbar', 'not_numeric'],
    ['1:4 mbar', 'not_numeric'],
    ['360 ± -5 mbar', 'negative_uncertainty'],
    ['360 ± mbar', 'not_numeric'],
    ['± 5 mbar', 'not_numeric'],
    ['360 \u202embar', 'control_character'],
    ['360\u200bmbar', 'control_character'],
    ['360 mbar\u0000', 'control_character'],
    ['360 mbar\u00ad', 'control_character'],
    ['360 mbar\ud800', 'control_character'],
    [`${'1'.repeat(200)} mbar`, 'too_long'],
  ])('%j as no number', (text, reason) => {
    const result = differentialPressure.parse(text);
    expect(result.ok ? result : result.issue).toMatchObject({ code: 'not_a_number', reason });
  });

  it('says where a unit is missing, and names a few', () => {
    expect(differentialPressure.parse('360')).toEqual({
      ok: false,
      issue: {
        code: 'missing_unit',
        text: '360',
        expected: 'differentialPressure',
        candidates: ['mbar', 'kPa', 'hPa', 'Pa', 'bar', 'psi'],
      },
    });
  });

  it('offers what is spelled most alike first', () => {
    const first = (text: string) => {
      const result = differentialPressure.parse(text);
      return result.ok ? undefined : result.issue.code === 'unknown_unit' && result.issue.candidates[0];
    };
    expect(['1 mbr', '1 MBAR', '1 mpa', '1 kpaz', '1 mmHG2'].map(first)).toEqual(['mbar', 'mbar', 'MPa', 'kPa', 'mmHg_conventional']);
  });

  it.each<readonly [KindName, string, KindName]>([
    ['absolutePressure', '5 psig', 'gaugePressure'],
    ['gaugePressure', '5 bara', 'absolutePressure'],
    ['differentialPressure', '5 barg', 'gaugePressure'],
    ['gaugePressure', '5 kPa(a)', 'absolutePressure'],
    ['volumeFlow', '5 Nm3/h', 'standardVolumeFlow'],
    ['energy', '5 N.m', 'torque'],
    ['torque', '5 J', 'energy'],
    ['length', '5 Nm', 'torque'],
    ['temperature', '5 kg', 'mass'],
    ['ratio', '5 %', 'fraction'],
  ])('%s of %s as a unit of another kind', (kind, text, other) => {
    const result = getKind(kind)?.parse(text);
    expect(result?.ok === false && result.issue).toMatchObject({ code: 'wrong_kind', expected: kind });
    expect(result?.ok === false && result.issue.code === 'wrong_kind' && result.issue.found).toContain(other);
  });

  it('what is below absolute zero, with the limit in the unit that was typed', () => {
    const issue = (result: { ok: boolean }) => (result as { issue?: unknown }).issue;
    expect(issue(temperature.parse('-300 °C'))).toEqual({ code: 'below_absolute_zero', text: '-300 °C', unit: 'degC', limit: -273.15 });
    expect(issue(temperature.parse('-460 °F'))).toMatchObject({ limit: -459.67 });
    expect(issue(absolutePressure.parse('-1 mbar'))).toMatchObject({ code: 'below_absolute_zero', unit: 'mbar', limit: 0 });
    expect(temperature.parse('-273.15 °C')).toMatchObject({ ok: true, quantity: 0 });
    expect(gaugePressure.parse('-200 mbar').ok).toBe(true);
    expect(temperatureDifference.parse('-300 °C').ok).toBe(true);
  });

  it('no miles per gallon that would be infinite fuel', () => {
    expect(volumePerDistance.parse('0 mpg (US)').ok).toBe(false);
  });
});

describe('an ambiguous spelling', () => {
  const spellings: readonly (readonly [KindName, string])[] = [
    ['volume', 'gal'],
    ['volume', 'GAL'],
    ['volume', 'gallons'],
    ['volume', 'qt'],
    ['volume', 'pint'],
    ['volume', 'fl. oz'],
    ['volume', 'oz'],
    ['mass', 'ton'],
    ['density', 'lb/gal'],
    ['differentialPressure', 'inH2O'],
    ['differentialPressure', 'inH₂O'],
    ['differentialPressure', 'in w.c.'],
    ['differentialPressure', '"H2O'],
    ['differentialPressure', 'ftH2O'],
    ['absolutePressure', 'inHg'],
    ['gaugePressure', 'inHg'],
    ['power', 'hp'],
    ['power', 'HP'],
    ['power', 'Btu/h'],
    ['energy', 'BTU'],
    ['energy', 'cal'],
    ['energy', 'kcal'],
    ['specificEnergy', 'Btu/lb'],
    ['specificHeatCapacity', 'Btu/(lb·°F)'],
    ['volumeFlow', 'gpm'],
    ['standardVolumeFlow', 'scfm'],
    ['standardVolumeFlow', 'SCFM'],
    ['standardVolumeFlow', 'm3/h'],
    ['standardVolumeFlow', 'm³/h'],
    ['standardVolumeFlow', 'Sm3/h'],
    ['standardVolumeFlow', 'l/min'],
    ['standardVolumeFlow', 'slpm'],
    ['volumePerDistance', 'mpg'],
    ['volumePerDistance', 'MPG'],
    ['volumePerDistance', 'gal/100mi'],
  ];

  it.each(spellings)('of %s, %s, lists units that can be written instead', (kind, spelling) => {
    const own = getKind(kind);
    // With so many digits even units that are nearly alike can be told apart.
    const result = own?.parse(`5.00000 ${spelling}`);
    const issue = result?.ok === false ? result.issue : undefined;
    if (own === undefined || issue?.code !== 'ambiguous_unit') throw new Error(JSON.stringify(result));
    expect(issue.candidates.length).toBeGreaterThan(1);
    for (const candidate of issue.candidates) expect(own.parse(`5 ${candidate}`)).toMatchObject({ ok: true, unit: candidate });
  });
});

describe('an ambiguity smaller than the digits typed', () => {
  it('is the conventional unit, and says what else it could be', () => {
    // Inches of water differ by 0.1 %, half of the last digit of 9 by 6 %.
    expect(getKind('differentialPressure')?.parse('9 inH2O')).toMatchObject({
      unit: 'inH2O_conventional',
      alternatives: ['inH2O_4C', 'inH2O_60F'],
    });
    expect(getKind('differentialPressure')?.parse('9.0 ± 0.5 inH2O')).toMatchObject({ ok: true, unit: 'inH2O_conventional' });
    // A record's number was not typed digit by digit.
    expect(getKind('differentialPressure')?.parse(9, 'inH2O').ok).toBe(false);
    expect(getKind('absolutePressure')?.parse('30 inHg')).toMatchObject({ unit: 'inHg_conventional' });
    expect(getKind('differentialPressure')?.parse('9.000 inH2O').ok).toBe(false);
  });

  it('is none where the units differ by more than a hundredth, however coarse the number', () => {
    for (const text of ['1 gal', '1 qt', '1 oz', '1 fl oz']) expect(volume.parse(text).ok).toBe(false);
    expect(power.parse('1 hp').ok).toBe(false);
  });
});

describe('a point before three digits', () => {
  it('is asked about with a unit that is read in thousands', () => {
    for (const text of ['184.000 km', '184.300 km', '184.000 ± 1 km', '1.206 mi']) {
      expect(length.parse(text)).toMatchObject({ ok: false, issue: { code: 'not_a_number', reason: 'ambiguous_separator' } });
    }
    expect(getKind('rotationalSpeed')?.parse('3.000 rpm').ok).toBe(false);
  });

  it('is a decimal point elsewhere, and where it cannot part thousands', () => {
    for (const text of [
      '184 km',
      '184000 km',
      '184 000 km',
      '184.0 km',
      '184.0000 km',
      '0.184 km',
      '1840.000 km',
      '184.123 ± 0.010 km',
      '1.500 m',
      '101.325 mm',
    ]) {
      expect(length.parse(text).ok, text).toBe(true);
    }
    expect(volume.parse('1.500 L')).toMatchObject({ ok: true, value: 1.5 });
    expect(getKind('density')?.parse('1.206 kg/m3')).toMatchObject({ ok: true, value: 1.206 });
  });

  it('is never written so by the formatter', () => {
    expect(length.format(length.si(184_125), 'km')).toBe('184.1250 km');
    expect(length.format(length.si(184_120), 'km')).toBe('184.12 km');
  });
});

describe('the same number in two kinds', () => {
  it('is read by the kind that was asked', () => {
    expect(length.parse('5 mil')).toMatchObject({ unit: 'mil' });
    expect(mass.parse('5 oz')).toMatchObject({ unit: 'oz' });
    expect(volume.parse('5 oz').ok).toBe(false);
    expect(torque.parse('5 Nm')).toMatchObject({ unit: 'N.m' });
    expect(power.parse('100 PS')).toMatchObject({ quantity: 73_549.875 });
    expect(massPerEnergy.parse('200 g/kWh')).toMatchObject({ unit: 'g/kWh' });
    expect(volumeFlow.parse('5 m3/h')).toMatchObject({ unit: 'm3/h' });
    expect(standardVolumeFlow.parse('5 m3/h').ok).toBe(false);
    expect(spaceVelocity.parse('5 1/s')).toMatchObject({ unit: '1/s' });
    expect(electricResistance.parse('5 ohms')).toMatchObject({ unit: 'ohm' });
  });
});
