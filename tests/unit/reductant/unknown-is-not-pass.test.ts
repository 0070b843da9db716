import { registry } from '@wallflow/exhaust/calculations';
import { describe, expect, it } from 'vitest';

function run(id: string, input: object) {
  const result = registry.get(id)?.run(input);
  if (result === undefined) throw new Error(`no calculation ${id}`);
  return result;
}

function verdictOf(id: string, input: object): unknown {
  const result = run(id, input);
  if (!result.ok) throw new Error(result.issues.map((issue) => issue.code).join());
  return result.outputs.verdict;
}

const threeRuns = ['60 mL', '60 mL', '60 mL'].map((collectedVolume) => ({ collectedVolume, duration: '60 s' }));
const nominal = { nominalVolume: '60 mL', nominalDuration: '60 s' };

describe('what was not observed is never a pass', () => {
  it('drip or spray that nobody watched', () => {
    expect(verdictOf('dosing-test', { runs: threeRuns, ...nominal })).toBe('quantity-only');
    expect(verdictOf('dosing-test', { runs: threeRuns, ...nominal, drip: 'none' })).toBe('quantity-only');
    expect(verdictOf('dosing-test', { runs: threeRuns, ...nominal, drip: 'none', spray: 'even' })).toBe('pass');
  });

  it('a single dosing run', () => {
    expect(verdictOf('dosing-test', { runs: threeRuns.slice(0, 1), ...nominal, drip: 'none', spray: 'even' })).toBe('too-few-runs');
  });

  it('a drip fails whatever the quantity', () => {
    expect(verdictOf('dosing-test', { runs: threeRuns, ...nominal, drip: 'drips', spray: 'even' })).toBe('drips');
  });

  it('conversion without the temperature of the catalyst is no fault of the catalyst', () => {
    expect(verdictOf('nox-conversion', { noxBefore: '500 ppm', noxAfter: '300 ppm', dosedRatio: '0.4' })).toBe('temperature-unknown');
  });

  it('a low reading behind a catalyst that may hold ammonia is no fault of the sensor', () => {
    const readings = [300, 301, 299].map((after) => ({ noxBefore: '400 ppm', noxAfter: `${after} ppm` }));
    expect(verdictOf('sensor-cross-check', { readings, scrState: 'dosing-off' })).toBe('storage-possible');
  });

  it('fluid that was hot or will be kept hot must be tested', () => {
    expect(verdictOf('reductant-storage-life', { periods: [{ storageTemperature: '50 °C', duration: '1 d' }], storedAt: '10 °C' })).toBe(
      'test',
    );
    expect(verdictOf('reductant-storage-life', { periods: [{ storageTemperature: '10 °C', duration: '1 d' }], storedAt: '50 °C' })).toBe(
      'test',
    );
  });

  it('ash without a test is taken as hazardous', () => {
    expect(verdictOf('ash-waste-class', { place: 'california' })).toBe('assume-hazardous');
  });

  it('smoke without a limit or without a reading has no verdict', () => {
    const readings = [{ absorption: '0.1 1/m' }, { absorption: '0.1 1/m' }, { absorption: '0.1 1/m' }];
    expect(verdictOf('free-acceleration', { readings })).toBe('no-limit');
    expect(verdictOf('smoke-limit', { regime: 'uk', firstUseYear: 2015 })).toBe('no-reading');
    expect(verdictOf('smoke-limit', { regime: 'california', firstUseYear: 2015, absorptionReading: '0.1 1/m' })).toBe('no-reading');
  });

  it('a reading at the edge of the window is undecided', () => {
    expect(verdictOf('reductant-concentration', { refractiveIndex: '1.3814', fluidTemperature: '20 °C' })).toBe('near-lower-limit');
    expect(
      verdictOf('reductant-concentration', { refractiveIndex: '1.38285', fluidTemperature: '20 °C', fluidDensity: '1060 kg/m3' }),
    ).toBe('not-urea-and-water');
  });
});

describe('a limit from memory says so with the result', () => {
  const readings = [{ particleConcentration: '4000 1/cm3' }];
  const absorption = [{ absorption: '0.1 1/m' }, { absorption: '0.1 1/m' }, { absorption: '0.1 1/m' }];
  it.each([
    ['smoke-limit', { regime: 'eu', firstUseYear: 2016, absorptionReading: '0.1 1/m' }],
    ['particle-number-idle', { rule: 'germany', testYear: 2026, readings }],
    ['free-acceleration', { readings: absorption, absorptionLimit: '1.5 1/m' }],
    ['fault-countdown', { rule: 'eu-heavy-duty', fault: 'quality', engineTimeSinceDetection: '3 h' }],
    ['reductant-range', { fluidVolume: '9 L', consumption: '2 L/1000km' }],
    ['reductant-storage-life', { periods: [{ storageTemperature: '10 °C', duration: '1 d' }], storedAt: '10 °C' }],
    ['workplace-air', registry.get('workplace-air')?.example],
    ['nox-humidity-correction', { edition: 'un-r49-later', noxMoleFraction: '400 ppm', intakeHumidity: '10 g/kg' }],
    ['dry-wet-correction', { edition: 'directive-1999', fuelToAirRatio: '33 g/kg', gasReading: '400 ppm', readingBasis: 'dry' }],
    ['nox-mass-flow', { noxMoleFraction: '400 ppm', readingBasis: 'wet', exhaustMassFlow: '200 kg/h', edition: 'un-r49-later' }],
    ['roadworthiness-rules', { place: 'eu' }],
  ])('%s', (id, input) => {
    const result = run(id, input as object);
    if (!result.ok) throw new Error('refused');
    expect(result.warnings.map((warning) => warning.code)).toContain('from_memory');
  });

  it.each(['smoke-limit', 'particle-number-idle', 'fault-countdown', 'workplace-air'])('%s names the mark in its basis', (id) => {
    const result = run(
      id,
      {
        'smoke-limit': { regime: 'eu', firstUseYear: 2016 },
        'particle-number-idle': { rule: 'germany', testYear: 2026, readings },
        'fault-countdown': { rule: 'eu-heavy-duty', fault: 'quality', engineTimeSinceDetection: '3 h' },
        'workplace-air': registry.get('workplace-air')?.example as object,
      }[id] as object,
    );
    if (!result.ok) throw new Error('refused');
    expect(result.outputs.basis).toContain('from memory');
  });
});

describe('teaching models say so', () => {
  it.each(['scr-conversion', 'ammonia-storage'])('%s', (id) => {
    const result = run(id, registry.get(id)?.example as object);
    if (!result.ok) throw new Error('refused');
    expect(result.warnings.map((warning) => warning.code)).toContain('teaching_model');
  });
});
