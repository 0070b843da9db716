import { registry } from '@wallflow/exhaust/calculations';
import { massConcentration } from '@wallflow/units';
import { describe, expect, it } from 'vitest';

const calculation = registry.get('regeneration-permission');
const {
  sootLoad: _,
  measuredSootLoad: __,
  measuredSootLoadUncertainty: ___,
  ...good
} = (calculation?.example ?? {}) as Record<string, unknown>;
const ask = (input: Record<string, unknown>) => calculation?.run({ ...good, ...input });

function outputs(input: Record<string, unknown>) {
  const result = ask(input);
  if (!result?.ok) throw new Error(JSON.stringify(result?.ok === false ? result.issues : 'no calculation'));
  return { ...result.intermediates, ...result.outputs } as unknown as Record<string, number> & { verdict: string };
}

describe('soot in grams, as the control unit shows it', () => {
  it('counts as a load by the volume of the filter', () => {
    // 38 g ÷ 5.79 L = 6.563 g/L, by hand.
    const found = outputs({ sootMass: '38 g', filterVolume: '5.79 L' });
    expect(massConcentration.in(massConcentration.si(found.countedLoad ?? Number.NaN), 'g/L')).toBeCloseTo(6.563, 3);
    expect(found.verdict).toBe('refused');
    const { conditions: inGrams } = outputs({ sootMass: '15 g', filterVolume: '5 L' });
    const { conditions: perLitre } = outputs({ sootLoad: '3 g/L' });
    expect(inGrams).toEqual(perLitre);
  });

  it('asks for the volume, and never takes one for granted', () => {
    const result = ask({ sootMass: '38 g' });
    expect(result?.ok === false && result.issues).toEqual([expect.objectContaining({ code: 'missing_input', path: ['filterVolume'] })]);
  });

  it('is not taken beside a load per litre: one of them would not count', () => {
    const result = ask({ sootMass: '38 g', filterVolume: '5.79 L', sootLoad: '3 g/L' });
    expect(result?.ok === false && result.issues.map(({ code }) => code)).toEqual(['inconsistent_inputs']);
  });

  it('is compared with the load from the readings like any other', () => {
    // 20 g in 5.79 L is 3.5 g/L, too far from 11 g/L.
    const found = outputs({ sootMass: '20 g', filterVolume: '5.79 L', measuredSootLoad: '11 g/L', measuredSootLoadUncertainty: '3 g/L' });
    expect(String(found.refusedBy)).toContain('The two soot loads agree');
  });
});
