import { registry } from '@wallflow/exhaust/calculations';
import { describe, expect, it } from 'vitest';

/** Outputs of a worked example, in SI. */
function example(id: string): Readonly<Record<string, number>> {
  const calculation = registry.get(id);
  const result = calculation?.run(calculation.example);
  if (!result?.ok) throw new Error(id);
  return { ...result.intermediates, ...result.outputs } as unknown as Readonly<Record<string, number>>;
}

// The demo bus at 2200 rpm before the work: 305 kg/h of gas at 206 °C, 95 mbar above 986 hPa. Worked out by hand.
describe('the worked examples of gas and pipe are the demo bus', () => {
  it('has the density of its gas: 108 100 Pa · 28.97 g/mol ÷ (8.314 J/(mol K) · 479.15 K)', () => {
    for (const id of ['gas-density', 'pipe-flow']) expect(example(id).density, id).toBeCloseTo(0.786, 3);
  });

  it('has the viscosity of air by the published Sutherland pair: 17.16 µPa s · (479.15/273)^1.5 · 384/590.15', () => {
    expect((example('dynamic-viscosity').viscosity ?? 0) * 1e6).toBeCloseTo(25.96, 1);
  });

  it('flies 26.0 µPa s ÷ 108 100 Pa · √(π · 8.314 · 479.15 ÷ 0.05794) m between two collisions', () => {
    expect((example('mean-free-path').meanFreePath ?? 0) * 1e9).toBeCloseTo(111.8, 0);
  });

  it('runs at 305 kg/h through 60 mm at 38.1 m/s', () => {
    // 0.08472 kg/s ÷ 0.786 kg/m³ ÷ 0.0028274 m².
    expect(example('pipe-flow').velocity).toBeCloseTo(38.1, 1);
  });

  it('steps from 18 to 95 mbar as a signal of half a second does', () => {
    // 18 + 77 · (1 − exp(−t/0.5 s)), read to the millibar every quarter of a second.
    expect(example('sensor-lag-test').responseTime).toBeCloseTo(0.5, 1);
  });
});
