import type { NumericsCase } from './numerics-case.js';

const gum = (locator: string) => ({
  by: 'Joint Committee for Guides in Metrology',
  title: 'JCGM 100:2008, Guide to the expression of uncertainty in measurement',
  year: 2008,
  locator,
  mark: 'from memory' as const,
});

export const thermometer: NumericsCase<{ readonly temperature: readonly number[]; readonly correction: readonly number[] }> = {
  id: 'gum-h3',
  title: 'Calibration curve of a thermometer, b = y1 + y2 (t - 20 °C), and its value at 30 °C',
  source: gum('H.3, table H.6 and H.3.3, H.3.4'),
  origin: 'standard-example',
  given: {
    temperature: [21.521, 22.012, 22.512, 23.003, 23.507, 23.999, 24.513, 25.002, 25.503, 26.01, 26.511],
    correction: [-0.171, -0.169, -0.166, -0.159, -0.164, -0.165, -0.156, -0.157, -0.159, -0.161, -0.16],
  },
  expected: {
    intercept: '-0.1712',
    slope: '0.00218',
    interceptUncertainty: '0.0029',
    slopeUncertainty: '0.00067',
    correlation: '-0.930',
    residualStandardDeviation: '0.0035',
    at30: '-0.1494',
    uncertaintyAt30: '0.0041',
  },
};

export const dailyMeans: NumericsCase<{ readonly means: readonly number[]; readonly deviations: readonly number[] }> = {
  id: 'gum-h5',
  title: 'Voltage standard on ten days, five readings a day: microvolts above 10 V',
  source: gum('H.5, table H.9 and H.5.2'),
  origin: 'standard-example',
  given: {
    means: [172, 116, 13, 144, 106, 31, 60, 125, 163, 41],
    deviations: [60, 77, 111, 101, 67, 93, 80, 73, 88, 86],
  },
  expected: {
    grandMean: '97',
    deviationOfMeans: '57',
    pooledDeviation: '85',
    varianceRatio: '2.25',
    uncertaintyOfMean: '18',
  },
  disagreement: {
    keys: ['varianceRatio'],
    reason: 'printed 2.25 from (128/85)² with rounded 128 and 85; the unrounded ratio is 2.26',
  },
};

const cfr = {
  by: 'US Environmental Protection Agency',
  title: '40 CFR Part 1065',
  year: 2023,
  mark: 'read' as const,
};

export const engineStatistics: NumericsCase<readonly number[]> = {
  id: 'cfr-1065-602',
  title: 'Mean and standard deviation of three readings',
  source: { ...cfr, locator: '1065.602(b), (c), examples' },
  origin: 'standard-example',
  given: [10.6, 11.91, 11.09],
  expected: { mean: '11.20', standardDeviation: '0.6619' },
};

/** Confidence, degrees of freedom and factor as printed. */
type Factor = readonly [number, number, string];

const factorTable = (given: readonly Factor[]) => ({
  given,
  expected: Object.fromEntries(
    given.map(([probability, degreesOfFreedom, factor]) => [`${probability}, ${degreesOfFreedom} degrees of freedom`, factor]),
  ),
});

export const coverageFactors: ReadonlyArray<NumericsCase<readonly Factor[]>> = [
  {
    id: 'cfr-1065-602-table-1',
    title: 'Two-sided t values for 95 % confidence',
    source: { ...cfr, locator: '1065.602(f), table 1' },
    origin: 'published-table',
    ...factorTable([
      [0.95, 1, '12.706'],
      [0.95, 5, '2.571'],
      [0.95, 10, '2.228'],
      [0.95, 30, '2.042'],
      [0.95, 100, '1.984'],
    ]),
  },
  {
    id: 'gum-table-g2',
    title: 't factors for several fractions',
    source: gum('Table G.2'),
    origin: 'published-table',
    ...factorTable([
      [0.6827, 1, '1.84'],
      [0.9, 1, '6.31'],
      [0.95, 1, '12.71'],
      [0.9545, 1, '13.97'],
      [0.99, 1, '63.66'],
      [0.9973, 1, '235.80'],
      [0.6827, 10, '1.05'],
      [0.9, 10, '1.81'],
      [0.9545, 10, '2.28'],
      [0.9973, 10, '3.96'],
      [0.99, 16, '2.92'],
      [0.6827, Infinity, '1.000'],
      [0.9, Infinity, '1.645'],
      [0.95, Infinity, '1.960'],
      [0.9545, Infinity, '2.000'],
      [0.99, Infinity, '2.576'],
      [0.9973, Infinity, '3.000'],
    ]),
  },
];
