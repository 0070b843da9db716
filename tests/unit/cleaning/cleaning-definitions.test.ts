import { registry } from '@wallflow/exhaust/calculations';
import { describe, expect, it } from 'vitest';

const cleaning = registry.all.filter(({ subject }) => subject === 'cleaning');

function run(id: string, changes: Record<string, unknown> = {}) {
  const calculation = registry.get(id);
  if (calculation === undefined) throw new Error(`no ${id}`);
  return calculation.run({ ...calculation.example, ...changes });
}

function outputs(id: string, changes: Record<string, unknown> = {}): Record<string, unknown> {
  const result = run(id, changes);
  if (!result.ok) throw new Error(JSON.stringify(result.issues));
  return result.outputs as Record<string, unknown>;
}

describe('cautions of cleaning', () => {
  it.each(cleaning.map((calculation) => [calculation.id, calculation] as const))(
    '%s carries cautions and defers to the maker',
    (_, { spec }) => {
      expect(spec.cautions.map(({ code }) => code)).toContain('maker_procedure_first');
      expect(spec.cautions.length).toBeGreaterThan(1);
    },
  );

  it.each(['cleaning-volumes', 'dilution', 'rinse-dilution', 'cleaning-pass-plan', 'cleaning-batch-plan', 'neutralisation'])(
    '%s warns of caustic fluid and waste',
    (id) => {
      const codes = registry.get(id)?.spec.cautions.map(({ code }) => code);
      expect(codes).toEqual(expect.arrayContaining(['caustic_fluid', 'waste_water']));
    },
  );
});

describe('cautions of liquid in a filter', () => {
  it.each(['cleaning-volumes', 'dilution', 'rinse-dilution', 'cleaning-pass-plan', 'cleaning-batch-plan'])('%s warns of coatings', (id) => {
    expect(registry.get(id)?.spec.cautions.map(({ code }) => code)).toContain('coated_filter');
  });
});

describe('what is not known is not passed', () => {
  it('leaves acceptance undecided for every single test that is missing', () => {
    const missing = [
      { benchDrop: undefined, benchReference: undefined },
      { recovery: undefined },
      { depths: [] },
      { lightShare: undefined },
      { velocities: [] },
      { outletFace: 'unknown' },
    ];
    expect(outputs('cleaned-filter-acceptance').verdict).toBe('accepted');
    for (const changes of missing) expect(outputs('cleaned-filter-acceptance', changes).verdict).toBe('incomplete');
  });

  it('leaves out a test only when it is not asked for, and still rejects on it', () => {
    expect(outputs('cleaned-filter-acceptance', { lightShare: undefined, askLight: 'no' }).verdict).toBe('accepted');
    expect(outputs('cleaned-filter-acceptance', { lightShare: '80 %', askLight: 'no' }).verdict).toBe('rejected');
  });

  it('takes a list that is left out for none, and says so', () => {
    const result = run('cleaned-filter-acceptance', { depths: undefined, velocities: undefined });
    if (!result.ok) throw new Error(JSON.stringify(result.issues));
    expect(result.outputs).toMatchObject({ verdict: 'incomplete' });
    expect(result.assumptions.map(({ text }) => text)).toEqual(
      expect.arrayContaining([
        'Rod depths from the inlet face: none, as none is given',
        'Air speeds over the outlet face: none, as none is given',
      ]),
    );
    const plan = { concentratePacks: undefined, waterPacks: undefined, concentrateAtHand: '2 L', waterAtHand: '10 L' };
    expect(outputs('cleaning-batch-plan', plan)).toMatchObject({ cost: 0, shopping: [] });
  });

  it('does not judge the spread of two places', () => {
    const two = [{ velocity: '1 m/s' }, { velocity: '1 m/s' }];
    expect(outputs('cleaned-filter-acceptance', { velocities: two }).verdict).toBe('incomplete');
  });

  it('does not call a compressor of unknown delivery large enough', () => {
    expect(outputs('pneumatic-air', { compressorFlow: undefined }).verdict).toBe('unknown');
  });

  it('does not keep a mix of unknown age', () => {
    expect(outputs('cleaning-batch-plan', { shelfLife: undefined }).leftover).toBe('unknown');
  });
});

describe('what is poured is decimal to the mark', () => {
  it('never asks for a mark more because of binary fractions', () => {
    // 0.1 L × 3 passes is exactly 0.3 L: 3 marks of 0.1 L, which doubles would call 0.30000000000000004.
    const plan = outputs('cleaning-batch-plan', {
      inletVolume: '0.1 L',
      fillShare: '100 %',
      passes: 3,
      reserve: '0 %',
      weakestRatio: '2',
      strongestRatio: '2',
      mark: '0.1 L',
    });
    expect(plan.concentrateToPour).toBe(0.0001);
    expect(plan.waterToPour).toBe(0.0002);
    expect(plan.mixLeft).toBe(0);
  });

  it('refuses marks that are too coarse for the range instead of leaving it', () => {
    const result = run('cleaning-batch-plan', { weakestRatio: '1:4', strongestRatio: '1:3.9', mark: '2 L', containerCapacity: '5 L' });
    expect(result.ok ? [] : result.issues.map(({ code }) => code)).toEqual(['no_solution']);
  });
});
