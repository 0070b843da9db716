import { interpolateMonotonically } from '@wallflow/numerics';
import { expect, it } from 'vitest';
import independent from './independent-code.json';

it.each(independent.pchip)('shape-preserving interpolation through $y agrees with another implementation', ({ x, y, at, value }) => {
  const result = interpolateMonotonically(x, y, 'refuse');
  if (result.status !== 'ready') throw new Error(result.status);
  at.forEach((place, i) => {
    expect(result.interpolant.at(place)).toBeCloseTo(Number(value[i]), 12);
  });
});
