import { registry } from '@wallflow/exhaust/calculations';
import { describe, expect, it } from 'vitest';

function run(id: string, input: Record<string, unknown>) {
  const result = registry.get(id)!.run(input);
  if (!result.ok) throw new Error(JSON.stringify(result.issues));
  return { outputs: result.outputs as Readonly<Record<string, unknown>>, codes: result.warnings.map(({ code }) => code) };
}

describe('a reading exactly at a limit', () => {
  it('is judged alike in every unit', () => {
    for (const swapped of ['-38 mbar', '-0.551143403374795 psi', '-3.8 kPa', '-38 hPa']) {
      expect(run('hose-swap-test', { normalReading: '42 mbar', swappedReading: swapped }).outputs.verdict, swapped).toBe('plausible');
    }
    for (const zero of ['2 mbar', '0.0290075475460419 psi', '0.2 kPa']) {
      expect(run('sensor-zero-check', { zeroReading: zero }).outputs.verdict, zero).toBe('accepted');
    }
    for (const zero of ['10 mbar', '0.1450377377302093 psi', '1 kPa']) {
      expect(run('sensor-zero-check', { zeroReading: zero }).outputs.verdict, zero).toBe('take-off');
    }
  });
});

describe('points of a fit that are written down twice', () => {
  const point = (pressureDrop: string, exhaustVolumeFlow: string) => ({ pressureDrop, exhaustVolumeFlow, gasTemperature: '200 °C' });
  const [low, high] = [point('11 mbar', '56 m3/h'), point('63 mbar', '230 m3/h')];

  it('tell no uncertainty, as no scatter shows', () => {
    for (const points of [
      [low, high, low],
      [low, low, high, high],
      [low, high, point('1.1 kPa', '56 m3/h')],
    ]) {
      const { outputs, codes } = run('viscous-inertial-fit', { points });
      expect([outputs.resistanceUncertainty, outputs.inertialUncertainty]).toEqual([undefined, undefined]);
      expect(codes).toContain('no_uncertainty');
    }
    expect(
      run('viscous-inertial-fit', { points: [low, high, point('11.2 mbar', '56 m3/h')] }).outputs.resistanceUncertainty,
    ).toBeGreaterThan(0);
  });
});
