import {
  channelProfile,
  type FilterMaterial,
  filterChannels,
  filtrationArea,
  loadChannels,
  solveWallFlow,
  wallFlowEquation,
} from '@wallflow/exhaust';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { processorTime } from '../../support/processor-time.js';

// Filter A of Konstandopoulos et al., SAE 2000-01-1016, Table A1.
const openArea = 2.35201166667e-3 / 0.144;
const channels = filterChannels({
  cellDensity: 310018.303481,
  wallThickness: 0.356e-3,
  frontalArea: openArea,
  filterLength: 0.144,
  plugLength: 0,
  layout: 'alternate',
  inletWidthRatio: 1,
})!;
const flow = { volumeFlow: 0.0307125, viscosity: 2.87e-5, density: 0.64 };
const material: FilterMaterial = {
  wallPermeability: 5.3e-13,
  sootPermeability: 3.2e-14,
  ashPermeability: 7.4e-14,
  forchheimerCoefficient: 0,
  entranceExitCoefficient: 0,
};

function loadedWith(grams: number) {
  return loadChannels(channels, { sootMass: grams / 1000, ashMass: 0, ashPlugShare: 0, sootPackingDensity: 97, ashPackingDensity: 400 })!;
}

/** Analytic solution and general boundary-value solver, tests/oracles/filter/two_channel.py. */
const independent = [
  { grams: 0, linear: 501.0534658, inertia: 501.4801 },
  { grams: 18.9554166667, linear: 2004.268954, inertia: 1992.49 },
  { grams: 35.0816666667, linear: 3866.637223, inertia: 3827.82 },
  { grams: 48.37875, linear: 6411.816742, inertia: 6300.971 },
  { grams: 58.8466666667, linear: 10714.2574, inertia: 10357.81 },
  { grams: 70, linear: 49229.43581, inertia: 42441.58 },
  { grams: 72, linear: 139244.1739, inertia: 98992.78 },
];

describe('one-dimensional two-channel model', () => {
  it.each(independent)('agrees with the analytic solution without inertia to 1e-6 at $grams g', ({ grams, linear }) => {
    const { status, channelDrop } = channelProfile(loadedWith(grams), { ...flow, density: 0 }, material);
    expect(status).toBe('converged');
    expect(Math.abs(channelDrop / linear - 1)).toBeLessThan(1e-6);
  });

  it.each(independent)('agrees with a general boundary-value solver with inertia at $grams g', ({ grams, inertia }) => {
    const { channelDrop } = channelProfile(loadedWith(grams), flow, material);
    expect(Math.abs(channelDrop / inertia - 1)).toBeLessThan(2e-6);
  });

  it.each([
    [0, 501.1, 501.5],
    [0.1e-3, 2004.3, 1992.5],
    [0.2e-3, 3866.6, 3827.8],
    [0.3e-3, 6411.8, 6301.0],
    [0.4e-3, 10714.3, 10357.8],
  ])('gives an earlier independent table for a cake of %d m within 0.1 %%', (thickness, linear, inertia) => {
    const grams = 1000 * 4 * thickness * (channels.inletWidth - thickness) * channels.openLength * channels.inletCount * 97;
    expect(Math.abs(channelProfile(loadedWith(grams), { ...flow, density: 0 }, material).channelDrop / linear - 1)).toBeLessThan(1e-3);
    expect(Math.abs(channelProfile(loadedWith(grams), flow, material).channelDrop / inertia - 1)).toBeLessThan(1e-3);
  });

  it('converges from idle to full flow and from clean to 99.9 % full', () => {
    for (const volumeFlow of [0.002, 0.02, 0.1, 0.3]) {
      for (const grams of [0, 1, 10, 40, 60, 70, 73, 73.2]) {
        const { status, points } = channelProfile(loadedWith(grams), { ...flow, volumeFlow }, material);
        expect([volumeFlow, grams, status]).toEqual([volumeFlow, grams, 'converged']);
        expect(points.every((point) => Object.values(point).every(Number.isFinite))).toBe(true);
      }
    }
  });

  it('puts all of the gas through the wall', () => {
    const { points } = channelProfile(loadedWith(58), flow, material, 201);
    const step = channels.openLength / 200;
    const simpson = points.reduce((sum, { wallVelocity }, i) => sum + wallVelocity * (i === 0 || i === 200 ? 1 : i % 2 === 1 ? 4 : 2), 0);
    const area = filtrationArea(channels) / channels.openLength;
    expect(((simpson * step) / 3) * area).toBeCloseTo(flow.volumeFlow, 8);
  });
});

describe('cost of a solve', () => {
  const native = globalThis.Float64Array;
  let bytes = 0;
  beforeEach(() => {
    bytes = 0;
  });
  afterEach(() => {
    globalThis.Float64Array = native;
  });

  it.each([0, 58, 72, 73.2])('needs at most 50 kB of working memory with %d g', (grams) => {
    const { equation } = wallFlowEquation(loadedWith(grams), flow, material);
    globalThis.Float64Array = new Proxy(native, {
      construct(target, parameters: [number]) {
        const made = new target(...parameters);
        bytes += made.byteLength;
        return made;
      },
    });
    solveWallFlow(equation);
    globalThis.Float64Array = native;
    // Everything that was allocated, as if nothing had been freed on the way.
    expect(bytes).toBeGreaterThan(0);
    expect(bytes).toBeLessThanOrEqual(50_000);
  });

  it('takes at most a quarter of a millisecond, a twentieth of a general boundary-value solver', () => {
    const loaded = loadedWith(35);
    let best = Infinity;
    for (let batch = 0; batch < 40; batch += 1) {
      const spent = processorTime(() => {
        for (let i = 0; i < 20; i += 1) channelProfile(loaded, flow, material);
      });
      best = Math.min(best, spent / 20);
    }
    expect(best).toBeLessThan(0.25);
  });
});
