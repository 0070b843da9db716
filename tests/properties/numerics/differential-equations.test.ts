import { type Derivative, type IntegrationResult, integrate, integrateStiff } from '@wallflow/numerics';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { finite } from './arbitraries.js';

const methods = [
  ['integrate', integrate],
  ['integrateStiff', integrateStiff],
] as const;

/** Error of a run with steps of one length, as a tolerance this wide never asks for shorter ones. */
function fixedSteps(method: typeof integrate, derivative: Derivative, to: number, initial: number[], steps: number): IntegrationResult {
  const h = to / steps;
  const options = { initialStep: h, maxStep: h * (1 + 1e-9), relativeTolerance: 1e9, absoluteTolerance: 1e9 };
  const result = method({ derivative, from: 0, to, initial }, options);
  expect(result.statistics.acceptedSteps).toBe(steps);
  return result;
}

/** Least slope of log error over log step; the last refinement decides, rounding permitting. */
function observedOrder(errors: readonly number[]): number {
  return Math.log2(errors.at(-2)! / errors.at(-1)!);
}

describe('order of accuracy', () => {
  // y' = -2 t y² from 1 is 1 / (1 + t²): not linear, depends on time.
  const rational: Derivative = (t, y, dydt) => {
    dydt[0] = -2 * t * y[0]! ** 2;
  };
  const exact = (t: number) => 1 / (1 + t * t);

  it.each([
    ['integrate', integrate, 5, 4],
    ['integrateStiff', integrateStiff, 4, 3],
  ] as const)('%s has order %3$s at the steps and %4$s between them', (_, method, order, denseOrder) => {
    const runs = [10, 20, 40].map((steps) => fixedSteps(method, rational, 2, [1], steps));
    const atEnd = runs.map((run) => Math.abs(run.y[0]! - exact(2)));
    expect(observedOrder(atEnd)).toBeGreaterThan(order - 0.3);
    expect(observedOrder(atEnd)).toBeLessThan(order + 1.2);
    const between = runs.map((run) =>
      Math.max(...Array.from({ length: 199 }, (_unused, i) => Math.abs(run.at((i + 1) / 100)[0]! - exact((i + 1) / 100)))),
    );
    expect(observedOrder(between)).toBeGreaterThan(denseOrder - 0.3);
  });

  it('integrateStiff keeps order 3 or more on the Prothero–Robinson problem, however stiff', () => {
    // A. Prothero and A. Robinson, Math. Comp. 28 (1974) 145–162: y' = λ (y - g) + g', with g = sin(t + 0.3).
    for (const lambda of [-1, -1e2, -1e4, -1e6]) {
      const derivative: Derivative = (t, y, dydt) => {
        dydt[0] = lambda * (y[0]! - Math.sin(t + 0.3)) + Math.cos(t + 0.3);
      };
      const errors = [10, 20, 40].map((steps) =>
        Math.abs(fixedSteps(integrateStiff, derivative, 2, [Math.sin(0.3)], steps).y[0]! - Math.sin(2.3)),
      );
      expect(errors[0]).toBeLessThan(1e-5);
      expect(observedOrder(errors.slice(0, 2)), `λ = ${lambda}`).toBeGreaterThan(2.7);
    }
  });

  it('integrateStiff keeps order 2 with a Jacobian that is wrong', () => {
    // Given as zero where it is -2 t y times 2.
    const wrong: typeof integrate = (problem, options) =>
      integrateStiff({ ...problem, jacobian: () => {}, timeDerivative: (_t, _y, dfdt) => dfdt.fill(0) }, options);
    const errors = [20, 40, 80].map((steps) => Math.abs(fixedSteps(wrong, rational, 2, [1], steps).y[0]! - exact(2)));
    expect(observedOrder(errors)).toBeGreaterThan(1.7);
  });

  it('integrateStiff damps an infinitely stiff transient in one step', () => {
    const derivative: Derivative = (_t, y, dydt) => {
      dydt[0] = -1e12 * y[0]!;
    };
    expect(Math.abs(fixedSteps(integrateStiff, derivative, 1, [1], 1).y[0]!)).toBeLessThan(1e-9);
  });
});

