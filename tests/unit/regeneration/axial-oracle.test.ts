import { readFileSync } from 'node:fs';
import { type FeedPoint, regenerationStateAt, solveAxialRegeneration, wallTemperature } from '@wallflow/exhaust';
import { describe, expect, it } from 'vitest';

interface OracleCase {
  readonly name: string;
  readonly cells: number;
  readonly bed: Parameters<typeof solveAxialRegeneration>[0]['bed'];
  readonly gas: { readonly specificHeat: number; readonly molarMass: number };
  readonly law: { readonly preExponential: number; readonly activationEnergy: number; readonly referenceFraction: number };
  readonly carbonMonoxideShare: number;
  readonly sootLoad: number;
  readonly initialTemperature: number;
  readonly feed: readonly (readonly [number, number, number, number])[];
  readonly rows: readonly { readonly time: number; readonly soot: readonly number[]; readonly temperature: readonly number[] }[];
}

// Solved by scipy's Radau to 1e-9 in tests/oracles/regeneration/axial_regeneration.py.
const file = new URL('../../oracles/regeneration/axial_regeneration.json', import.meta.url);
const { cases } = JSON.parse(readFileSync(file, 'utf8')) as { cases: readonly OracleCase[] };

describe('axial regeneration against an independent stiff solver', () => {
  it.each(cases)('$name: every cell at every time within 1e-4', (oracle) => {
    const { cells, carbonMonoxideShare: share } = oracle;
    const feed: FeedPoint[] = oracle.feed.map(([time, massFlow, temperature, oxygen]) => ({
      time,
      massFlow,
      temperature,
      oxygen,
      nitrogenDioxide: 0,
    }));
    const solution = solveAxialRegeneration({
      bed: oracle.bed,
      combustion: {
        kinetics: { oxygen: { ...oracle.law, oxidantOrder: 1 } },
        heatOfCombustion: ((1 - share) * 393_500 + share * 110_500) / 0.012011,
        carbonMonoxideShare: share,
        gasSpecificHeat: oracle.gas.specificHeat,
        gasMolarMass: oracle.gas.molarMass,
      },
      soot: new Float64Array(cells).fill(oracle.sootLoad),
      initialTemperature: new Float64Array(cells).fill(oracle.initialTemperature),
      feed,
      duration: feed.at(-1)?.time ?? 0,
    });
    expect(solution.finished).toBe(true);
    let worst = 0;
    for (const row of oracle.rows) {
      const state = regenerationStateAt(solution, row.time);
      for (let cell = 0; cell < cells; cell += 1) {
        const warmth = Math.abs(wallTemperature(solution.model, state, cell) / (row.temperature[cell] ?? Number.NaN) - 1);
        const soot = solution.model.soot0[cell] ?? Number.NaN;
        const left = Math.abs(soot * Math.exp(-(state[cell] ?? Number.NaN)) - (row.soot[cell] ?? Number.NaN)) / oracle.sootLoad;
        worst = Math.max(worst, warmth, left);
      }
    }
    expect(worst).toBeLessThan(1e-4);
  });
});
