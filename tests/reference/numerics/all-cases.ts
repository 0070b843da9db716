import { curveFits, linearFits, moments } from './certified-fits.cases.js';
import { curveFit, linearFit, momentsOf } from './certified-fits.ours.js';
import { endOf, problems } from './differential-equations.cases.js';
import { independentProblems } from './differential-equations.independent.js';
import { independentCases } from './fits.independent.js';
import type { NumericsCase, Ours } from './numerics-case.js';
import { equations, rootOf } from './roots.cases.js';
import { coverageFactorsOurs, dailyMeansOurs, engineStatisticsOurs } from './statistics.ours.js';
import { coverageFactors, dailyMeans, engineStatistics, thermometer } from './uncertainty.cases.js';
import { thermometerOurs } from './uncertainty.ours.js';

/** A case and what we give for it. */
export interface NumericsRun {
  readonly reference: NumericsCase;
  ours(): Ours;
}

function runs<C extends NumericsCase>(cases: readonly C[], ours: (reference: C) => Ours): NumericsRun[] {
  return cases.map((reference) => ({ reference, ours: () => ours(reference) }));
}

/** Every published value that the numerics are held against, as the site lists them. */
export const numericsRuns: readonly NumericsRun[] = [
  ...runs(equations, rootOf),
  ...runs(linearFits, linearFit),
  ...curveFits.flatMap((reference) =>
    reference.given.starts.slice(0, 1).map((start) => ({ reference, ours: () => curveFit(reference, start) })),
  ),
  ...runs(moments, momentsOf),
  ...runs(problems, endOf),
  ...runs([thermometer], thermometerOurs),
  ...runs([dailyMeans], dailyMeansOurs),
  ...runs([engineStatistics], engineStatisticsOurs),
  ...runs(coverageFactors, coverageFactorsOurs),
  ...runs([...independentProblems, ...independentCases], (reference) => reference.ours()),
];
