import { registry } from '@wallflow/exhaust/calculations';
import { describe, expect, it } from 'vitest';

function outputs(id: string, change: Record<string, unknown>): Record<string, number | string> {
  const calculation = registry.get(id);
  const result = calculation?.run({ ...(calculation.example as object), ...change });
  if (!result?.ok) throw new Error(`${id}: ${JSON.stringify(result?.ok === false ? result.issues : '')}`);
  return { ...(result.intermediates as object), ...result.outputs } as Record<string, number | string>;
}

const kelvin = (celsius: number) => celsius + 273.15;

/** One filter and one burn, as five calculations see it. */
function seenBy(substrate: string, sootLoad: string) {
  const filter = { substrate, sootLoad, filterVolume: '3.0 L', bulkDensity: undefined, specificHeat: undefined };
  const gas = { exhaustMassFlow: '140 kg/h', oxygen: '8 %', idleMassFlow: '40 kg/h', idleOxygen: '16 %' };
  const run = { ...filter, ...gas, gasTemperature: '600 °C', startTemperature: '600 °C', scenario: 'steady', duration: '20 min' };
  const exact = { sootLoadUncertainty: '0.01 g/L', measuredSootLoad: undefined, measuredSootLoadUncertainty: undefined };
  return {
    index: outputs('runaway-index', { ...filter, ...gas, filterTemperature: '600 °C' }),
    lumped: outputs('regeneration-lumped', run),
    axial: outputs('regeneration-axial', run),
    permission: outputs('regeneration-permission', { substrate, sootLoad, ...exact }),
  };
}

describe('one burn, as index, simulations and permission see it', () => {
  const cases = [
    ['silicon-carbide', '5.5 g/L'],
    ['silicon-carbide', '7.9 g/L'],
    ['cordierite', '3.4 g/L'],
    ['cordierite', '4.9 g/L'],
  ] as const;

  it.each(cases)('%s with %s: what is permitted is no danger at this flow to any of them', (substrate, sootLoad) => {
    const { index, lumped, axial, permission } = seenBy(substrate, sootLoad);
    expect(permission.verdict).toBe('permitted');
    // Every ordinary regeneration has an index above 1: it would speed up, if its soot did not run out.
    expect(index.index).toBeGreaterThan(1);
    expect(index.verdict).not.toBe('critical');
    expect(lumped.peakTemperature).toBeLessThan(kelvin(800));
    expect(axial.peakTemperature).toBeLessThan(kelvin(substrate === 'cordierite' ? 900 : 1100));
  });

  it.each(cases)('%s with %s: the peak beside the index is that of the simulation in one piece', (substrate, sootLoad) => {
    const { index, lumped, axial } = seenBy(substrate, sootLoad);
    expect(Math.abs(Number(index.peak) - Number(lumped.peakTemperature))).toBeLessThan(0.1);
    // Along the filter it gets hotter than in the mean, and in the mean never hotter than all heat of the soot makes it.
    expect(Number(axial.peakTemperature)).toBeGreaterThan(Number(lumped.peakTemperature));
    expect(Number(index.peak)).toBeLessThanOrEqual(Number(index.worstTemperature));
    expect(Number(index.idlePeak)).toBeGreaterThan(Number(index.peak));
  });

  it('has no good word for a load that is refused', () => {
    const { index, permission } = seenBy('cordierite', '11 g/L');
    expect(permission.verdict).toBe('refused');
    expect(['critical', 'idle-critical']).toContain(index.verdict);
  });
});
