import { registry } from '@wallflow/exhaust/calculations';
import { describe, expect, it } from 'vitest';

function run(id: string, change: Record<string, unknown> = {}) {
  const calculation = registry.get(id);
  if (calculation === undefined) throw new Error(`no calculation ${id}`);
  const result = calculation.run({ ...(calculation.example as object), ...change });
  if (!result.ok) throw new Error(JSON.stringify(result.issues));
  return result as typeof result & { outputs: Record<string, unknown> };
}

const codes = (result: ReturnType<typeof run>) => result.warnings.map((warning) => warning.code);
const tones = (result: ReturnType<typeof run>) => result.advice.map((advice) => advice.tone);

describe('cautions', () => {
  const dangerous = [
    'regeneration-permission',
    'regeneration-watch',
    'regeneration-lumped',
    'regeneration-axial',
    'runaway-index',
    'peak-temperature-map',
  ];

  it.each(dangerous)('%s carries fire, runaway and the procedure of the maker', (id) => {
    const carried = registry.get(id)?.spec.cautions.map((caution) => caution.code) ?? [];
    expect(carried).toEqual(expect.arrayContaining(['maker_procedure_first', 'hot_exhaust', 'runaway', 'never_unattended']));
  });
});

describe('advice', () => {
  it('forbids heating where the simulated peak damages the material', () => {
    const result = run('regeneration-axial', {
      substrate: 'cordierite',
      sootLoad: '10 g/L',
      scenario: 'drop-to-idle',
      kinetics: 'bissett-shadman-1985',
      idleMassFlow: '40 kg/h',
    });
    expect(result.outputs.peakTemperature).toBeGreaterThan(1173.15);
    expect(tones(result)).toEqual(['do-not', 'do-not']);
  });

  it('says nothing against a mild steady burn', () => {
    expect(run('regeneration-axial', { sootLoad: '3 g/L' }).advice).toEqual([]);
  });

  it('stops the use of more fuel in a catalyst that does not burn it', () => {
    expect(tones(run('oxidation-catalyst-exotherm', { temperatureAfter: '350 °C' }))).toEqual(['do', 'do-not']);
  });

  it('calls for an oil change before any forced regeneration', () => {
    const result = run('oil-dilution', { evaporated: '0 %' });
    expect(result.advice).toEqual([{ tone: 'do', text: 'Change the oil now, before any forced regeneration.' }]);
  });
});

describe('warnings', () => {
  it('doubts signals that show more heat than the fuel holds', () => {
    expect(codes(run('oxidation-catalyst-exotherm', { temperatureAfter: '700 °C' }))).toContain('more_heat_than_fuel');
  });

  it('tells when the exhaust cannot hold the nitrogen dioxide that the rate needs', () => {
    const change = {
      startSootMass: '72.7 g',
      exhaustMassFlow: '50 kg/h',
      nitrogenDioxide: '600 ppm',
      filterTemperature: '400 °C',
      oxygen: '0 %',
    };
    expect(codes(run('soot-balance', change))).toContain('nitrogen_dioxide_short');
    expect(codes(run('soot-balance', { ...change, exhaustMassFlow: '2000 kg/h' }))).not.toContain('nitrogen_dioxide_short');
  });
});

describe('own rate laws', () => {
  it('gives the published result when it is given the published numbers', () => {
    const own = {
      kinetics: 'own',
      ownOxygenFactor: '16000 1/s',
      ownOxygenEnergy: '108 kJ/mol',
      ownNitrogenDioxideFactor: '4200 1/s',
      ownNitrogenDioxideEnergy: '45.5 kJ/mol',
      ownNitrogenDioxideOrder: '1.13',
    };
    expect(run('soot-oxidation-rate', own).outputs).toEqual(run('soot-oxidation-rate').outputs);
  });

  it('asks for the energy that belongs to a factor', () => {
    const result = registry
      .get('soot-oxidation-rate')
      ?.run({ ...(registry.get('soot-oxidation-rate')?.example as object), kinetics: 'own', ownOxygenFactor: '16000 1/s' });
    expect(result?.ok === false ? result.issues[0] : undefined).toMatchObject({ code: 'missing_input', path: ['ownOxygenEnergy'] });
  });
});
