import { coverageFactor, mean, standardDeviation } from '@wallflow/numerics';
import type { Ours } from './numerics-case.js';
import { type coverageFactors, dailyMeans, engineStatistics } from './uncertainty.cases.js';

export function dailyMeansOurs(): Ours {
  const { means, deviations } = dailyMeans.given;
  const deviationOfMeans = standardDeviation(means)!;
  const pooledDeviation = Math.sqrt(mean(deviations.map((deviation) => deviation ** 2))!);
  return {
    grandMean: mean(means),
    deviationOfMeans,
    pooledDeviation,
    varianceRatio: (5 * deviationOfMeans ** 2) / pooledDeviation ** 2,
    uncertaintyOfMean: deviationOfMeans / Math.sqrt(means.length),
  };
}

export function engineStatisticsOurs(): Ours {
  const values = engineStatistics.given;
  return {
    mean: mean(values),
    standardDeviation: standardDeviation(values),
  };
}

// The table's 68.27, 95.45 and 99.73 % are one, two and three standard deviations, rounded.
const unrounded: Readonly<Record<number, number>> = { 0.6827: 0.6826894921370859, 0.9545: 0.9544997361036416, 0.9973: 0.9973002039367398 };

export function coverageFactorsOurs(reference: (typeof coverageFactors)[number]): Ours {
  const keys = Object.keys(reference.expected);
  return Object.fromEntries(
    reference.given.map(([probability, degreesOfFreedom], i) => [
      keys[i],
      coverageFactor(unrounded[probability] ?? probability, degreesOfFreedom),
    ]),
  );
}
