import { defineCalculation, formula, present, presentValue, quantity, quantityOutput } from '@wallflow/calculation';
import { volumePerDistance } from '@wallflow/units';
import { describe, expect, it } from 'vitest';
import { good, heater } from './sample.js';

// E = U I t: relative variances add (JCGM 100:2008, 5.1.6).
const uncertain = { ...good, voltage: '12.0 ± 0.3 V', current: { value: 2.5, unit: 'A' as const, uncertainty: 0.05 } };

describe('uncertain inputs', () => {
  it('give an uncertain output by the law for products', () => {
    const result = heater.calculate(uncertain);
    const relative = Math.hypot(0.3 / 12, 0.05 / 2.5);
    expect(result.uncertainty?.values.energy).toBeCloseTo(2700 * relative, 9);
    expect(result.uncertainty?.values.power).toBeCloseTo(30 * relative, 9);
  });

  it('give a budget with the largest share first', () => {
    const budget = heater.calculate(uncertain).uncertainty?.budget.energy ?? [];
    expect(budget.map((entry) => entry.path)).toEqual([['voltage'], ['current']]);
    expect(budget[0]?.share).toBeCloseTo(0.025 ** 2 / (0.025 ** 2 + 0.02 ** 2), 12);
    expect(budget.reduce((sum, entry) => sum + entry.share, 0)).toBeCloseTo(1, 12);
  });

  it('reach into lists', () => {
    const result = heater.calculate({ ...good, pulses: [{ duration: '30 ± 3 s' }] });
    expect(result.uncertainty?.values.energy).toBeCloseTo(90, 9);
    expect(result.uncertainty?.budget.energy?.[0]?.path).toEqual(['pulses', 0, 'duration']);
  });

  it('say when one side has no result', () => {
    const result = heater.calculate({ ...good, losses: '29 ± 2 W' });
    expect(result.warnings.map((warning) => warning.code)).toContain('uncertainty_incomplete');
    expect(result.uncertainty?.values.energy).toBeCloseTo(180, 9);
  });

  it('are absent without ±', () => {
    expect(heater.calculate(good).uncertainty).toBeUndefined();
  });

  it('show a value cut to its uncertainty', () => {
    expect(present(heater, heater.calculate(uncertain)).outputs.energy).toMatchObject({ text: '2.700 ± 0.086 kJ', unit: 'kJ' });
  });
});

describe('an uncertainty that no input can have', () => {
  it('is refused when it is no finite number', () => {
    const result = heater.run({ ...good, pulses: [{ duration: { value: 0.01, unit: 'h', uncertainty: 1e306 } }] });
    expect(result.ok ? [] : result.issues).toMatchObject([{ code: 'not_a_number', path: ['pulses', 0, 'duration'], reason: 'not_finite' }]);
  });

  // 5 mpg of 25 mpg is a fifth; to first order so is the change of its reciprocal.
  it('scales with the value in a unit that counts the other way round', () => {
    const consumption = quantityOutput(volumePerDistance, { symbol: 'b', label: 'Consumption' });
    const { answer: _, ...others } = heater.spec;
    const passing = defineCalculation({
      ...others,
      inputs: {
        burnt: quantity(volumePerDistance, { symbol: 'b', label: 'Burnt', range: '0 <= x <= 99 L/100km', example: '7 L/100km' }),
      },
      outputs: { consumption },
      intermediates: {},
      example: {},
      steps: [formula('consumption', 'burnt')],
      compute: ({ burnt }) => ({ consumption: burnt }),
      advise: () => [],
    });
    const result = passing.calculate({ burnt: { value: 25, unit: 'mpg_US', uncertainty: 5 } });
    expect(result.outputs.consumption).toBeCloseTo(0.003785411784 / (25 * 1609.344), 18);
    expect((result.uncertainty?.values.consumption ?? 0) / result.outputs.consumption).toBeCloseTo(5 / 25, 9);
  });
});

describe('a moved input at which the calculation breaks', () => {
  const breaking = (at: number) =>
    defineCalculation({
      ...heater.spec,
      inputs: heater.spec.inputs._zod.def.shape,
      compute(input, context) {
        if (input.current > at) throw new TypeError('beyond the table');
        return heater.spec.compute(input, context);
      },
    });

  it('has no result there, and the result of what was typed stands', () => {
    const result = breaking(2.52).run({ ...good, current: '2.5 ± 0.05 A' });
    if (!result.ok) throw new Error('refused');
    expect(result.outputs.energy).toBeCloseTo(2700, 9);
    expect(result.warnings.map(({ code }) => code)).toContain('uncertainty_incomplete');
    // The side that exists: 0.05 A less of 2.5 A.
    expect(result.uncertainty?.values.energy).toBeCloseTo(54, 9);
  });

  it('is an issue where it is what was typed', () => {
    const result = breaking(2.4).run({ ...good, current: '2.5 ± 0.05 A' });
    expect(result.ok ? [] : result.issues).toMatchObject([{ code: 'no_solution', reason: expect.stringContaining('beyond the table') }]);
  });
});

describe('digits', () => {
  it('are no more than the inputs support and no fewer than three', () => {
    const text = (voltage: string) => {
      const shown = present(heater, heater.calculate({ ...good, voltage, current: '2.5000 A', pulses: [{ duration: '30.000 s' }] })).outputs
        .energy;
      return shown?.type === 'quantity' ? shown.text : '';
    };
    expect(text('12 V')).toBe('0.900 kJ');
    expect(text('12.340 V')).toBe('0.92550 kJ');
  });
});

it('keeps the digits of a quantity that only tells in its last ones', () => {
  const index = { ...heater.spec.outputs.energy, leastDigits: 5 };
  const shown = presentValue(index, 1382.61, 2);
  expect(shown.type === 'quantity' ? shown.text : '').toBe('1.3826 kJ');
});
