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

  it('beside a load per litre the larger counts, and both are shown', () => {
    // 20 g ÷ 5.79 L = 3.454 g/L, by hand: more than 3 g/L, and within 1 g/L and 1 g/L of it.
    const found = outputs({ sootMass: '20 g', filterVolume: '5.79 L', sootLoad: '3 g/L' });
    expect(massConcentration.in(massConcentration.si(found.countedLoad ?? Number.NaN), 'g/L')).toBeCloseTo(3.454, 3);
    const rows = found.conditions as unknown as { condition: string; result: string; measured: string }[];
    expect(rows.find(({ condition }) => condition === 'Soot per litre and soot in grams agree')).toMatchObject({
      result: 'pass',
      measured: '3 g/L entered, 3.45 g/L by the grams',
    });
    const other = outputs({ sootMass: '10 g', filterVolume: '5.79 L', sootLoad: '3 g/L' });
    expect(massConcentration.in(massConcentration.si(other.countedLoad ?? Number.NaN), 'g/L')).toBeCloseTo(3, 9);
  });

  it('refuses where grams and load per litre contradict each other, with the likely reason', () => {
    // 38 g ÷ 5.79 L = 6.563 g/L, more than 2 g/L from 3 g/L.
    const found = outputs({ sootMass: '38 g', filterVolume: '5.79 L', sootLoad: '3 g/L' });
    expect(found.verdict).toBe('refused');
    expect(String(found.refusedBy)).toContain('Soot per litre and soot in grams agree: 3 g/L entered, 6.56 g/L by the grams');
  });

  it('is compared with the load from the readings like any other', () => {
    // 20 g in 5.79 L is 3.5 g/L, too far from 11 g/L.
    const found = outputs({ sootMass: '20 g', filterVolume: '5.79 L', measuredSootLoad: '11 g/L', measuredSootLoadUncertainty: '3 g/L' });
    expect(String(found.refusedBy)).toContain('The two soot loads agree');
  });
});

it('never prints a limit of nothing: an uncertainty beyond the limit is named as the reason', () => {
  // Cordierite: at most 5 g/L (common practice, no source), of which an uncertainty of 6 g/L leaves nothing.
  const found = outputs({ sootLoad: '2 g/L', sootLoadUncertainty: '6 g/L' });
  expect(String(found.refusedBy)).toContain('must be 0 g/L, as its uncertainty of 6 g/L uses up the limit of 5 g/L');
  expect(String(found.refusedBy)).not.toContain('at most 0 g/L');
});
