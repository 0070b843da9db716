import { peakTemperature, rampFeed, solveAxialRegeneration } from '@wallflow/exhaust';
import { registry } from '@wallflow/exhaust/calculations';
import { describe, expect, it } from 'vitest';
import { type BedChoice, regenerationOf } from '../../support/filter-bed.js';
import { processorTime } from '../../support/processor-time.js';

const bed: BedChoice = { volume: 3e-3, length: 0.15, bulkDensity: 800, conductivity: 5, load: 6, start: 573, fast: false, monoxide: 0 };
const feed = rampFeed({ massFlow: 0.04, temperature: 893, oxygen: 0.08, nitrogenDioxide: 0 }, 573, 300);
const runOf = (cells: number, change: Partial<BedChoice> = {}) => regenerationOf({ ...bed, ...change }, feed, 1200, cells);

/** The fastest of several runs: the first ones are not compiled yet. */
function fastest(cells: number, tries: number): number {
  const run = runOf(cells);
  return Math.min(...Array.from({ length: tries }, () => processorTime(() => expect(solveAxialRegeneration(run).finished).toBe(true))));
}

it('solves 20 minutes of regeneration in 40 cells in less than 50 ms', () => {
  expect(fastest(40, 10)).toBeLessThan(50);
});

describe('many cells', () => {
  it('cost work that grows about with their number, not with its cube', () => {
    // Four times the cells; cubic growth would be 64 times.
    expect(fastest(320, 2)).toBeLessThan(10 * fastest(80, 3));
  });

  it('count the same, whether conduction is taken explicitly or implicitly', () => {
    // Just beyond and far beyond where the method changes: each doubling of the cells changes the peak less.
    const peaks = [20, 40, 80, 160].map((cells) => peakTemperature(solveAxialRegeneration(runOf(cells))).value);
    const changes = peaks.slice(1).map((peak, index) => Math.abs(peak - (peaks[index] ?? Number.NaN)));
    expect(changes[1]).toBeLessThan(0.75 * (changes[0] ?? 0));
    expect(changes[2]).toBeLessThan(0.75 * (changes[1] ?? 0));
  });
});

describe('definitions that simulate', () => {
  const limit = 500;
  const run = (id: string, change: Record<string, unknown>) => {
    const calculation = registry.get(id);
    let ok = false;
    const once = () => {
      ok = calculation?.run({ ...(calculation.example as object), ...change }).ok ?? false;
    };
    const times = [processorTime(once), processorTime(once)];
    expect(ok).toBe(true);
    return Math.min(...times);
  };
  const pm = {
    filterVolume: '3.0 ± 0.1 L',
    sootLoad: '6 ± 1 g/L',
    exhaustMassFlow: '140 ± 10 kg/h',
    gasTemperature: '600 ± 10 °C',
    oxygen: '8 ± 1 %',
  };
  const stiff = {
    axialConductivity: '20 W/(m.K)',
    filterLength: '50 mm',
    bulkDensity: '0.2 kg/L',
    specificHeat: '500 J/(kg.K)',
    duration: '2 h',
  };
  const course = Array.from({ length: 200 }, (_, index) => ({
    time: `${36 * index} s`,
    exhaustMassFlow: index % 2 === 0 ? '140 kg/h' : '60 kg/h',
    gasTemperature: index % 2 === 0 ? '600 °C' : '560 °C',
    oxygen: '8 %',
  }));

  it.each([
    ['regeneration-axial', { ...pm, cells: 'fine' }],
    ['regeneration-axial', { ...stiff, cells: 'fine' }],
    ['regeneration-axial', { scenario: 'own', course, duration: '2 h', cells: 'fine' }],
    ['regeneration-lumped', { ...pm, duration: '2 h' }],
    ['peak-temperature-map', { filterVolume: '3.0 ± 0.1 L', gasTemperature: '600 ± 10 °C', oxygen: '8 ± 1 %' }],
    ['runaway-index', { filterVolume: '3.0 ± 0.1 L', sootLoad: '6 ± 1 g/L', exhaustMassFlow: '140 ± 10 kg/h', oxygen: '8 ± 1 %' }],
    ['soot-driving-pattern', { repeats: 200, startSootMass: '4 ± 1 g', filterVolume: '3.0 ± 0.1 L' }],
  ])('%s answers within half a second of processor time', (id, change) => {
    expect(run(id, change)).toBeLessThan(limit);
  });
});
