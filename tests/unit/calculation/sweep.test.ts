import { cases, count, defineCalculation, fieldOf, formula, oneOf, quantity, quantityOutput, shapeOf } from '@wallflow/calculation';
import { sweep } from '@wallflow/calculation/sweep';
import { gasDensityCalculation } from '@wallflow/exhaust/calculations/gas';
import { area, length, time, velocity } from '@wallflow/units';
import { describe, expect, it } from 'vitest';
import { allCalculations } from '../../support/calculations.js';

const derivation = { type: 'derivation', title: 'Definition of speed', mark: 'read' } as const;

const pace = defineCalculation({
  id: 'pace',
  version: '1.0.0',
  subject: 'sport',
  title: 'Pace',
  purpose: 'How fast is it?',
  method: 'way by time',
  inputs: {
    ...oneOf({
      way: quantity(length, { symbol: 's', label: 'Way', range: '0 <= s <= 1000 km', example: '120 m' }),
      square: quantity(area, { symbol: 'A', label: 'Square of the way', range: '0 <= A <= 1000 m2', example: '100 m2' }),
    }),
    duration: quantity(time, { symbol: 't', label: 'Duration', range: '0 < t <= 100 s', example: '60 s' }),
    rounds: count({ symbol: 'n', label: 'Rounds', min: 1, max: 5, default: [1, 'as usual'] }),
  },
  outputs: { speed: quantityOutput(velocity, { symbol: 'v', label: 'Speed', units: ['m/s'] }) },
  steps: [
    cases('length', { 'known(way)': 'way', otherwise: 'sqrt(square)' }, derivation),
    formula('speed', 'rounds * length / duration', derivation),
  ],
  intermediates: { length: quantityOutput(length, { symbol: 'l', label: 'Length' }) },
  compute: ({ way, square, duration, rounds }) => {
    const each = way ?? Math.sqrt(square ?? 0);
    return { length: each, speed: (rounds * each) / duration };
  },
});

describe('a sweep', () => {
  it('works out every value, both ends among them, in the unit of the first', () => {
    const found = sweep(pace, { way: '60 m' }, 'duration', { from: '10 s', to: '1 min', points: 6 });
    expect(found.input).toEqual({ key: 'duration', label: 'Duration', unit: 's', values: [10, 20, 30, 40, 50, 60] });
    expect(found.results.speed).toMatchObject({ unit: 'm/s', values: [6, 3, 2, 1.5, 1.2, 1] });
    expect(JSON.parse(JSON.stringify(found))).toEqual(found);
  });

  it('shows the band that the ± of the inputs makes, that of the moved one too', () => {
    const found = sweep(pace, { way: '60 ± 6 m' }, 'duration', { from: '10 s', to: '20 s', points: 2, units: { speed: 'km/h' } });
    expect(found.results.speed).toMatchObject({ values: [21.6, 10.8], low: [19.44, 9.72], high: [23.76, 11.88] });
    const own = sweep(pace, { way: '1 ± 0.5 m', duration: '1 s' }, 'way', { from: '10 m', to: '20 m', points: 2 });
    expect(own.results.speed).toMatchObject({ values: [10, 20], low: [9.5, 19.5], high: [10.5, 20.5] });
  });

  it('leaves a gap and an issue where a value is refused', () => {
    const found = sweep(pace, { way: '60 m' }, 'duration', { from: '0 s', to: '120 s', points: 3 });
    expect(found.results.speed).toMatchObject({ values: [null, 1, null] });
    expect(found.issues.map(({ at, issues }) => [at, issues[0]?.code])).toEqual([
      [0, 'out_of_range'],
      [2, 'out_of_range'],
    ]);
  });

  it('takes whole numbers, steps of equal ratio, and the way down', () => {
    expect(sweep(pace, { way: '6 m', duration: '6 s' }, 'rounds', { from: 1, to: 3 }).results.speed).toMatchObject({ values: [1, 2, 3] });
    expect(sweep(pace, { way: '1 m' }, 'duration', { from: '100 s', to: '1 s', points: 3, logarithmic: true }).input.values).toEqual([
      100, 10, 1,
    ]);
  });

  it('leaves out what the moved input takes the place of, and says so', () => {
    const found = sweep(pace, { way: '60 m', duration: '1 s' }, 'square', {
      from: '4 m2',
      to: '16 m2',
      points: 2,
      results: ['length', 'speed'],
    });
    expect(found.replaced).toEqual(['way']);
    expect(found.results).toMatchObject({ length: { unit: 'mm', values: [2000, 4000] }, speed: { values: [2, 4] } });
  });

  it('does not begin with what does not exist', () => {
    const input = { way: '60 m', duration: '1 s' };
    const ends = { from: '1 s', to: '2 s' };
    expect(() => sweep(pace, input, 'time', ends)).toThrow('time is no input');
    expect(() => sweep(pace, input, 'duration', { ...ends, to: '2 kg' })).toThrow('no end of a series');
    expect(() => sweep(pace, input, 'duration', { ...ends, points: 1 })).toThrow('points');
    expect(() => sweep(pace, input, 'duration', { from: '0 s', to: '2 s', logarithmic: true })).toThrow('above zero');
    expect(() => sweep(pace, input, 'duration', { ...ends, results: ['sped'] })).toThrow('sped');
    expect(() => sweep(pace, input, 'duration', { ...ends, units: { speed: 'kg' } })).toThrow('kg');
  });

  it('goes through every calculation, and begins with what a single run gives', () => {
    for (const calculation of allCalculations) {
      const example = calculation.example as Readonly<Record<string, unknown>>;
      const [key, schema] =
        shapeOf(calculation.spec.inputs).find(
          ([name, child]) => fieldOf(child)?.type === 'quantity' && typeof example[name] === 'string',
        ) ?? [];
      const field = schema === undefined ? undefined : fieldOf(schema);
      if (key === undefined || field?.type !== 'quantity') continue;
      const value = String(example[key]);
      const run = calculation.runUnknown(example);
      const found = sweep(calculation, example, key, { from: value, to: value, points: 2 });
      if (!run.ok) throw new Error(`${calculation.id}: the example is refused`);
      for (const [name, result] of Object.entries(found.results)) {
        const once = (run.outputs as Record<string, unknown>)[name];
        const output = calculation.spec.outputs[name];
        const [first] = result.values;
        if (output.type !== 'quantity' || typeof once !== 'number' || typeof first !== 'number') continue;
        const back = output.kind.in(output.kind.si(once), output.units[0]);
        expect(Math.abs(first - back), `${calculation.id} ${name}`).toBeLessThanOrEqual(1e-9 * Math.abs(back));
      }
      expect(found.issues, calculation.id).toEqual([]);
    }
  });

  it('reaches into lists and groups by their path', () => {
    const listed = allCalculations.find(({ id }) => id === 'filter-condition');
    if (listed === undefined) throw new Error('no such calculation');
    const found = sweep(listed, listed.example, 'readings[0].gasTemperature', { from: '100 degC', to: '300 degC', points: 3 });
    expect(found.input.values).toEqual([100, 200, 300]);
    expect(found.issues).toEqual([]);
    expect(() => sweep(gasDensityCalculation, gasDensityCalculation.example, 'readings[0].gasTemperature', { from: 1, to: 2 })).toThrow(
      'no input',
    );
  });
});
