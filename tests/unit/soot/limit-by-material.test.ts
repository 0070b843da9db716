import { registry } from '@wallflow/exhaust/calculations';
import { describe, expect, it } from 'vitest';

const askers = [
  ['soot-load', 'limitLoad'],
  ['ash-distribution', 'sootLimit'],
  ['ash-rate', 'sootLimit'],
] as const;

function issuesOf(id: string, change: Readonly<Record<string, unknown>>) {
  const calculation = registry.get(id);
  const result = calculation?.run({ ...(calculation.example as Record<string, unknown>), ...change });
  return result?.ok === false ? result.issues : [];
}

// By hand: (900 °C − 600 °C) · 450 kg/m³ · 1100 J/(kg·K) ÷ (0.75 · 393.5 kJ/mol ÷ 12.011 g/mol) = 6.04 kg/m³ for cordierite, and
// with 800 kg/m³ of silicon carbide 10.7 kg/m³.
describe.each(askers)('the soot limit that somebody states in %s', (id, key) => {
  it('is refused for cordierite where its own heat would damage it, with the reason', () => {
    expect(issuesOf(id, { substrate: 'cordierite', [key]: '6 g/L' })).toEqual([]);
    const [issue, ...more] = issuesOf(id, { substrate: 'cordierite', [key]: '6.2 g/L' });
    expect(more).toEqual([]);
    expect(issue).toMatchObject({ code: 'inconsistent_inputs', path: [key] });
    expect(issue?.code === 'inconsistent_inputs' && issue.reason).toMatch(/6\.0 g\/L .* cordierite/);
  });

  it('is taken further for silicon carbide, and no further than that where the material is not known', () => {
    for (const substrate of ['silicon-carbide', 'unknown', undefined]) {
      expect(issuesOf(id, { substrate, [key]: '10.5 g/L' }), String(substrate)).toEqual([]);
      expect(issuesOf(id, { substrate, [key]: '11 g/L' }), String(substrate)).toMatchObject([{ code: 'inconsistent_inputs' }]);
    }
  });
});
