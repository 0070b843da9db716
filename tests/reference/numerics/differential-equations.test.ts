import { type Derivative, integrate, integrateStiff } from '@wallflow/numerics';
import { all, create, type FactoryFunctionMap } from 'mathjs';
import { describe, expect, it } from 'vitest';
import { problems } from './differential-equations.cases.js';
import independent from './independent-code.json';
import { expectCase } from './numerics-case.js';

const tight = { relativeTolerance: 1e-11, absoluteTolerance: 1e-12 };

describe('published problems', () => {
  it.each(problems)('$id: $title', (reference) => {
    const { derivative, to, initial, stiff, relative, absolute } = reference.given;
    const options = { relativeTolerance: relative, absoluteTolerance: absolute };
    const problem = { derivative, from: 0, to, initial };
    const result = stiff ? integrateStiff({ ...problem, autonomous: true }, options) : integrate(problem, options);
    expect(result.status).toBe('finished');
    const states = Array.from(result.y, (value, i) => [`y${i + 1}`, value] as const);
    expectCase(reference, Object.fromEntries(states.filter(([name]) => name in reference.expected)));
  });
});

describe('agreement with Taylor series in 30-digit arithmetic', () => {
  const predatorAndPrey: Derivative = (_t, y, dydt) => {
    dydt[0] = y[0]! * (1.5 - y[1]!);
    dydt[1] = y[1]! * (y[0]! - 3);
  };
  const pendulum: Derivative = (_t, y, dydt) => {
    dydt[0] = y[1]!;
    dydt[1] = -Math.sin(y[0]!);
  };
  it.each([
    ['Lotka and Volterra', predatorAndPrey, [10, 5], independent['lotka-volterra']],
    ['a pendulum', pendulum, [2, 0], independent.pendulum],
  ] as const)('%s', (_, derivative, initial, expected) => {
    const result = integrate({ derivative, from: 0, to: 10, initial }, tight);
    for (const [t, values] of Object.entries(expected)) {
      // Times inside are dense output.
      const ours = result.at(Number(t));
      values.forEach((value, i) => {
        expect(Math.abs(ours[i]! - Number(value)), `t = ${t}`).toBeLessThan(2e-9);
      });
    }
  });
});

describe('agreement with other solvers', () => {
  it('Robertson at 40 and 40000 with Radau IIA and LSODA', () => {
    for (const [end, values] of Object.entries(independent.robertson)) {
      const result = integrateStiff(
        {
          derivative: (_t, y, dydt) => {
            dydt[0] = -0.04 * y[0]! + 1e4 * y[1]! * y[2]!;
            dydt[2] = 3e7 * y[1]! ** 2;
            dydt[1] = -dydt[0] - dydt[2];
          },
          from: 0,
          to: Number(end),
          initial: [1, 0, 0],
          autonomous: true,
        },
        { relativeTolerance: 1e-9, absoluteTolerance: 1e-14 },
      );
      values.forEach((value, i) => {
        expect(Math.abs(result.y[i]! / Number(value) - 1)).toBeLessThan(1e-7);
      });
    }
  });

  it('an axial burn-off with Radau IIA and LSODA, and its peak above both inlet and adiabatic rise', () => {
    const cells = 40;
    const derivative: Derivative = (t, y, dydt) => {
      for (let i = 0; i < cells; i += 1) {
        const here = y[2 * i]!;
        const before = i > 0 ? y[2 * i - 2]! : 1 + 0.6 * Math.min(1, t / 2);
        const after = i < cells - 1 ? y[2 * i + 2]! : here;
        const rate = 3e4 * y[2 * i + 1]! * Math.exp(-16 / here);
        dydt[2 * i] = 10 * (before - here) + 5 * (before - 2 * here + after) + 0.5 * rate;
        dydt[2 * i + 1] = -rate;
      }
    };
    const problem = { derivative, from: 0, to: 5, initial: new Float64Array(2 * cells).fill(1) };
    const result = integrateStiff(
      { ...problem, structure: { lowerBandwidth: 2, upperBandwidth: 2 } },
      { relativeTolerance: 1e-7, absoluteTolerance: 1e-9, maxStep: 0.05 },
    );
    expect(result.status).toBe('finished');
    for (const [end, { temperature, fuel }] of Object.entries(independent['axial-burn-off'])) {
      const ours = result.at(Number(end));
      for (let i = 0; i < cells; i += 1) {
        expect(Math.abs(ours[2 * i]! - Number(temperature[i]))).toBeLessThan(1e-5);
        expect(Math.abs(ours[2 * i + 1]! - Number(fuel[i]))).toBeLessThan(1e-5);
      }
    }
    expect(Math.max(...result.at(3))).toBeGreaterThan(1.6 + 0.5);
  });

  it('an explicit solver of another library', () => {
    const derivative = (t: number, y: number[]) => [y[1]!, Math.cos(t) - 0.2 * y[1]! - y[0]! ** 3];
    type SolveOde = (f: typeof derivative, span: number[], y0: number[], options: object) => { t: number[]; y: number[][] };
    // The library's types leave this function out.
    const { solveODE: solveOde } = create(all as FactoryFunctionMap) as unknown as { solveODE: SolveOde };
    const other = solveOde(derivative, [0, 6], [1, 0], { method: 'RK45', tol: 1e-10 });
    const ours = integrate(
      {
        derivative: (t, y, dydt) => {
          [dydt[0], dydt[1]] = derivative(t, Array.from(y)) as [number, number];
        },
        from: 0,
        to: 6,
        initial: [1, 0],
      },
      tight,
    );
    expect(other.t.length).toBeGreaterThan(50);
    other.t.forEach((t, i) => {
      const y = ours.at(Math.min(t, 6));
      expect(Math.abs(y[0]! - other.y[i]![0]!)).toBeLessThan(1e-7);
      expect(Math.abs(y[1]! - other.y[i]![1]!)).toBeLessThan(1e-7);
    });
  });
});
