import { rampFeed, solveAxialRegeneration } from '@wallflow/exhaust';
import { bench, describe } from 'vitest';
import { type BedChoice, regenerationOf } from '../support/filter-bed.js';

const siliconCarbide: BedChoice = {
  volume: 3e-3,
  length: 0.15,
  bulkDensity: 800,
  conductivity: 5,
  load: 6,
  start: 573,
  fast: false,
  monoxide: 0,
};
const cordierite: BedChoice = { ...siliconCarbide, bulkDensity: 450, conductivity: 0.4, load: 4 };
const feed = rampFeed({ massFlow: 0.04, temperature: 893, oxygen: 0.08, nitrogenDioxide: 0 }, 573, 300);

describe('axial regeneration', () => {
  for (const [name, bed] of [
    ['silicon carbide', siliconCarbide],
    ['cordierite', cordierite],
  ] as const) {
    for (const cells of [20, 40, 80]) {
      for (const minutes of [10, 20, 40]) {
        const run = regenerationOf(bed, feed, minutes * 60, cells);
        bench(`${name}, ${cells} cells, ${minutes} min`, () => void solveAxialRegeneration(run));
      }
    }
  }
});
