import { registry } from '@wallflow/exhaust/calculations';
import { describe, expect, it } from 'vitest';

function run(id: string, input: Record<string, unknown>) {
  const result = registry.get(id)!.run(input);
  if (!result.ok) throw new Error(JSON.stringify(result.issues));
  const outputs: Readonly<Record<string, unknown>> = { ...result.intermediates, ...result.outputs };
  return { outputs, warnings: result.warnings, assumed: result.assumptions.map(({ code }) => code), notes: result.assumptions };
}

describe('exhaust volume flow with a drop', () => {
  const engine = { exhaustMassFlow: '164 kg/h', gasTemperature: '210 °C', pressureDrop: '290 mbar' };

  it('takes at least the drop as back-pressure', () => {
    const alone = run('exhaust-volume-flow', engine);
    const stated = run('exhaust-volume-flow', { ...engine, backPressure: '290 mbar' });
    for (const key of ['exhaustVolumeFlow', 'middleVolumeFlow', 'outletVolumeFlow']) {
      expect(alone.outputs[key], key).toBeCloseTo(stated.outputs[key] as number, 12);
    }
    // Behind the filter the gas is at the pressure of the place: ρ = p M/(R T) by hand, 224 m³/h.
    const density = (101_325 * 0.02896559) / (8.314462618 * 483.15);
    expect(alone.outputs.outletVolumeFlow).toBeCloseTo(164 / 3600 / density, 6);
    expect(alone.assumed).toContain('back_pressure');
    expect(alone.warnings).toEqual([]);
  });

  it('warns of a back-pressure below the drop, and takes the drop', () => {
    const low = run('exhaust-volume-flow', { ...engine, backPressure: '0 mbar' });
    expect(low.warnings.map(({ code }) => code)).toEqual(['suction_behind']);
    expect(low.outputs.usedBackPressure).toBeCloseTo(29_000, 6);
  });

  it('without either takes the place’s pressure, and keeps a back-pressure that is given', () => {
    const { pressureDrop: _, ...open } = engine;
    expect(run('exhaust-volume-flow', open).outputs.usedBackPressure).toBe(0);
    expect(run('exhaust-volume-flow', { ...open, backPressure: '-4 mbar' }).outputs.usedBackPressure).toBeCloseTo(-400, 9);
    expect(run('exhaust-volume-flow', { ...engine, backPressure: '400 mbar' }).outputs.usedBackPressure).toBeCloseTo(40_000, 9);
  });
});

describe('exhaust mass flow', () => {
  const bySpeed = {
    ...{ airFrom: 'speed-density', displacement: '3.9 L', engineSpeed: '2200 rpm', manifoldPressure: '120 kPa' },
    manifoldTemperature: '40 °C',
  };
  const unused = (input: Record<string, unknown>) =>
    run('exhaust-mass-flow', input)
      .notes.filter(({ code }) => code === 'not_used')
      .map(({ path, text }) => [path?.[0], text]);

  it('names what was typed and does not count', () => {
    expect(unused({ ...bySpeed, airMassFlow: '161 kg/h' })).toEqual([['airMassFlow', 'Air-mass signal: not used with what is chosen']]);
    expect(unused({ ...bySpeed, airFrom: 'air-mass-signal', airMassFlow: '161 kg/h' }).map(([key]) => key)).toEqual([
      'displacement',
      'manifoldPressure',
      'manifoldTemperature',
      'engineSpeed',
    ]);
  });

  it('says nothing of what counts', () => {
    expect(unused({ ...bySpeed, fuelMassFlow: '4 kg/h', lambda: '4' })).toEqual([]);
    expect(unused({ airFrom: 'air-mass-signal', airMassFlow: '161 kg/h' })).toEqual([]);
  });
});
