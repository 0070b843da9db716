import { rampFeed, solveAxialRegeneration } from '@wallflow/exhaust';
import { expect, it } from 'vitest';
import { type BedChoice, regenerationOf } from '../../support/filter-bed.js';
import { processorTime } from '../../support/processor-time.js';

it('solves 20 minutes of regeneration in 40 cells in less than 50 ms', () => {
  const bed: BedChoice = { volume: 3e-3, length: 0.15, bulkDensity: 800, conductivity: 5, load: 6, start: 573, fast: false, monoxide: 0 };
  const feed = rampFeed({ massFlow: 0.04, temperature: 893, oxygen: 0.08, nitrogenDioxide: 0 }, 573, 300);
  const run = regenerationOf(bed, feed, 1200, 40);
  // The fastest of several runs: the first ones are not compiled yet.
  const times = Array.from({ length: 20 }, () => processorTime(() => expect(solveAxialRegeneration(run).finished).toBe(true)));
  expect(Math.min(...times)).toBeLessThan(50);
});
