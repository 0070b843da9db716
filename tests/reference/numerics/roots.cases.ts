import { findRoot } from '@wallflow/numerics';
import type { NumericsCase, Ours } from './numerics-case.js';

export interface Equation {
  readonly f: (x: number) => number;
  readonly bracket: readonly [number, number];
}

const sequence = (locator: string) => ({
  by: 'OEIS Foundation',
  title: 'The On-Line Encyclopedia of Integer Sequences',
  year: 2024,
  locator,
  mark: 'from memory' as const,
});
const reason = 'the resolution of doubles';

export const equations: ReadonlyArray<NumericsCase<Equation>> = [
  {
    id: 'cosine-fixed-point',
    title: 'cos x = x',
    source: sequence('A003957'),
    origin: 'published-table',
    given: { f: (x) => Math.cos(x) - x, bracket: [0, 1] },
    expected: { root: '0.73908513321516064165531208767' },
    relativeTolerance: 4e-16,
    toleranceReason: reason,
  },
  {
    id: 'omega',
    title: 'x exp x = 1',
    source: sequence('A030178'),
    origin: 'published-table',
    given: { f: (x) => x * Math.exp(x) - 1, bracket: [-1, 10] },
    expected: { root: '0.56714329040978387299996866221' },
    relativeTolerance: 4e-16,
    toleranceReason: reason,
  },
  {
    id: 'wallis',
    title: 'x³ - 2x - 5 = 0, the equation on which Newton showed his method',
    source: sequence('A007493'),
    origin: 'published-table',
    given: { f: (x) => x ** 3 - 2 * x - 5, bracket: [2, 3] },
    expected: { root: '2.09455148154232659148238654058' },
    relativeTolerance: 4e-16,
    toleranceReason: reason,
  },
  {
    id: 'half-sine',
    title: 'sin x = x / 2',
    source: {
      by: 'G. E. Alefeld, F. A. Potra and Y. Shi',
      title: 'Algorithm 748: enclosing zeros of continuous functions, ACM Trans. Math. Softw. 21, 327–344',
      year: 1995,
      locator: 'Table I, problem 1',
      mark: 'from memory',
    },
    origin: 'published-table',
    given: { f: (x) => Math.sin(x) - x / 2, bracket: [Math.PI / 2, Math.PI] },
    expected: { root: '1.89549426703398094714403573809' },
    relativeTolerance: 4e-16,
    toleranceReason: reason,
  },
  {
    id: 'kepler',
    title: "Kepler's equation for eccentricity 0.1 and mean anomaly 5°, in degrees",
    source: {
      by: 'J. Meeus',
      title: 'Astronomical Algorithms, 2nd ed.',
      year: 1998,
      locator: 'Example 30.a',
      mark: 'from memory',
    },
    origin: 'textbook-example',
    given: { f: (x) => x - (0.1 * 180 * Math.sin((x * Math.PI) / 180)) / Math.PI - 5, bracket: [0, 90] },
    expected: { root: '5.554589' },
  },
];

export function rootOf(reference: NumericsCase<Equation>): Ours {
  const { f, bracket } = reference.given;
  return { root: findRoot(f, ...bracket).root };
}
