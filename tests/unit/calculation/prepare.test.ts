import { choice, defineCalculation, formula, optional, quantity, quantityOutput, relevantWhen } from '@wallflow/calculation';
import { prepare } from '@wallflow/calculation/prepare';
import { length, numbersFromSI, numbersToSI, temperature, time, velocity } from '@wallflow/units';
import { describe, expect, it } from 'vitest';

const pace = defineCalculation({
  id: 'pace',
  version: '1.0.0',
  subject: 'sport',
  title: 'Pace',
  purpose: 'How fast is it?',
  method: 'way by time',
  inputs: {
    way: quantity(length, { symbol: 's', label: 'Way', range: '0 <= s <= 1000 km', usual: ['1 m', '50 km'], example: '120 m' }),
    duration: quantity(time, { symbol: 't', label: 'Duration', range: '0 < t <= 86400 s', default: ['60 s', 'one minute'] }),
    start: choice({ label: 'Start', options: { standing: 'Standing', rolling: 'Rolling' }, default: ['standing', 'as usual'] }),
    ...relevantWhen('start', 'rolling', {
      before: quantity(velocity, { symbol: 'v_0', label: 'Speed before', range: '0 <= v <= 100 m/s', example: '2 m/s' }),
    }),
    note: optional(quantity(length, { symbol: 'n', label: 'Margin', range: '0 <= n <= 1 m', example: '0.5 m' })),
  },
  outputs: {
    speed: quantityOutput(velocity, { symbol: 'v', label: 'Speed', units: ['m/s'] }),
    gain: optional(quantityOutput(velocity, { symbol: '\\Delta v', label: 'Gain', units: ['m/s'] })),
  },
  steps: [
    formula('speed', 'way / duration', { type: 'derivation', title: 'Definition of speed', mark: 'read' }),
    formula('gain', 'speed - before'),
  ],
  answer: 'speed',
  compute: ({ way, duration, before }, { warn }) => {
    if (way === 0) warn('no_way', 'Nothing moved.');
    return { speed: way / duration, gain: before === undefined ? undefined : way / duration - before };
  },
});

describe('rows of a prepared calculation', () => {
  const prepared = prepare(pace, { units: { way: 'km', duration: 'h' } });

  it('takes numbers in the unit that was said', () => {
    const row = prepared.row({ way: 36, duration: 1 });
    expect(row.ok && row.outputs.speed).toBeCloseTo(10, 12);
  });

  it('fills in what is left out, and lets inputs count only where they do', () => {
    const row = prepared.row({ way: 0.12 });
    expect(row).toMatchObject({ ok: true, outputs: { speed: 2, gain: undefined } });
    expect(prepared.row({ way: 0.12, before: '1 m/s' })).toMatchObject({ ok: true, outputs: { gain: undefined } });
    expect(prepared.row({ way: 0.12, before: '1 m/s', start: 'rolling' })).toMatchObject({ ok: true, outputs: { gain: 1 } });
    expect(prepared.row({ way: 0.12, start: 'rolling' })).toMatchObject({
      ok: false,
      issues: [{ code: 'missing_input', path: ['before'] }],
    });
  });

  it('refuses what a single run refuses', () => {
    for (const row of [
      null,
      [],
      'x',
      { way: Number.NaN },
      { way: -1 },
      { way: 1001 },
      { way: 1, weight: 2 },
      {},
      { way: 1, duration: 0 },
    ]) {
      const input = row !== null && typeof row === 'object' && 'way' in row ? { ...row, way: { value: row.way, unit: 'km' } } : row;
      const whole =
        input !== null && typeof input === 'object' && 'duration' in input ? { ...input, duration: { value: 0, unit: 'h' } } : input;
      expect(prepared.rowUnknown(row)).toEqual(pace.runUnknown(whole));
      expect(prepared.rowUnknown(row).ok).toBe(false);
    }
  });

  it('warns by row, of ranges and of what the calculation itself says', () => {
    expect(prepared.row({ way: 60 })).toMatchObject({ warnings: [{ code: 'outside_usual_range', path: ['way'] }] });
    expect(prepared.row({ way: 0 })).toMatchObject({ warnings: [{ code: 'outside_usual_range' }, { code: 'no_way' }] });
    expect(prepared.row({ way: 1 })).toMatchObject({ warnings: [] });
  });

  it('carries a ± through where a row has one', () => {
    const row = prepare(pace).row({ way: '120 ± 6 m' });
    expect(row.ok && row.uncertainty?.values.speed).toBeCloseTo(0.1, 12);
  });

  it('does not take over what an earlier row had', () => {
    prepared.row({ way: 0.12, duration: 2, start: 'rolling', before: '1 m/s' });
    expect(prepared.row({ way: 0.12 })).toMatchObject({ outputs: { speed: 2, gain: undefined } });
  });

  it('takes from each row what differs from what is given for all', () => {
    const given = prepare(pace, { units: { way: 'm' }, given: { duration: '30 s' } });
    const rows = [...given.rows([{ way: 30 }, { way: 30, duration: '10 s' }, { way: 30 }])];
    expect(rows.map((row) => row.ok && row.outputs.speed)).toEqual([1, 3, 1]);
  });

  it('does not begin with a unit or an input that does not exist', () => {
    expect(() => prepare(pace, { units: { way: 'kg' as 'km' } })).toThrow('unknown_unit');
    expect(() => prepare(pace, { units: { start: 'km' } as never })).toThrow('start');
    expect(() => prepared.columns({ weigth: [1] } as never)).toThrow('weigth');
  });
});

describe('columns of a prepared calculation', () => {
  it('gives columns with issues and warnings by row', () => {
    const way = Float64Array.of(36, Number.NaN, 72, 1e9, 0);
    const result = prepare(pace, { units: { way: 'km' }, given: { duration: '1 h' } }).columns({ way }, { units: { speed: 'km/h' } });
    expect(result.rows).toBe(5);
    expect(result.results.speed).toBeInstanceOf(Float64Array);
    expect([...result.results.speed].map((speed) => Number(speed.toPrecision(12)))).toEqual([36, Number.NaN, 72, Number.NaN, 0]);
    expect(result.issues.map(({ row, issues }) => [row, issues[0]?.code])).toEqual([
      [1, 'not_a_number'],
      [3, 'out_of_range'],
    ]);
    expect(result.warnings.map(({ row }) => row)).toEqual([2, 4]);
  });

  it('leaves out what a shorter column no longer has', () => {
    const result = prepare(pace, { units: { way: 'm' } }).columns({ way: [60, 60], duration: ['30 s'] }, { results: ['speed', 'gain'] });
    expect(result.results).toEqual({ speed: Float64Array.of(2, 1), gain: Float64Array.of(Number.NaN, Number.NaN) });
  });
});

describe('conversions that are looked up once', () => {
  it('gives the same bits as reading and writing', () => {
    for (const value of [0, 1, -40, 36.6, 1e-3, 123456.789]) {
      const read = temperature.parse(value, 'degC');
      expect(numbersToSI(temperature, 'degC')(value)).toBe(read.ok && read.quantity);
      expect(numbersFromSI(temperature, 'degC')(value)).toBe(temperature.in(temperature.si(value), 'degC'));
    }
    expect(numbersToSI(length, 'km')(1.5)).toBe(1500);
    expect(() => numbersToSI(length, 'kg' as 'km')).toThrow('unknown_unit');
  });
});
