import { filterChannels, loadChannels, loadedDropParts } from '@wallflow/exhaust';
import { type EstimateInput, estimateFilter, nextTests } from '@wallflow/workshop/estimate';
import { bench, describe } from 'vitest';

// What counts is the ratio within one run: the estimate beside the general closed form of the drop, as often as the estimate
// evaluates its own model of the filter. The estimate, fits and draws and weights included, should not take longer than that.

const at = (rpm: number, mbar: number) => ({ engineSpeed: rpm / 60, pressureDrop: mbar * 100 });
const input: EstimateInput = {
  vehicle: { displacement: 2e-3 },
  readings: [at(800, 10), at(1800, 60), at(2800, 140)],
  zero: { pressureDrop: 0 },
};
const estimate = estimateFilter(input);

const channels = filterChannels({
  cellDensity: 310_000,
  wallThickness: 0.3e-3,
  frontalArea: 0.0163,
  filterLength: 0.16,
  plugLength: 6e-3,
  layout: 'alternate',
  inletWidthRatio: 1,
})!;
const flow = { volumeFlow: 0.08, viscosity: 2.6e-5, density: 0.75 };
const material = {
  wallPermeability: 3.3e-13,
  sootPermeability: 2.5e-14,
  ashPermeability: 7e-14,
  forchheimerCoefficient: 0,
  entranceExitCoefficient: 0,
};

/** The drop at three flows of one filter. */
function threeDrops(sootMass: number): void {
  const loaded = loadChannels(channels, { sootMass, ashMass: 0.04, ashPlugShare: 0.6, sootPackingDensity: 85, ashPackingDensity: 400 });
  if (loaded === undefined) return;
  for (const share of [0.25, 0.6, 1]) loadedDropParts(loaded, { ...flow, volumeFlow: share * flow.volumeFlow }, material);
}

describe('three readings and a zero', () => {
  bench('estimate', () => {
    estimateFilter(input);
  });
  bench(`closed form of the drop alone, ${estimate.evaluations} filters`, () => {
    for (let k = 0; k < estimate.evaluations; k += 1) threeDrops(0.02 * (k / estimate.evaluations));
  });
  bench('next tests of an estimate', () => {
    nextTests(estimate);
  });
});
