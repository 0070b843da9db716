import {
  absolutePressure,
  compare,
  difference,
  differenceInUnit,
  differentialPressure,
  gaugePressure,
  getKind,
  type Kind,
  type KindName,
  kinds,
  temperature,
  toAbsolute,
  toGauge,
  UnitError,
  unitInfo,
  unitSymbol,
  volumePerDistance,
} from '@wallflow/units';
import { describe, expect, it } from 'vitest';

const all = Object.values(kinds) as unknown as readonly Kind<KindName>[];

describe('a kind', () => {
  it('makes quantities that are plain SI numbers', () => {
    expect(differentialPressure(360, 'mbar')).toBe(36_000);
    expect(temperature(20, 'degC')).toBe(293.15);
    expect(differentialPressure.si(36_000)).toBe(36_000);
    expect(differentialPressure.in(differentialPressure(360, 'mbar'), 'kPa')).toBe(36);
  });

  it.each([
    [() => differentialPressure(Number.NaN, 'mbar'), 'not_a_number'],
    [() => differentialPressure(Number.POSITIVE_INFINITY, 'mbar'), 'not_a_number'],
    [() => differentialPressure(1e308, 'bar'), 'not_a_number'],
    [() => temperature(-300, 'degC'), 'below_absolute_zero'],
    [() => differentialPressure(1, 'mbr' as never), 'unknown_unit'],
    [() => differentialPressure.in(differentialPressure.si(1), 'mbr' as never), 'unknown_unit'],
    [() => differentialPressure.format(differentialPressure.si(1), 'mbr' as never), 'unknown_unit'],
    [() => differentialPressure.symbol('mbr' as never), 'unknown_unit'],
    [() => differentialPressure.differenceIn(1, 'mbr' as never), 'unknown_unit'],
  ])('throws one error that carries the issue: %s', (make, code) => {
    expect(make).toThrow(UnitError);
    try {
      make();
    } catch (error) {
      expect((error as UnitError).issue.code).toBe(code);
      expect((error as UnitError).message).toContain(code);
    }
  });

  it('says what it is', () => {
    expect(differentialPressure.kind).toBe('differentialPressure');
    expect(differentialPressure.label).toBe('differential pressure');
    expect(kinds.volumeFlow.label).toBe('actual volume flow');
    expect(differentialPressure.dimension).toEqual({ length: -1, mass: 1, time: -2, temperature: 0, amount: 0, current: 0 });
    expect(differentialPressure.baseUnit).toBe('Pa');
    expect(differentialPressure.units[0]).toBe('mbar');
    expect(differentialPressure.symbol('inH2O_4C')).toBe('inH₂O (4 °C)');
    expect(kinds.volumeFlow.symbol('m3/h')).toBe('m³/h');
    expect(kinds.fraction.symbol('1')).toBe('');
  });

  it.each(all)('$label: its base unit is coherent and every unit has a symbol of its own', (kind) => {
    expect(kind.units).toContain(kind.baseUnit);
    expect(kind.in(kind.si(2.5), kind.baseUnit)).toBe(2.5);
    const symbols = kind.units.map((unit) => kind.symbol(unit));
    expect(new Set(symbols).size).toBe(symbols.length);
    expect(kind.units.length).toBe(new Set(kind.units).size);
  });

  it('is found by name, and by no other word', () => {
    expect(getKind('differentialPressure')).toBe(differentialPressure);
    for (const name of ['pressure', '', '__proto__', 'constructor', 'toString', 'hasOwnProperty']) expect(getKind(name)).toBeUndefined();
  });
});

describe('what is known of a unit', () => {
  it('is its exact factor as text, with its source', () => {
    expect(unitInfo('differentialPressure', 'psi')).toEqual({
      id: 'psi',
      symbol: 'psi',
      name: 'pound-force per square inch',
      kind: 'differentialPressure',
      factor: '4.4482216152605/0.00064516',
      exact: true,
      source: 'NIST Special Publication 811, 2008 edition, Appendix B',
      aliases: ['lbf/in2', 'lb/in2'],
    });
    expect(unitInfo('temperature', 'degF')).toMatchObject({ factor: '5/9', offset: '459.67', symbol: '°F' });
    expect(unitInfo('volumePerDistance', 'mpg_US')).toMatchObject({ reciprocal: true, factor: '0.003785411784/1609.344' });
    expect(unitInfo('differentialPressure', 'inH2O_60F')).toMatchObject({ factor: '248.84', exact: false });
  });

  it('covers every unit of every kind', () => {
    for (const kind of all) {
      for (const unit of kind.units) {
        const info = unitInfo(kind.kind, unit);
        expect(info?.source.length).toBeGreaterThan(10);
        expect(info?.name).not.toBe('');
        expect(info?.symbol).toBe(kind.symbol(unit));
        expect(Number.isFinite(Number(info?.factor.split(/[*/]/)[0]))).toBe(true);
      }
    }
  });

  it('is nothing for a unit that the kind does not have', () => {
    expect(unitInfo('length', 'mbar')).toBeUndefined();
    expect(unitInfo('nonsense' as never, 'm')).toBeUndefined();
    expect(unitSymbol('length', 'um')).toBe('µm');
    expect(unitSymbol('length', 'furlong')).toBe('furlong');
    expect(unitSymbol('nonsense' as never, 'm')).toBe('m');
  });
});

describe('a small difference', () => {
  it('is scaled, never shifted', () => {
    expect(differenceInUnit('temperature', 5, 'degC')).toBe(5);
    expect(differenceInUnit('temperature', 5, 'degF')).toBeCloseTo(9, 12);
    expect(differenceInUnit('differentialPressure', 500, 'mbar')).toBe(5);
    expect(differenceInUnit('differentialPressure', 500, 'nonsense')).toBeNaN();
    expect(temperature.differenceIn(5, 'degF')).toBeCloseTo(9, 12);
  });

  it('of a unit that counts the other way round depends on where it lies', () => {
    const at = volumePerDistance(30, 'mpg_US');
    expect(differenceInUnit('volumePerDistance', at / 30, 'mpg_US', at)).toBeCloseTo(1, 12);
  });
});

describe('relations between kinds', () => {
  const ambient = absolutePressure(1000, 'mbar');

  it('lead from gauge to absolute pressure and back by the ambient pressure', () => {
    const absolute = toAbsolute(gaugePressure(200, 'mbar'), ambient);
    expect(absolutePressure.in(absolute, 'mbar')).toBe(1200);
    expect(gaugePressure.in(toGauge(absolute, ambient), 'mbar')).toBe(200);
  });

  it('make a difference of the kind that differences have', () => {
    expect(difference(absolutePressure(1200, 'mbar'), ambient)).toBe(20_000);
    expect(difference(gaugePressure(200, 'mbar'), gaugePressure(-50, 'mbar'))).toBe(25_000);
    expect(difference(temperature(120, 'degC'), temperature(20, 'degC'))).toBe(100);
  });

  it('order two quantities of one kind', () => {
    expect(compare(temperature(0, 'degC'), temperature(300, 'K'))).toBe(-1);
    expect(compare(temperature(300, 'K'), temperature(0, 'degC'))).toBe(1);
    expect(compare(temperature(0, 'degC'), temperature(273.15, 'K'))).toBe(0);
  });
});
