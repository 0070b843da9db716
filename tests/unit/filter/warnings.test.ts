import { registry } from '@wallflow/exhaust/calculations';
import { describe, expect, it } from 'vitest';

const filter = { cellDensity: '200 cpsi', wallThickness: '12 mil', filterDiameter: '144 mm', filterLength: '152 mm' };
const running = { exhaustVolumeFlow: '290 m3/h', gasTemperature: '220 °C' };

function run(id: string, input: Record<string, unknown>) {
  const calculation = registry.get(id);
  if (calculation === undefined) throw new Error(`no ${id}`);
  const result = calculation.run({ ...filter, ...running, ...input });
  if (!result.ok) throw new Error(JSON.stringify(result.issues));
  return result;
}

function codes(id: string, input: Record<string, unknown>): string[] {
  return run(id, input).warnings.map((warning) => warning.code);
}

describe('warnings where a drop model fails', () => {
  it('names the deep-bed range for little soot', () => {
    expect(codes('loaded-pressure-drop', { sootMass: '2 g' })).toContain('deep_bed_range');
    expect(codes('loaded-pressure-drop', { sootMass: '20 g' })).not.toContain('deep_bed_range');
    expect(codes('loaded-pressure-drop', { sootMass: '0 g' })).not.toContain('deep_bed_range');
  });

  it('names a heavy load', () => {
    expect(codes('loaded-pressure-drop', { sootMass: '60 g' })).toContain('heavy_load');
    expect(codes('one-dimensional-pressure-drop', { sootMass: '60 g' })).toContain('heavy_load');
  });

  it('points to the compressible form, unless that is the one in use', () => {
    expect(codes('soot-mass-from-pressure-drop', { pressureDrop: '360 mbar' })).toContain('compressible');
    expect(codes('soot-mass-from-pressure-drop', { pressureDrop: '360 mbar', model: 'compressible' })).not.toContain('compressible');
  });

  it('says that soot in the wall is read as cake, and that the deep-bed model is a fit', () => {
    expect(codes('soot-mass-from-pressure-drop', { pressureDrop: '60 mbar' })).toContain('deep_bed_offset');
    expect(codes('soot-mass-from-pressure-drop', { pressureDrop: '60 mbar', model: 'deep-bed' })).toContain('fitted_model');
  });

  it('lists every default that was used as an assumption', () => {
    const assumed = run('clean-pressure-drop', {}).assumptions.map((assumption) => assumption.path?.[0]);
    for (const key of ['wallPermeability', 'plugLength', 'gasPressure', 'entranceExitCoefficient', 'layout'])
      expect(assumed).toContain(key);
  });

  it('advises against burning off a load beyond the usual one', () => {
    const heavy = run('soot-mass-from-pressure-drop', { pressureDrop: '360 mbar' }).advice;
    expect(heavy.some((advice) => advice.tone === 'do-not')).toBe(true);
    const light = run('soot-mass-from-pressure-drop', { pressureDrop: '25 mbar' }).advice;
    expect(light.some((advice) => advice.tone === 'do-not')).toBe(false);
  });
});
