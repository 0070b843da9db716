import { describe, it } from 'vitest';
import { expectCase } from './expect-case.js';
import { fallingBallOurs, fourInputsOurs } from './simulation.ours.js';
import { coverageFactorsOurs, dailyMeansOurs, engineStatisticsOurs } from './statistics.ours.js';
import {
  coverageFactors,
  dailyMeans,
  engineStatistics,
  fallingBall,
  fourInputs,
  freedoms,
  gaugeBlock,
  impedance,
  thermometer,
} from './uncertainty.cases.js';
import { freedomsOurs, gaugeBlockOurs, impedanceOurs, thermometerOurs } from './uncertainty.ours.js';

describe('first-order propagation', () => {
  it(`${gaugeBlock.id}: ${gaugeBlock.title}`, () => expectCase(gaugeBlock, gaugeBlockOurs()));
  it(`${impedance.id}: ${impedance.title}`, () => expectCase(impedance, impedanceOurs()));
  it(`${thermometer.id}: ${thermometer.title}`, () => expectCase(thermometer, thermometerOurs()));
  it.each(freedoms)('$id: $title', (reference) => expectCase(reference, freedomsOurs(reference)));
});

describe('simulation', () => {
  it(`${fallingBall.id}: ${fallingBall.title}`, () => expectCase(fallingBall, fallingBallOurs()));
  it.each(fourInputs)('$id: $title', (reference) => expectCase(reference, fourInputsOurs(reference)));
});

describe('statistics', () => {
  it(`${dailyMeans.id}: ${dailyMeans.title}`, () => expectCase(dailyMeans, dailyMeansOurs()));
  it(`${engineStatistics.id}: ${engineStatistics.title}`, () => expectCase(engineStatistics, engineStatisticsOurs()));
  it.each(coverageFactors)('$id: $title', (reference) => expectCase(reference, coverageFactorsOurs(reference)));
});
