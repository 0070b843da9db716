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

  // Konstandopoulos 2008, Fig. 14: five cakes began to compact at 155 to 205 mbar, none below.
  it('names the compaction of the cake from 155 mbar on', () => {
    expect(codes('soot-mass-from-pressure-drop', { pressureDrop: '154 mbar' })).not.toContain('compaction');
    expect(codes('soot-mass-from-pressure-drop', { pressureDrop: '156 mbar' })).toContain('compaction');
  });

  it('warns alike with the expansion of the gas and without it', () => {
    const fast = { exhaustVolumeFlow: '3000 m3/h', gasTemperature: '250 °C', sootMass: '10 g' };
    for (const id of ['loaded-pressure-drop', 'compressible-pressure-drop']) {
      expect(codes(id, fast), id).toEqual(expect.arrayContaining(['turbulent_channels', 'wall_reynolds', 'compaction', 'fast_channels']));
      expect(codes(id, { sootMass: '20 g' }), id).not.toContain('turbulent_channels');
    }
    expect(codes('loaded-pressure-drop', fast)).toContain('compressible');
    expect(codes('compressible-pressure-drop', fast)).not.toContain('compressible');
  });

  it.each([
    'clean-pressure-drop',
    'loaded-pressure-drop',
    'deep-bed-pressure-drop',
    'one-dimensional-pressure-drop',
    'compressible-pressure-drop',
  ])('%s warns of gas above Mach 0.3 and refuses what is faster than sound', (id) => {
    const soot = id === 'clean-pressure-drop' ? {} : { sootMass: '1 g' };
    // 456.05 m/s at 250 °C over 2524.34 channels of 1.4912512 mm are 9216 m³/h; a gram of soot takes 1.3 % of the width.
    const at = (exhaustVolumeFlow: string) => ({ gasTemperature: '250 °C', exhaustVolumeFlow, flowPressure: 'behind', ...soot });
    const input = (flow: string) => {
      const { flowPressure, ...rest } = at(flow);
      return id === 'compressible-pressure-drop' ? { ...rest, flowPressure } : rest;
    };
    expect(codes(id, input('2500 m3/h'))).not.toContain('fast_channels');
    expect(codes(id, input('3000 m3/h'))).toContain('fast_channels');
    const refused = registry.get(id)!.run({ ...filter, ...running, ...input('9300 m3/h') });
    expect(refused.ok ? [] : refused.issues.map((issue) => issue.code)).toEqual(['no_solution']);
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
    // Wall and soot known; with neither, far more may be there.
    const known = { wallPermeability: '3e-13 m2', sootPermeability: '2.4e-14 m2', sootPackingDensity: '95 kg/m3' };
    const light = run('soot-mass-from-pressure-drop', { pressureDrop: '25 mbar', ...known }).advice;
    expect(light.some((advice) => advice.tone === 'do-not')).toBe(false);
    const unknown = run('soot-mass-from-pressure-drop', { pressureDrop: '25 mbar' }).advice;
    expect(unknown.some((advice) => advice.tone === 'do-not')).toBe(true);
  });
});

describe('warnings of a fit of two parts', () => {
  const point = (pressureDrop: string, exhaustVolumeFlow: string) => ({ pressureDrop, exhaustVolumeFlow, gasTemperature: '200 °C' });
  const fitOf = (points: object[], more: object = {}) => {
    const result = registry.get('viscous-inertial-fit')!.run({ points, ...more });
    if (!result.ok) throw new Error(JSON.stringify(result.issues));
    const outputs: Readonly<Record<string, unknown>> = result.outputs;
    return { outputs, codes: result.warnings.map((warning) => warning.code) };
  };
  const two = [point('11 mbar', '56 m3/h'), point('63 mbar', '230 m3/h')];

  it('says that two points alone have no uncertainty, and gives none', () => {
    const bare = fitOf(two);
    expect(bare.codes).toContain('no_uncertainty');
    expect([bare.outputs.resistanceUncertainty, bare.outputs.inertialUncertainty, bare.outputs.correlation]).toEqual([
      undefined,
      undefined,
      undefined,
    ]);
    const known = fitOf(two, { dropUncertainty: '1 mbar' });
    expect(known.codes).not.toContain('no_uncertainty');
    expect(known.outputs.inertialUncertainty).toBeGreaterThan(0);
    expect(fitOf([...two, point('33 mbar', '140 m3/h')], { fitZero: true }).codes).toContain('no_uncertainty');
  });

  it('says that an inertial part is negative or may be nothing', () => {
    const falling = [point('1000 Pa', '50 m3/h'), point('2020 Pa', '100 m3/h'), point('3900 Pa', '200 m3/h')];
    expect(fitOf(falling).codes).toContain('negative_inertial');
    expect(fitOf(falling).outputs.equivalentArea).toBeUndefined();
    expect(fitOf(two, { dropUncertainty: '5 mbar' }).codes).toContain('inertial_uncertain');
    expect(fitOf(two, { dropUncertainty: '0.5 mbar' }).codes).not.toContain('inertial_uncertain');
  });
});
