import { channelProfile, filterChannels, loadChannels, loadedDropParts } from '@wallflow/exhaust';
import { bench, describe } from 'vitest';

// Filter A of Konstandopoulos et al., SAE 2000-01-1016. A general boundary-value solver (scipy 1.17 solve_bvp, tolerance
// 1e-6) takes 0.8 to 5 ms for the same cases: tests/oracles/filter/two_channel.py prints its times.
const channels = filterChannels({
  cellDensity: 310018.303481,
  wallThickness: 0.356e-3,
  frontalArea: 2.35201166667e-3 / 0.144,
  filterLength: 0.144,
  plugLength: 0,
  layout: 'alternate',
  inletWidthRatio: 1,
})!;
const flow = { volumeFlow: 0.0307125, viscosity: 2.87e-5, density: 0.64 };
const material = {
  wallPermeability: 5.3e-13,
  sootPermeability: 3.2e-14,
  ashPermeability: 7.4e-14,
  forchheimerCoefficient: 0,
  entranceExitCoefficient: 0,
};

for (const grams of [0, 35, 58, 70, 72]) {
  const loaded = loadChannels(channels, {
    sootMass: grams / 1000,
    ashMass: 0,
    ashPlugShare: 0,
    sootPackingDensity: 97,
    ashPackingDensity: 400,
  })!;
  describe(`${grams} g of soot`, () => {
    bench('two-channel model with inertia', () => {
      channelProfile(loaded, flow, material);
    });
    bench('closed form', () => {
      loadedDropParts(loaded, flow, material);
    });
  });
}
