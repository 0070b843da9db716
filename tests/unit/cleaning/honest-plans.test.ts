import { registry } from '@wallflow/exhaust/calculations';
import { describe, expect, it } from 'vitest';

function run(id: string, changes: Record<string, unknown>) {
  const calculation = registry.get(id);
  if (calculation === undefined) throw new Error(`no ${id}`);
  return calculation.run({ ...(calculation.example as object), ...changes });
}

describe('drying', () => {
  // By hand: 1 L needs about 2.6 MJ; 60 kg/h that cool from 102 °C to 100 °C bring 35 W: 20 hours, and 1.75 times that in practice.
  it('gives no plan of many hours, and says what to change', () => {
    const result = run('drying', { exhaustMassFlow: '60 kg/h', gasTemperature: '102 °C' });
    expect(result).toMatchObject({ ok: false, issues: [{ code: 'no_solution', path: ['gasTemperature'] }] });
  });

  it('still plans the half hour that practice takes', () => {
    expect(run('drying', { exhaustMassFlow: '200 kg/h', gasTemperature: '200 °C' }).ok).toBe(true);
  });
});

describe('clean or replace', () => {
  it('counts no cost of cleaning for a filter that cleaning does not mend', () => {
    const result = run('clean-or-replace', { filterCondition: 'damaged', cleaningPrice: '1' });
    if (!result.ok) throw new Error('refused');
    expect(result.outputs).toMatchObject({
      verdict: 'not-sound',
      cleanCheaper: undefined,
      cleanCost: undefined,
      breakEvenPrice: undefined,
    });
    expect(result.outputs.newCost).toBeGreaterThan(0);
  });
});
