import { describe, expect, it } from 'vitest';
import { registry } from '../../support/calculations.js';

// What the purpose of each asks for. A phone shows this answer alone.
const answers = {
  'standard-atmosphere': 'ambientPressure',
  'runaway-index': 'verdict',
  'regeneration-axial': 'peakTemperature',
  'regeneration-lumped': 'peakTemperature',
  'soot-balance-temperature': 'balanceTemperature',
  'nox-split': 'nitrogenDioxide',
  'exhaust-drop-shares': 'lookAt',
  'filter-condition': 'verdict',
  'before-after': 'verdict',
  'regeneration-permission': 'verdict',
  'regeneration-quality': 'verdict',
  'regeneration-watch': 'verdict',
  'smoke-limit': 'verdict',
} as const;

describe('the answer', () => {
  it.each(Object.entries(answers))('of %s gives %s, what its purpose asks for', (id, key) => {
    expect(registry.get(id)?.spec.answer).toBe(key);
  });

  it.each(Object.keys(answers))('of %s is reached with every quantity given before it is used', (id) => {
    const calculation = registry.get(id);
    const results = new Set(Object.keys({ ...calculation?.spec.intermediates, ...calculation?.spec.outputs }));
    const given = new Set<string>();
    for (const { gives, tex = '' } of calculation?.spec.steps ?? []) {
      const right = tex.slice(tex.indexOf('=') + 1);
      const used = [...right.matchAll(/\[\[(\w+)\]\]/g)].map(([, name = '']) => name).filter((name) => results.has(name));
      for (const name of used) expect(given, `${gives} uses ${name}`).toContain(name);
      given.add(gives);
    }
  });
});
