import type { NumericsCase } from './numerics-case.js';

/** Points and, for non-linear fits, the two starting points that the datasets prescribe. */
interface Fit {
  readonly predictors: ReadonlyArray<readonly number[]>;
  readonly y: readonly number[];
  readonly intercept?: boolean;
}

const nist = (locator: string) => ({
  by: 'National Institute of Standards and Technology',
  title: 'Statistical Reference Datasets',
  year: 1998,
  locator,
  mark: 'read' as const,
});
const doubles = 'certified in 500-digit arithmetic; fifteen digits of a double can lose two to rounding';

// biome-ignore format: a table
const norris: ReadonlyArray<readonly [number, number]> = [
  [0.2, 0.1], [337.4, 338.8], [118.2, 118.1], [884.6, 888], [10.1, 9.2], [226.5, 228.1], [666.3, 668.5],
  [996.3, 998.5], [448.6, 449.1], [777, 778.9], [558.2, 559.2], [0.4, 0.3], [0.6, 0.1], [775.5, 778.1],
  [666.9, 668.8], [338, 339.3], [447.5, 448.9], [11.6, 10.8], [556, 557.7], [228.1, 228.3], [995.8, 998],
  [887.6, 888.8], [120.2, 119.6], [0.3, 0.3], [0.3, 0.6], [556.8, 557.6], [339.1, 339.3], [887.2, 888],
  [999, 998.5], [779, 778.9], [11.1, 10.2], [118.3, 117.6], [229.2, 228.9], [669.1, 668.4], [448.9, 449.2],
  [0.5, 0.2],
];

// biome-ignore format: a table
const longley: ReadonlyArray<readonly number[]> = [
  [60323, 83, 234289, 2356, 1590, 107608, 1947], [61122, 88.5, 259426, 2325, 1456, 108632, 1948],
  [60171, 88.2, 258054, 3682, 1616, 109773, 1949], [61187, 89.5, 284599, 3351, 1650, 110929, 1950],
  [63221, 96.2, 328975, 2099, 3099, 112075, 1951], [63639, 98.1, 346999, 1932, 3594, 113270, 1952],
  [64989, 99, 365385, 1870, 3547, 115094, 1953], [63761, 100, 363112, 3578, 3350, 116219, 1954],
  [66019, 101.2, 397469, 2904, 3048, 117388, 1955], [67857, 104.6, 419180, 2822, 2857, 118734, 1956],
  [68169, 108.4, 442769, 2936, 2798, 120445, 1957], [66513, 110.8, 444546, 4681, 2637, 121950, 1958],
  [68655, 112.6, 482704, 3813, 2552, 123366, 1959], [69564, 114.2, 502601, 3931, 2514, 125368, 1960],
  [69331, 115.7, 518173, 4806, 2572, 127852, 1961], [70551, 116.9, 554894, 4007, 2827, 130081, 1962],
];

const upTo20 = Array.from({ length: 21 }, (_, x) => x);
const powersOf = (x: number) => [1, 2, 3, 4, 5].map((power) => x ** power);

export const linearFits: ReadonlyArray<NumericsCase<Fit>> = [
  {
    id: 'strd-norris',
    title: 'Straight line through 36 calibration points of an ozone monitor',
    source: nist('Linear regression, Norris'),
    origin: 'certified-value',
    given: { predictors: norris.map(([x]) => [x]), y: norris.map(([, y]) => y) },
    expected: {
      b0: '-0.262323073774029',
      b1: '1.00211681802045',
      s0: '0.232818234301152',
      s1: '0.429796848199937E-03',
      residualStandardDeviation: '0.884796396144373',
      rSquared: '0.999993745883712',
    },
    relativeTolerance: 1e-12,
    toleranceReason: `${doubles}; the intercept is a small difference of means near 430`,
  },
  {
    id: 'strd-no-int1',
    title: 'Straight line through the origin, R² about zero',
    source: nist('Linear regression, NoInt1'),
    origin: 'certified-value',
    given: {
      predictors: Array.from({ length: 11 }, (_, i) => [60 + i]),
      y: Array.from({ length: 11 }, (_, i) => 130 + i),
      intercept: false,
    },
    expected: {
      b0: '2.07438016528926',
      s0: '0.165289256198347E-01',
      residualStandardDeviation: '3.56753034006338',
      rSquared: '0.999365492298663',
    },
    relativeTolerance: 1e-13,
    toleranceReason: doubles,
  },
  {
    id: 'strd-longley',
    title: 'Six predictors that are nearly dependent',
    source: nist('Linear regression, Longley'),
    origin: 'certified-value',
    given: { predictors: longley.map((row) => row.slice(1)), y: longley.map((row) => row[0]!) },
    expected: {
      b0: '-3482258.63459582',
      b1: '15.0618722713733',
      b2: '-0.358191792925910E-01',
      b3: '-2.02022980381683',
      b4: '-1.03322686717359',
      b5: '-0.511041056535807E-01',
      b6: '1829.15146461355',
      s0: '890420.383607373',
      s1: '84.9149257747669',
      s2: '0.334910077722432E-01',
      s3: '0.488399681651699',
      s4: '0.214274163161675',
      s5: '0.226073200069370',
      s6: '455.478499142212',
      residualStandardDeviation: '304.854073561965',
      rSquared: '0.995479004577296',
    },
    relativeTolerance: 1e-12,
    toleranceReason: `${doubles}; the design has a condition number of 5e9`,
  },
  {
    id: 'strd-wampler1',
    title: 'Polynomial of fifth degree with coefficients 1',
    source: nist('Linear regression, Wampler1'),
    origin: 'certified-value',
    given: {
      predictors: upTo20.map(powersOf),
      y: upTo20.map((x) => powersOf(x).reduce((sum, power) => sum + power, 1)),
    },
    expected: { b0: '1', b1: '1', b2: '1', b3: '1', b4: '1', b5: '1', rSquared: '1' },
    relativeTolerance: 1e-8,
    toleranceReason: 'values up to 3.4 million, of which the constant is 3e-7: eight digits are what doubles leave of it',
  },
  {
    id: 'strd-wampler2',
    title: 'Polynomial of fifth degree with coefficients 0.1 to the power k',
    source: nist('Linear regression, Wampler2'),
    origin: 'certified-value',
    given: {
      predictors: upTo20.map(powersOf),
      y: upTo20.map((x) => powersOf(x / 10).reduce((sum, power) => sum + power, 1)),
    },
    expected: { b0: '1', b1: '0.1', b2: '0.01', b3: '0.001', b4: '0.0001', b5: '0.00001', rSquared: '1' },
    relativeTolerance: 1e-11,
    toleranceReason: doubles,
  },
];

