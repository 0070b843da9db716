import { describe, it } from 'vitest';
import { expectCase } from './expect-case.js';
import { coverageFactorsOurs, dailyMeansOurs, engineStatisticsOurs } from './statistics.ours.js';
import { coverageFactors, dailyMeans, engineStatistics, thermometer } from './uncertainty.cases.js';
import { thermometerOurs } from './uncertainty.ours.js';

describe('statistics', () => {
  it(`${thermometer.id}: ${thermometer.title}`, () => expectCase(thermometer, thermometerOurs(thermometer)));
  it(`${dailyMeans.id}: ${dailyMeans.title}`, () => expectCase(dailyMeans, dailyMeansOurs()));
  it(`${engineStatistics.id}: ${engineStatistics.title}`, () => expectCase(engineStatistics, engineStatisticsOurs()));
  it.each(coverageFactors)('$id: $title', (reference) => expectCase(reference, coverageFactorsOurs(reference)));
});
