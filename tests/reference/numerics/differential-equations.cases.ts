import { type Derivative, integrate, integrateStiff } from '@wallflow/numerics';
import type { NumericsCase, Ours } from './numerics-case.js';

export interface Problem {
  readonly derivative: Derivative;
  readonly to: number;
  readonly initial: readonly number[];
  readonly stiff: boolean;
  readonly relative: number;
  readonly absolute: number;
}

/** Expected values are named y1, y2, …; only some states may be given. */
export type ProblemCase = NumericsCase<Problem>;

const testSet = (locator: string) => ({
  by: 'F. Mazzia and C. Magherini',
  title: 'Test Set for Initial Value Problem Solvers, release 2.4, University of Bari',
  year: 2008,
  locator,
  mark: 'read' as const,
});

const moon = 0.012277471;

export const problems: readonly ProblemCase[] = [
  {
    id: 'arenstorf-orbit',
    title: 'Closed orbit in the restricted three-body problem: back at the start after one period',
    source: {
      by: 'E. Hairer, S. P. Nørsett and G. Wanner',
      title: 'Solving Ordinary Differential Equations I, 2nd ed.',
      year: 1993,
      locator: 'Equations II.0.1 and II.0.2',
      mark: 'read',
    },
    origin: 'textbook-example',
    given: {
      derivative: (_t, y, dydt) => {
        const earth = 1 - moon;
        const d1 = ((y[0]! + moon) ** 2 + y[1]! ** 2) ** 1.5;
        const d2 = ((y[0]! - earth) ** 2 + y[1]! ** 2) ** 1.5;
        dydt[0] = y[2]!;
        dydt[1] = y[3]!;
        dydt[2] = y[0]! + 2 * y[3]! - (earth * (y[0]! + moon)) / d1 - (moon * (y[0]! - earth)) / d2;
        dydt[3] = y[1]! - 2 * y[2]! - (earth * y[1]!) / d1 - (moon * y[1]!) / d2;
      },
      to: Number('17.0652165601579625588917206249'),
      initial: [0.994, 0, 0, Number('-2.00158510637908252240537862224')],
      stiff: false,
      relative: 1e-13,
      absolute: 1e-13,
    },
    expected: { y1: '0.994', y4: '-2.00158510637908252240537862224' },
    relativeTolerance: 1e-6,
    toleranceReason: 'the orbit passes the moon closely and magnifies errors by some 1e6',
  },
  {
    id: 'van-der-pol-1000',
    title: "Van der Pol's oscillator, μ = 1000, after 2000 units of time",
    source: testSet('Problem VDPOLM'),
    origin: 'published-table',
    given: {
      derivative: (_t, y, dydt) => {
        dydt[0] = y[1]!;
        dydt[1] = 1000 * (1 - y[0]! ** 2) * y[1]! - y[0]!;
      },
      to: 2000,
      initial: [2, 0],
      stiff: true,
      relative: 1e-9,
      absolute: 1e-12,
    },
    expected: { y1: '0.1706167732170469e1', y2: '-0.8928097010248125e-3' },
    relativeTolerance: 1e-7,
    toleranceReason: 'a jump of the oscillator magnifies errors; tolerance of the steps 1e-9',
  },
  {
    id: 'robertson',
    title: 'Three reactions with rates from 0.04 to 3e7, after 1e11 units of time',
    source: testSet('Problem ROBER'),
    origin: 'published-table',
    given: {
      derivative: (_t, y, dydt) => {
        const first = 0.04 * y[0]!;
        const second = 1e4 * y[1]! * y[2]!;
        const third = 3e7 * y[1]! ** 2;
        dydt[0] = second - first;
        dydt[1] = first - second - third;
        dydt[2] = third;
      },
      to: 1e11,
      initial: [1, 0, 0],
      stiff: true,
      relative: 1e-9,
      absolute: 1e-15,
    },
    expected: { y1: '0.2083340149701255e-7', y2: '0.8333360770334713e-13', y3: '0.9999999791665050' },
    relativeTolerance: 1e-7,
    toleranceReason: 'eleven decades of time at a step tolerance of 1e-9',
  },
  {
    id: 'hires',
    title: 'Chemical kinetics of eight species, after 321.8122 units of time',
    source: testSet('Problem HIRES'),
    origin: 'published-table',
    given: {
      derivative: (_t, y, dydt) => {
        const [a, b, c, d, e, f, g, h] = y as unknown as [number, number, number, number, number, number, number, number];
        dydt[0] = -1.71 * a + 0.43 * b + 8.32 * c + 0.0007;
        dydt[1] = 1.71 * a - 8.75 * b;
        dydt[2] = -10.03 * c + 0.43 * d + 0.035 * e;
        dydt[3] = 8.32 * b + 1.71 * c - 1.12 * d;
        dydt[4] = -1.745 * e + 0.43 * f + 0.43 * g;
        dydt[5] = -280 * f * h + 0.69 * d + 1.71 * e - 0.43 * f + 0.69 * g;
        dydt[6] = 280 * f * h - 1.81 * g;
        dydt[7] = -280 * f * h + 1.81 * g;
      },
      to: 321.8122,
      initial: [1, 0, 0, 0, 0, 0, 0, 0.0057],
      stiff: true,
      relative: 1e-9,
      absolute: 1e-14,
    },
    expected: {
      y1: '0.7371312573325668e-3',
      y2: '0.1442485726316185e-3',
      y3: '0.5888729740967575e-4',
      y4: '0.1175651343283149e-2',
      y5: '0.2386356198831331e-2',
      y6: '0.6238968252742796e-2',
      y7: '0.2849998395185769e-2',
      y8: '0.2850001604814231e-2',
    },
    relativeTolerance: 1e-7,
    toleranceReason: 'step tolerance of 1e-9 over the whole run',
  },
];

/** The states that the case expects, at the end. */
export function endOf(reference: ProblemCase): Ours {
  const { derivative, to, initial, stiff, relative, absolute } = reference.given;
  const options = { relativeTolerance: relative, absoluteTolerance: absolute };
  const problem = { derivative, from: 0, to, initial };
  const result = stiff ? integrateStiff({ ...problem, autonomous: true }, options) : integrate(problem, options);
  if (result.status !== 'finished') throw new Error(result.status);
  const states = Array.from(result.y, (value, i) => [`y${i + 1}`, value] as const);
  return Object.fromEntries(states.filter(([name]) => name in reference.expected));
}
