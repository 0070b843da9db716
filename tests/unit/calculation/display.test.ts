import { defineCalculation, formula, type Outputs, present, quantity, quantityOutput, rows, tableOutput } from '@wallflow/calculation';
import { explanationIn, metric, usCustomary } from '@wallflow/calculation/display';
import { gasDensityCalculation } from '@wallflow/exhaust/calculations/gas';
import { gaugePressure, length, time, velocity } from '@wallflow/units';
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
    way: quantity(length, { symbol: 's', label: 'Way', range: '0 <= s <= 100000 km', example: '254.0 m' }),
    duration: quantity(time, { symbol: 't', label: 'Duration', range: '0 < t <= 86400 s', example: '1.000 s' }),
  },
  outputs: {
    speed: quantityOutput(velocity, { symbol: 'v', label: 'Speed', units: ['m/s', 'km/h'] }),
    half: quantityOutput(length, { symbol: 'h', label: 'Half the way', units: ['mm'], digits: 8 }),
    parts: tableOutput({
      label: 'Parts',
      columns: { place: quantityOutput(length, { symbol: 'x', label: 'Place', units: ['mm'], digits: 6 }) },
    }),
  },
  steps: [formula('speed', 'way / duration', derivation), formula('half', 'way / 2'), rows('parts', { place: 'way * row / 2' })],
  answer: 'speed',
  compute: ({ way, duration }) => ({ speed: way / duration, half: way / 2, parts: [{ place: way / 2 }, { place: way }] }),
});
const result = pace.calculate(pace.example);

describe('results in a system of units', () => {
  it('shows what people in the United States read, tables included', () => {
    // 0.3048 m in a foot and 25.4 mm in an inch, by definition.
    const { outputs } = present(pace, result, { system: usCustomary });
    expect(outputs.speed).toMatchObject({ unit: 'ft/s', value: Number((254 / 0.3048).toPrecision(12)), text: '833.3 ft/s' });
    expect(outputs.half).toMatchObject({ unit: 'in', value: 5000 });
    expect(outputs.parts).toMatchObject({ columns: { place: { unit: 'in' } }, rows: [{ place: 5000 }, { place: 10000 }] });
  });

  it('lets a unit that is named go before the system, in a column of a table too', () => {
    const { outputs } = present(pace, result, { system: usCustomary, units: { speed: 'mph', parts: { place: 'm' } } });
    expect(outputs.speed).toMatchObject({ unit: 'mph', value: Number(((254 * 3600) / 1609.344).toPrecision(12)) });
    expect(outputs.parts).toMatchObject({ columns: { place: { unit: 'm' } }, rows: [{ place: 127 }, { place: 254 }] });
  });

  it('carries the ± into the unit', () => {
    const uncertain = pace.calculate({ way: '304.8 ± 3.048 m', duration: '1.000 s' });
    expect(present(pace, uncertain, { system: usCustomary }).outputs.speed).toMatchObject({ uncertainty: 10, text: '1000 ± 10 ft/s' });
  });

  it('keeps a metric unit in the metric system, and names one for another', () => {
    expect(present(pace, result, { system: metric }).outputs.speed).toMatchObject({ unit: 'm/s' });
    expect(metric.unitFor(['psi', 'mbar', 'kPa'], gaugePressure.units)).toBe('mbar');
    expect(metric.unitFor(['psi'], gaugePressure.units)).toBe('kPa');
    expect(usCustomary.unitFor(['mbar', 'inH2O_conventional'], gaugePressure.units)).toBe('psi');
  });

  it('finds a unit of the same kind for every result of every calculation, and back', () => {
    let changed = 0;
    for (const calculation of allCalculations) {
      const results: Outputs = { ...calculation.spec.outputs, ...calculation.spec.intermediates };
      for (const [key, field] of Object.entries(results)) {
        for (const one of field.type === 'table' ? Object.values(field.columns) : [field]) {
          if (one.type !== 'quantity') continue;
          const { kind, units } = one;
          const ofKind: readonly string[] = kind.units;
          const shown = usCustomary.unitFor(units, ofKind);
          expect(ofKind, `${calculation.id} ${key}`).toContain(shown);
          expect(ofKind, `${calculation.id} ${key}`).toContain(metric.unitFor([shown, ...units], ofKind));
          expect(usCustomary.unitFor([shown, ...units], ofKind)).toBe(shown);
          if (shown !== units[0]) changed += 1;
        }
      }
    }
    // Drops, lengths, temperatures, flows: the larger part of what has a unit that differs at all.
    expect(changed).toBeGreaterThan(300);
  });

  it('says which result and which units, where one does not exist', () => {
    expect(() => present(pace, result, { units: { speed: 'kg' as 'mph' } })).toThrow('Speed cannot be shown in "kg"; use one of m/s');
    expect(() => present(pace, result, { units: { sped: 'mph' } as never })).toThrow('"sped"');
    expect(() => present(pace, result, { units: { parts: { plac: 'mm' } } as never })).toThrow('"plac"');
  });
});

