import { present, presentValue } from '@wallflow/calculation';
import { describe, expect, it } from 'vitest';
import { good, heater } from './sample.js';

// E = U I t: relative variances add (JCGM 100:2008, 5.1.6).
const uncertain = { ...good, voltage: '12.0 ± 0.3 V', current: { value: 2.5, unit: 'A', uncertainty: 0.05 } };

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
