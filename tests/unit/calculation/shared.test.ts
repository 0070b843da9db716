import { createRegistry } from '@wallflow/calculation';
import { describe, expect, it } from 'vitest';
import { allCalculations, registry } from '../../support/calculations.js';
import { good, heater } from './sample.js';

/** Plain data that can be changed. A schema is none: a nested calculation in a working leads to those of its inputs. */
function changeable(value: unknown, path: string): string[] {
  if (typeof value !== 'object' || value === null) return [];
  if (!Array.isArray(value) && Object.getPrototypeOf(value) !== Object.prototype) return [];
  const own = Object.isFrozen(value) ? [] : [path];
  return [...own, ...Object.entries(value).flatMap(([key, inner]) => changeable(inner, `${path}.${key}`))];
}

describe('what all users of a calculation share', () => {
  it('cannot be changed by one of them', () => {
    const { spec, example } = heater;
    expect(() => Object.assign(example, { voltage: 'junk' })).toThrow(TypeError);
    expect(() => Object.assign(example.pulses[0] ?? {}, { duration: 'junk' })).toThrow(TypeError);
    expect(() => (spec.assumptions as unknown[]).push({})).toThrow(TypeError);
    expect(() => Object.assign(heater, { run: () => ({ ok: true }) })).toThrow(TypeError);
    expect(() => (createRegistry([heater]).all as unknown[]).push(heater)).toThrow(TypeError);
    expect(heater.run(example).ok).toBe(true);
  });

  it('is frozen in every calculation, to its depth', () => {
    expect(Object.isFrozen(registry.all)).toBe(true);
    for (const { id, spec, example } of allCalculations) {
      const { assumptions, limits, cautions, sources, steps } = spec;
      expect(changeable({ ...{ example, assumptions, limits, cautions, sources, steps } }, id)).toEqual([id]);
    }
  });

  it('is not what a result holds: that belongs to whoever asked', () => {
    const first = heater.calculate(good);
    (first.assumptions as unknown[]).push({ code: 'mine' });
    expect(heater.calculate(good).assumptions.map(({ code }) => code)).not.toContain('mine');
  });
});
