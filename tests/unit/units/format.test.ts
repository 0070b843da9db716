import {
  differentialPressure,
  dilutionRatio,
  formatNumber,
  fraction,
  mass,
  spaceVelocity,
  standardVolumeFlow,
  temperature,
  time,
  volumeFlow,
  volumePerDistance,
} from '@wallflow/units';
import { describe, expect, it } from 'vitest';

describe('a number', () => {
  it.each([
    [0, undefined, '0'],
    [-0, undefined, '0'],
    [-0.000_000_01, 2, '-1.0e-8'],
    [0.1 + 0.2, undefined, '0.3'],
    [9.996, 3, '10.0'],
    [99.95, 3, '100'],
    [0.145, 2, '0.15'],
    [1.005, 3, '1.01'],
    [-1.005, 3, '-1.01'],
    [2.5, 1, '3'],
    [-2.5, 1, '-3'],
    [0, 3, '0.00'],
    [123_456, 2, '120000'],
    [12.5, 5, '12.500'],
    [1_234_567.891_234_5, undefined, '1234567.89123'],
    [999_999_999_999.96, undefined, '1000000000000'],
    [0.000_012_345, 3, '0.0000123'],
    [0.000_009_999_9, 3, '0.0000100'],
    [0.000_001_234, 3, '1.23e-6'],
    [1e21, undefined, '1e21'],
    [1.5e15, 3, '1.50e15'],
    [12.345_678_901_234_5, 40, '12.3456789012'],
    [12.3, 0, '10'],
    [5e-324, 2, '4.9e-324'],
    [1.797_693_134_862_315_7e308, 3, '1.80e308'],
    [Number.NaN, 3, 'NaN'],
    [Number.POSITIVE_INFINITY, undefined, 'Infinity'],
    [Number.NEGATIVE_INFINITY, 2, '-Infinity'],
  ])('%d with %s digits is %s', (value, digits, text) => {
    expect(formatNumber(value, digits)).toBe(text);
  });
});

describe('a quantity', () => {
  const drop = differentialPressure(360, 'mbar');

  it('is written in the most usual unit of its kind, or in the one named', () => {
    expect(differentialPressure.format(drop)).toBe('360 mbar');
    expect(differentialPressure.format(drop, 'kPa')).toBe('36 kPa');
    expect(differentialPressure.format(drop, 'kPa', { digits: 3 })).toBe('36.0 kPa');
    expect(differentialPressure.format(drop, 'psi', { digits: 4 })).toBe('5.221 psi');
    expect(differentialPressure.format(drop, 'inH2O_60F', { digits: 4 })).toBe('144.7 inH₂O (60 °F)');
    expect(differentialPressure.format(drop, 'mbar', { unitless: true })).toBe('360');
    expect(volumeFlow.format(volumeFlow(0.1, 'm3/s'))).toBe('360 m³/h');
    expect(standardVolumeFlow.format(standardVolumeFlow(360, 'm3/h_0C'), 'm3/h_20C', { digits: 4 })).toBe('386.4 m³/h (20 °C)');
    expect(fraction.format(fraction.si(0.35))).toBe('35 %');
    expect(fraction.format(fraction.si(0.35), '1')).toBe('0.35');
    expect(spaceVelocity.format(spaceVelocity(30_000, '1/h'))).toBe('30000 1/h');
    expect(time.format(time(2, 'year'), 'month')).toBe('24 months');
  });

  it('shows an uncertainty with two digits and cuts the value at the same place', () => {
    const show = (value: number, spread: number) =>
      differentialPressure.format(differentialPressure(value, 'mbar'), 'mbar', { uncertainty: differentialPressure(spread, 'mbar') });
    expect(show(360, 5)).toBe('360.0 ± 5.0 mbar');
    expect(show(360.456, 0.0996)).toBe('360.46 ± 0.10 mbar');
    expect(show(123_456, 1234)).toBe('123500 ± 1200 mbar');
    expect(show(-0.3, 50)).toBe('0 ± 50 mbar');
    expect(show(360, 0)).toBe('360 mbar');
    expect(show(1.234_567_89e-7, 1.5e-9)).toBe('1.235e-7 ± 1.5e-9 mbar');
    expect(show(1_234_567.891, 1.5e-9)).toBe('1234567.89100 ± 1.5e-9 mbar');
  });

  it('carries the uncertainty of a temperature and of miles per gallon by their scale', () => {
    expect(temperature.format(temperature(20, 'degC'), 'degF', { uncertainty: 5 })).toBe('68.0 ± 9.0 °F');
    const use = volumePerDistance(30, 'mpg_US');
    expect(volumePerDistance.format(use, 'mpg_US', { uncertainty: use / 30 })).toBe('30.0 ± 1.0 mpg (US)');
  });

  it('shows no noise from the offset of a temperature', () => {
    expect(temperature.format(temperature(0.001, 'degC'), 'degC')).toBe('0.001 °C');
    expect(temperature.format(temperature(-40, 'degF'), 'degC')).toBe('-40 °C');
    expect(temperature.format(temperature(0.1, 'degF'), 'degF')).toBe('0.1 °F');
    expect(temperature.format(temperature.si(273.15), 'degC', { digits: 3 })).toBe('0.00 °C');
  });

  it('writes a mix in parts', () => {
    expect(dilutionRatio.format(dilutionRatio.si(4))).toBe('1:4');
    expect(dilutionRatio.format(dilutionRatio.si(1.5), '1', { digits: 3 })).toBe('1:1.50');
    expect(dilutionRatio.format(dilutionRatio.si(4), '1', { uncertainty: 0.1 })).toBe('4.00 ± 0.10');
    expect(dilutionRatio.format(dilutionRatio.si(4), '1', { unitless: true })).toBe('4');
  });

  it('does not hide what is no number', () => {
    expect(mass.format(mass.si(Number.NaN))).toBe('NaN g');
    expect(volumePerDistance.format(volumePerDistance.si(0), 'mpg_US')).toBe('Infinity mpg (US)');
  });
});
