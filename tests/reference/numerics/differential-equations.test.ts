import { type Derivative, integrate, integrateStiff } from '@wallflow/numerics';
import { all, create, type FactoryFunctionMap } from 'mathjs';
import { describe, expect, it } from 'vitest';
import { endOf, problems } from './differential-equations.cases.js';
import { independentProblems } from './differential-equations.independent.js';
import { expectCase } from './expect-case.js';
import independent from './independent-code.json';

const tight = { relativeTolerance: 1e-11, absoluteTolerance: 1e-12 };

describe('published problems', () => {
  it.each(problems)('$id: $title', (reference) => expectCase(reference, endOf(reference)));
});

describe('agreement with other solvers', () => {
  it.each(independentProblems)('$id: $title', (reference) => expectCase(reference, reference.ours()));

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
