import type { NumericsCase } from './numerics-case.js';

const gum = (locator: string) => ({
  by: 'Joint Committee for Guides in Metrology',
  title: 'JCGM 100:2008, Guide to the expression of uncertainty in measurement',
  year: 2008,
  locator,
  mark: 'from memory' as const,
});

export const gaugeBlock: NumericsCase<Record<string, readonly [number, number, number?]>> = {
  id: 'gum-h1',
  title: 'End gauge calibration: l = ls + d - ls (δα θ + αs δθ), lengths in nm',
  source: gum('H.1, tables H.1 and H.6 (H.1.6)'),
  origin: 'standard-example',
  // Value, standard uncertainty, degrees of freedom.
  given: {
    standardLength: [50000623, 25, 18],
    differenceRandom: [215, 5.8, 24],
    comparatorRandom: [0, 3.9, 5],
    comparatorSystematic: [0, 6.7, 8],
    expansionDifference: [0, 0.58e-6, 50],
    temperatureDeviation: [-0.1, 0.41],
    temperatureDifference: [0, 0.029, 2],
    expansionCoefficient: [11.5e-6, 1.2e-6],
  },
  expected: { length: '50000838', standardUncertainty: '32', degreesOfFreedom: '16', expandedUncertainty: '93' },
};

export const impedance: NumericsCase<Record<'voltage' | 'current' | 'phase', readonly number[]>> = {
  id: 'gum-h2',
  title: 'Resistance, reactance and impedance from five simultaneous readings',
  source: gum('H.2, tables H.2 to H.4'),
  origin: 'standard-example',
  given: {
    voltage: [5.007, 4.994, 5.005, 4.99, 4.999],
    current: [19.663e-3, 19.639e-3, 19.64e-3, 19.685e-3, 19.678e-3],
    phase: [1.0456, 1.0438, 1.0468, 1.0428, 1.0433],
  },
  expected: {
    meanVoltage: '4.9990',
    meanCurrent: '19.6610e-3',
    meanPhase: '1.04446',
    voltageUncertainty: '0.0032',
    currentUncertainty: '0.0095e-3',
    phaseUncertainty: '0.00075',
    correlationVI: '-0.36',
    correlationVPhi: '0.86',
    correlationIPhi: '-0.65',
    resistance: '127.732',
    reactance: '219.847',
    impedance: '254.260',
    resistanceUncertainty: '0.071',
    reactanceUncertainty: '0.295',
    impedanceUncertainty: '0.236',
    correlationRX: '-0.588',
    correlationRZ: '-0.485',
    correlationXZ: '0.993',
  },
  disagreement: {
    keys: ['reactanceUncertainty'],
    reason: 'printed 0.295; exact arithmetic on the printed data gives 0.2956',
  },
};

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

export const fallingBall: NumericsCase<ReadonlyArray<readonly [number, number]>> = {
  id: 'nist-tn-1900-e3',
  title: 'Viscosity by falling ball, first order: μ = μc (ρb - ρm) / (ρb - ρc) tm / tc',
  source: {
    by: 'A. Possolo',
    title: 'NIST Technical Note 1900, Simple Guide for Evaluating and Expressing the Uncertainty of NIST Measurement Results',
    year: 2015,
    locator: 'Example E3',
    mark: 'read',
  },
  origin: 'standard-example',
  // μc, ρb, ρm, ρc, tm, tc: value and standard uncertainty.
  given: [
    [4.63, 0.0463],
    [2217, 0.5],
    [1180, 0.5],
    [810, 0.5],
    [61, 6.1],
    [36.6, 5.49],
  ],
  expected: { value: '5.69', firstOrder: '1.03', mean: '5.82', deviation: '1.11', lower: '4.05', upper: '8.39' },
  relativeTolerance: 5e-3,
  toleranceReason: 'three printed digits of a Monte Carlo run; the value and first-order uncertainty agree to the digits',
};

export const fourInputs: ReadonlyArray<NumericsCase<'normal' | 'rectangular'>> = [
  {
    id: 'jcgm-101-9-2-2',
    title: 'Sum of four standard normal inputs',
    source: { ...gum('9.2.2'), title: 'JCGM 101:2008, Propagation of distributions using a Monte Carlo method', mark: 'read' },
    origin: 'standard-example',
    given: 'normal',
    expected: { deviation: '2.00', lower: '-3.92', upper: '3.92' },
    relativeTolerance: 4e-3,
    toleranceReason: 'one run of a million draws: about five standard errors of an end of the interval',
  },
  {
    id: 'jcgm-101-9-2-3',
    title: 'Sum of four rectangular inputs of standard deviation 1',
    source: { ...gum('9.2.3'), title: 'JCGM 101:2008, Propagation of distributions using a Monte Carlo method', mark: 'read' },
    origin: 'standard-example',
    given: 'rectangular',
    expected: { deviation: '2.00', lower: '-3.88', upper: '3.88' },
    relativeTolerance: 4e-3,
    toleranceReason: 'one run of a million draws: about five standard errors of an end of the interval',
  },
];

export const freedoms: ReadonlyArray<NumericsCase<{ readonly contributions: number[]; readonly freedoms: number[] }>> = [
  {
    id: 'gum-g2b-two',
    title: 'Two contributions, one of them known exactly: 0.3874² / (0.1056 / 9)',
    source: gum('G.4.1, equation G.2b, worked by hand'),
    origin: 'closed-form',
    given: { contributions: [0.57, 0.25], freedoms: [9, Infinity] },
    expected: { degreesOfFreedom: '12.8' },
  },
  {
    id: 'gum-h1-comparator',
    title: 'The three contributions to the difference of the gauge blocks',
    source: gum('H.1.3.2'),
    origin: 'standard-example',
    given: { contributions: [5.8, 3.9, 6.7], freedoms: [24, 5, 8] },
    expected: { degreesOfFreedom: '25.6' },
    relativeTolerance: 0.01,
    toleranceReason: 'the source uses the rounded 9.7 nm for the combined uncertainty; unrounded it is 25.45',
  },
];

const cfr = {
  by: 'US Environmental Protection Agency',
  title: '40 CFR Part 1065',
  year: 2023,
  mark: 'read' as const,
};

export const engineStatistics: NumericsCase<readonly number[]> = {
  id: 'cfr-1065-602',
  title: 'Mean, standard deviation and root mean square of three readings',
  source: { ...cfr, locator: '1065.602(b), (c), (d), examples' },
  origin: 'standard-example',
  given: [10.6, 11.91, 11.09],
  expected: { mean: '11.20', standardDeviation: '0.6619', rootMeanSquare: '11.21' },
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