describe.each(methods)('%s', (name, method) => {
  const tolerance = name === 'integrate' ? 1e-9 : 1e-8;
  const options = { relativeTolerance: tolerance, absoluteTolerance: tolerance * 1e-2 };

  /** Damped oscillator: y'' = -w² y - 2 d y'. */
  const oscillator =
    (w: number, d: number): Derivative =>
    (_t, y, dydt) => {
      dydt[0] = y[1]!;
      dydt[1] = -w * w * y[0]! - 2 * d * y[1]!;
    };
  const problems = fc.record({ w: finite(0.5, 4), d: finite(0, 0.4), start: finite(-2, 2), speed: finite(-2, 2), to: finite(0.5, 6) });

  it('agrees with the closed form of a damped oscillator', () => {
    fc.assert(
      fc.property(problems, ({ w, d, start, speed, to }) => {
        const result = method({ derivative: oscillator(w, d), from: 0, to, initial: [start, speed] }, options);
        const damped = Math.sqrt(w * w - d * d);
        const expected = Math.exp(-d * to) * (start * Math.cos(damped * to) + ((speed + d * start) / damped) * Math.sin(damped * to));
        expect(result.status).toBe('finished');
        expect(Math.abs(result.y[0]! - expected)).toBeLessThan(2000 * tolerance);
      }),
      { numRuns: 40 },
    );
  });

  it('comes back to the start when run backwards', () => {
    fc.assert(
      fc.property(problems, ({ w, d, start, speed, to }) => {
        const there = method({ derivative: oscillator(w, d), from: 0, to, initial: [start, speed] }, options);
        const back = method({ derivative: oscillator(w, d), from: to, to: 0, initial: there.y }, options);
        expect(Math.abs(back.y[0]! - start)).toBeLessThan(2e4 * tolerance);
        expect(Math.abs(back.y[1]! - speed)).toBeLessThan(2e4 * tolerance);
      }),
      { numRuns: 40 },
    );
  });

  it('is the same whatever the origin of time', () => {
    fc.assert(
      fc.property(problems, finite(-10, 10), ({ w, d, start, speed, to }, shift) => {
        const initial = [start, speed];
        const one = method({ derivative: oscillator(w, d), from: 0, to, initial }, options);
        const other = method({ derivative: oscillator(w, d), from: shift, to: shift + to, initial }, options);
        expect(Math.abs(one.y[0]! - other.y[0]!)).toBeLessThan(2000 * tolerance);
      }),
      { numRuns: 40 },
    );
  });

  it('dense output is continuous, meets every step and ends in the result', () => {
    fc.assert(
      fc.property(problems, ({ w, d, start, speed, to }) => {
        const result = method({ derivative: oscillator(w, d), from: 0, to, initial: [start, speed] }, options);
        expect(Array.from(result.at(0))).toEqual([start, speed]);
        for (const i of [0, 1]) expect(Math.abs(result.at(to)[i]! - result.y[i]!)).toBeLessThan(1e-14);
        for (const t of result.times.slice(1, -1)) {
          const before = result.at(t * (1 - 1e-14));
          const after = result.at(t * (1 + 1e-14));
          expect(Math.abs(before[0]! - after[0]!)).toBeLessThan(1e-11);
          expect(Math.abs(before[1]! - after[1]!)).toBeLessThan(1e-11);
        }
      }),
      { numRuns: 20 },
    );
  });

  it('a tighter tolerance is never worse by much and costs no less', () => {
    fc.assert(
      fc.property(problems, ({ w, d, start, speed, to }) => {
        fc.pre(Math.abs(start) + Math.abs(speed) > 0.1);
        const run = (relativeTolerance: number) =>
          method(
            { derivative: oscillator(w, d), from: 0, to, initial: [start, speed] },
            { relativeTolerance, absoluteTolerance: relativeTolerance },
          );
        const exact = integrate(
          { derivative: oscillator(w, d), from: 0, to, initial: [start, speed] },
          { relativeTolerance: 1e-12, absoluteTolerance: 1e-13 },
        );
        const [coarse, fine] = [run(1e-4), run(1e-7)];
        const error = (result: IntegrationResult) => Math.hypot(result.y[0]! - exact.y[0]!, result.y[1]! - exact.y[1]!);
        expect(error(fine)).toBeLessThan(Math.max(error(coarse), 1e-4));
        expect(fine.statistics.acceptedSteps).toBeGreaterThanOrEqual(coarse.statistics.acceptedSteps);
      }),
      { numRuns: 40 },
    );
  });

  it('keeps linear invariants to rounding: what leaves one store enters the other', () => {
    fc.assert(
      fc.property(finite(0.1, 50), finite(0.1, 50), finite(0.1, 10), (there, back, amount) => {
        const exchange: Derivative = (_t, y, dydt) => {
          dydt[0] = back * y[1]! - there * y[0]!;
          dydt[1] = there * y[0]! - back * y[1]!;
        };
        const result = method({ derivative: exchange, from: 0, to: 2, initial: [amount, 0] }, options);
        expect(Math.abs(result.y[0]! + result.y[1]! - amount)).toBeLessThan(1e-7 * amount);
        expect(result.y[0]! / amount).toBeCloseTo((back + there * Math.exp(-2 * (there + back))) / (there + back), 6);
      }),
      { numRuns: 40 },
    );
  });

  it('always says how it ended and never gives a state that is not finite', () => {
    // Right-hand sides that blow up, leave their domain or jump.
    const awkward: Derivative[] = [
      (_t, y, dydt) => dydt.fill(y[0]! ** 2),
      (t, y, dydt) => dydt.fill(Math.sqrt(0.5 - t) * y[0]!),
      (_t, y, dydt) => dydt.fill(-1 / y[0]!),
      (t, _y, dydt) => dydt.fill(t < 0.3 ? 1 : -1e6),
      (t, y, dydt) => dydt.fill(Math.log(y[0]! - t)),
    ];
    fc.assert(
      fc.property(fc.constantFrom(...awkward), finite(-3, 3), finite(-2, 2), (derivative, start, to) => {
        const result = method({ derivative, from: 0, to, initial: [start] }, { maxSteps: 3000 });
        expect(['finished', 'step_too_small', 'max_steps', 'not_finite']).toContain(result.status);
        expect(Number.isFinite(result.t)).toBe(true);
        expect(Number.isFinite(result.y[0])).toBe(true);
        if (result.status === 'finished') expect(result.t).toBe(to);
      }),
      { numRuns: 200 },
    );
  });
});

describe('integrate and integrateStiff', () => {
  it('agree on problems that are not stiff', () => {
    fc.assert(
      fc.property(finite(0.5, 3), finite(0.2, 2), (a, b) => {
        const derivative: Derivative = (t, y, dydt) => {
          dydt[0] = y[0]! * (a - y[1]!);
          dydt[1] = y[1]! * (y[0]! - b) + 0.1 * Math.sin(t);
        };
        const problem = { derivative, from: 0, to: 5, initial: [1, 0.5] };
        const one = integrate(problem, { relativeTolerance: 1e-9, absoluteTolerance: 1e-10 });
        const other = integrateStiff(problem, { relativeTolerance: 1e-8, absoluteTolerance: 1e-9 });
        expect(Math.abs(one.y[0]! - other.y[0]!)).toBeLessThan(1e-5);
        expect(Math.abs(one.y[1]! - other.y[1]!)).toBeLessThan(1e-5);
      }),
      { numRuns: 30 },
    );
  });
});