describe('numbers in a language', () => {
  const long = pace.calculate({ way: '24691.350 m', duration: '2.0000000 s' });

  it.each([
    ['de', '12.345.675 mm', '12.345,68 m/s'],
    ['fr', '12\u202f345\u202f675 mm', '12\u202f345,68 m/s'],
    ['en', '12,345,675 mm', '12,345.68 m/s'],
  ])('writes them as in %s', (locale, half, speed) => {
    const { outputs } = present(pace, long, { locale });
    expect(outputs.half.text).toBe(half);
    const shown = present(pace, pace.calculate({ way: '12345.675 ± 0.50 m', duration: '1.0000 s' }), { locale }).outputs.speed.text;
    expect(shown.slice(0, speed.indexOf(' m/s'))).toBe(speed.slice(0, -4));
  });

  it('writes the cells of tables, and leaves the numbers beside them', () => {
    const { parts } = present(pace, long, { locale: 'de', units: { parts: { place: 'km' } } }).outputs;
    expect(parts).toMatchObject({ rows: [{ place: 12.345675 }, { place: 24.69135 }], texts: [{ place: '12,3457' }, { place: '24,6914' }] });
  });
});

describe('workings in another system and language', () => {
  const explained = pace.explain({ way: '254.0 m', duration: '1.500 s' });

  it('changes what is shown, and neither the value nor the printed numbers', () => {
    const shown = explanationIn(pace, explained, { system: usCustomary, locale: 'de' });
    if (!shown.ok || !explained.ok) throw new Error('refused');
    const [speed] = shown.steps;
    expect(speed).toMatchObject({ valueText: '555,6 ft/s', value: 254 / 1.5, printed: explained.steps[0]?.printed });
    // The line with numbers ends in SI, from which a person converts.
    expect(speed?.numbersTex).toBe('{v}=\\frac{254\\,\\mathrm{m}}{1{,}5\\,\\mathrm{s}}=169{,}3\\,\\mathrm{m/s}');
    expect(speed?.numbers).toBe('254 / 1,5');
  });

  it('reaches into nested workings', () => {
    const drop = allCalculations.find(({ id }) => id === 'clean-pressure-drop');
    if (drop === undefined) throw new Error('no such calculation');
    const own = drop.explain(drop.example);
    const shown = explanationIn(drop, own, { system: usCustomary });
    if (!shown.ok || !own.ok) throw new Error('refused');
    const nested = shown.steps.flatMap((step) => step.nested?.steps ?? []);
    expect(nested.length).toBeGreaterThan(0);
    expect(nested.map(({ valueText }) => valueText).join()).toMatch(/ in\b/);
    expect(nested.map(({ value }) => value)).toEqual(own.steps.flatMap((step) => step.nested?.steps ?? []).map(({ value }) => value));
  });

  it('writes every working of every calculation without an error', () => {
    for (const calculation of allCalculations) {
      const own = calculation.explain(calculation.example);
      const shown = explanationIn(calculation, own, { system: usCustomary, locale: 'de' });
      if (!shown.ok || !own.ok) throw new Error(`${calculation.id} is refused`);
      expect(shown.steps.map(({ gives }) => gives)).toEqual(own.steps.map(({ gives }) => gives));
    }
  });

  it('leaves a refusal as it is', () => {
    const refused = gasDensityCalculation.explainUnknown({});
    expect(explanationIn(gasDensityCalculation, refused, { locale: 'de' })).toBe(refused);
  });
});
