import { type Derivative, integrate, integrateStiff } from '@wallflow/numerics';
import independent from './independent-code.json';
import { computedBy, type IndependentCase, oursAt, statesAt } from './independent-source.js';

const tight = { relativeTolerance: 1e-11, absoluteTolerance: 1e-12 };
const taylor = computedBy('mpmath 1.3.0', 'Taylor series in 30-digit arithmetic');
const implicit = computedBy('SciPy 1.17.1', 'Radau IIA and LSODA, to the digits on which both agree');

const predatorAndPrey: Derivative = (_t, y, dydt) => {
  dydt[0] = y[0]! * (1.5 - y[1]!);
  dydt[1] = y[1]! * (y[0]! - 3);
};

const pendulum: Derivative = (_t, y, dydt) => {
  dydt[0] = y[1]!;
  dydt[1] = -Math.sin(y[0]!);
};

const robertson: Derivative = (_t, y, dydt) => {
  dydt[0] = -0.04 * y[0]! + 1e4 * y[1]! * y[2]!;
  dydt[2] = 3e7 * y[1]! ** 2;
  dydt[1] = -dydt[0] - dydt[2];
};

function smooth(derivative: Derivative, initial: readonly number[], times: readonly string[]) {
  const result = integrate({ derivative, from: 0, to: 10, initial }, tight);
  // Times inside are dense output.
  return oursAt(times, (time) => result.at(time));
}

/** Differential equations that other solvers have integrated as well. */
export const independentProblems: readonly IndependentCase[] = [
  {
    id: 'lotka-volterra',
    title: 'Predator and prey, and a value inside by dense output',
    ...taylor,
    expected: statesAt(independent['lotka-volterra']),
    absoluteTolerance: 2e-9,
    toleranceReason: 'step tolerance of 1e-11 over the whole run',
    ours: () => smooth(predatorAndPrey, [10, 5], Object.keys(independent['lotka-volterra'])),
  },
  {
    id: 'pendulum',
    title: 'A pendulum that swings widely, and a value inside by dense output',
    ...taylor,
    expected: statesAt(independent.pendulum),
    absoluteTolerance: 2e-9,
    toleranceReason: 'step tolerance of 1e-11 over the whole run',
    ours: () => smooth(pendulum, [2, 0], Object.keys(independent.pendulum)),
  },
  {
    id: 'robertson-moderate',
    title: 'Three reactions with rates from 0.04 to 3e7, at moderate times',
    ...implicit,
    expected: statesAt(independent.robertson),
    relativeTolerance: 1e-7,
    toleranceReason: 'step tolerance of 1e-9 over the whole run',
    ours: () =>
      oursAt(Object.keys(independent.robertson), (to) => {
        const problem = { derivative: robertson, from: 0, to, initial: [1, 0, 0], autonomous: true };
        return integrateStiff(problem, { relativeTolerance: 1e-9, absoluteTolerance: 1e-14 }).y;
      }),
  },
];