export interface CurveFit {
  readonly model: (parameters: Float64Array, x: number) => number;
  readonly x: readonly number[];
  readonly y: readonly number[];
  readonly starts: ReadonlyArray<readonly number[]>;
  /** Starts that the dataset also gives and from which the search fails, and must say so. */
  readonly failing?: ReadonlyArray<readonly number[]>;
}

const approach = (p: Float64Array, x: number) => p[0]! * (1 - Math.exp(-p[1]! * x));

export const curveFits: ReadonlyArray<NumericsCase<CurveFit>> = [
  {
    id: 'strd-misra1a',
    title: 'Dental monomolecular adsorption, y = b1 (1 - exp(-b2 x))',
    source: nist('Nonlinear regression, Misra1a'),
    origin: 'certified-value',
    given: {
      model: approach,
      x: [77.6, 114.9, 141.1, 190.8, 239.9, 289.0, 332.8, 378.4, 434.8, 477.3, 536.8, 593.1, 689.1, 760.0],
      y: [10.07, 14.73, 17.94, 23.93, 29.61, 35.18, 40.02, 44.82, 50.76, 55.05, 61.01, 66.4, 75.47, 81.78],
      starts: [
        [500, 0.0001],
        [250, 0.0005],
      ],
    },
    expected: {
      b1: '2.3894212918E+02',
      b2: '5.5015643181E-04',
      s1: '2.7070075241E+00',
      s2: '7.2668688436E-06',
      sumOfSquares: '1.2455138894E-01',
      residualStandardDeviation: '1.0187876330E-01',
    },
    relativeTolerance: 1e-9,
    toleranceReason: 'derivatives by differences; standard errors keep nine of the eleven certified digits',
  },
  {
    id: 'strd-boxbod',
    title: 'Biochemical oxygen demand, y = b1 (1 - exp(-b2 x)), rated hard',
    source: nist('Nonlinear regression, BoxBOD'),
    origin: 'certified-value',
    given: {
      model: approach,
      x: [1, 2, 3, 5, 7, 10],
      y: [109, 149, 149, 191, 213, 224],
      starts: [[100, 0.75]],
      failing: [[1, 1]],
    },
    expected: {
      b1: '2.1380940889E+02',
      b2: '5.4723748542E-01',
      s1: '1.2354515176E+01',
      s2: '1.0455993237E-01',
      sumOfSquares: '1.1680088766E+03',
      residualStandardDeviation: '1.7088072423E+01',
    },
    relativeTolerance: 1e-9,
    toleranceReason: 'derivatives by differences; standard errors keep nine of the eleven certified digits',
  },
];

const alternating = (centre: number) =>
  Array.from({ length: 1001 }, (_, i) => Number((centre + (i === 0 ? 0 : i % 2 === 1 ? -0.1 : 0.1)).toFixed(1)));

export const moments: ReadonlyArray<NumericsCase<readonly number[]>> = [
  {
    id: 'strd-num-acc1',
    title: 'Three eight-digit integers',
    source: nist('Univariate summary statistics, NumAcc1'),
    origin: 'certified-value',
    given: [10000001, 10000003, 10000002],
    expected: { mean: '10000002', standardDeviation: '1' },
    relativeTolerance: 1e-15,
    toleranceReason: 'exact',
  },
  {
    id: 'strd-num-acc2',
    title: '1001 values about 1.2',
    source: nist('Univariate summary statistics, NumAcc2'),
    origin: 'certified-value',
    given: alternating(1.2),
    expected: { mean: '1.2', standardDeviation: '0.1' },
    relativeTolerance: 1e-14,
    toleranceReason: 'exact values; 0.1 is not a double',
  },
  {
    id: 'strd-num-acc3',
    title: '1001 values about 1000000.2',
    source: nist('Univariate summary statistics, NumAcc3'),
    origin: 'certified-value',
    given: alternating(1000000.2),
    expected: { mean: '1000000.2', standardDeviation: '0.1' },
    relativeTolerance: 1e-9,
    toleranceReason: 'the values as doubles are off by up to 6e-11, which is 6e-10 of their spread',
  },
  {
    id: 'strd-num-acc4',
    title: '1001 values about 10000000.2',
    source: nist('Univariate summary statistics, NumAcc4'),
    origin: 'certified-value',
    given: alternating(10000000.2),
    expected: { mean: '10000000.2', standardDeviation: '0.1' },
    relativeTolerance: 1e-8,
    toleranceReason: 'the values as doubles are off by up to 9e-10, which is 9e-9 of their spread',
  },
];
