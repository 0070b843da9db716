import { type Derivative, integrateStiff, NumericsError } from '@wallflow/numerics';
import { describe, expect, it } from 'vitest';
import { expectAllClose } from './expect-close.js';

const tight = { relativeTolerance: 1e-8, absoluteTolerance: 1e-10 };

/** y' = λ (y - cos t) - sin t, whose solution from 1 is cos t whatever λ is. */
const towardsCosine =
  (lambda: number): Derivative =>
  (t, y, dydt) => {
    dydt[0] = lambda * (y[0]! - Math.cos(t)) - Math.sin(t);
  };

/** Heat conduction in a rod of unit length with cold ends, on inner points. */
const cells = 40;
const spacing = 1 / (cells + 1);
const conduction: Derivative = (_t, y, dydt) => {
  for (let i = 0; i < cells; i += 1) {
    const left = i > 0 ? y[i - 1]! : 0;
    const right = i < cells - 1 ? y[i + 1]! : 0;
    dydt[i] = (left - 2 * y[i]! + right) / spacing ** 2;
  }
};
const sineProfile = Array.from({ length: cells }, (_, i) => Math.sin(Math.PI * (i + 1) * spacing));
/** The discrete operator has the sine as an exact eigenvector with this eigenvalue. */
const decayRate = (4 / spacing ** 2) * Math.sin((Math.PI * spacing) / 2) ** 2;

describe('integrateStiff', () => {
  it.each([-1, -1e3, -1e6, -1e9])('stays on the slow solution with a stiff term of %s', (lambda) => {
    const result = integrateStiff({ derivative: towardsCosine(lambda), from: 0, to: 10, initial: [1] }, tight);
    expect(result.status).toBe('finished');
    expect(Math.abs(result.y[0]! - Math.cos(10))).toBeLessThan(1e-7);
    expect(result.statistics.acceptedSteps).toBeLessThan(400);
  });

  it.each(['dense', 'tridiagonal', { lowerBandwidth: 1, upperBandwidth: 1 }, { lowerBandwidth: 3, upperBandwidth: 2 }] as const)(
    'conducts heat with the Jacobian stored as %j',
    (structure) => {
      const result = integrateStiff({ derivative: conduction, from: 0, to: 0.2, initial: sineProfile, structure }, tight);
      expect(result.status).toBe('finished');
      for (const t of [0.05, 0.1234, 0.2]) {
        const factor = Math.exp(-decayRate * t);
        expectAllClose(
          result.at(t),
          sineProfile.map((value) => factor * value),
          1e-7,
        );
      }
    },
  );

  it('needs as many evaluations for the Jacobian as the band is wide', () => {
    const count = (structure: 'dense' | 'tridiagonal') =>
      integrateStiff({ derivative: conduction, from: 0, to: 0.2, initial: sineProfile, structure, autonomous: true }, tight).statistics;
    const banded = count('tridiagonal');
    const dense = count('dense');
    expect(dense.acceptedSteps).toBe(banded.acceptedSteps);
    expect(dense.evaluations - banded.evaluations).toBe((cells - 3) * banded.jacobians);
  });

  it('uses a given Jacobian and time derivative', () => {
    let calls = 0;
    const result = integrateStiff(
      {
        derivative: towardsCosine(-1000),
        from: 0,
        to: 1,
        initial: [1],
        jacobian: (_t, _y, jacobian) => {
          calls += 1;
          jacobian.set(0, 0, -1000);
        },
        timeDerivative: (t, _y, dfdt) => {
          dfdt[0] = -1000 * Math.sin(t) - Math.cos(t);
        },
      },
      tight,
    );
    expect(result.y[0]).toBeCloseTo(Math.cos(1), 8);
    expect(calls).toBe(result.statistics.jacobians);
    expect(result.statistics.jacobians).toBe(result.statistics.acceptedSteps);
  });

  it('solves an algebraic equation along with a differential one', () => {
    // y' = -z, 0 = z - y², so y' = -y²: y = 1 / (1 + t).
    const derivative: Derivative = (_t, y, dydt) => {
      dydt[0] = -y[1]!;
      dydt[1] = y[1]! - y[0]! ** 2;
    };
    const result = integrateStiff({ derivative, from: 0, to: 4, initial: [1, 1], mass: [1, 0] }, tight);
    expect(result.y[0]).toBeCloseTo(1 / 5, 7);
    expect(result.y[1]).toBeCloseTo(1 / 25, 7);
  });

  it('stops at an event', () => {
    const result = integrateStiff(
      { derivative: towardsCosine(-1e5), from: 0, to: 10, initial: [1] },
      { ...tight, maxStep: 0.05, stopWhen: (_t, y) => y[0]! },
    );
    expect(result.status).toBe('stopped_by_event');
    expect(result.t).toBeCloseTo(Math.PI / 2, 7);
  });

  it('runs backwards', () => {
    const derivative: Derivative = (_t, y, dydt) => {
      dydt[0] = y[0]!;
    };
    const result = integrateStiff({ derivative, from: 1, to: 0, initial: [Math.E] }, tight);
    expect(result.y[0]).toBeCloseTo(1, 7);
  });

  it('says when the state leaves the domain of the derivative', () => {
    const derivative: Derivative = (t, _y, dydt) => {
      dydt[0] = Math.sqrt(1 - t);
    };
    const result = integrateStiff({ derivative, from: 0, to: 2, initial: [0] });
    expect(result.status).toBe('not_finite');
    expect(result.t).toBeLessThanOrEqual(1);
  });

  it('says when the Jacobian is not finite', () => {
    const problem = { derivative: towardsCosine(-1), from: 0, to: 1, initial: [1] };
    const result = integrateStiff({ ...problem, jacobian: (_t, _y, jacobian) => jacobian.set(0, 0, Number.NaN) });
    expect(result).toMatchObject({ status: 'not_finite', t: 0 });
  });

  it('ends with a step too small where the matrix stays singular', () => {
    const derivative: Derivative = (_t, y, dydt) => {
      dydt[0] = y[0]!;
      dydt[1] = 0;
    };
    const result = integrateStiff({ derivative, from: 0, to: 1, initial: [1, 1], mass: [1, 0] });
    expect(result.status).toBe('step_too_small');
    expect(result.statistics.acceptedSteps).toBe(0);
  });

  it('never evaluates beyond either end', () => {
    const seen: number[] = [];
    const derivative: Derivative = (t, y, dydt) => {
      seen.push(t);
      dydt[0] = -y[0]!;
    };
    integrateStiff({ derivative, from: 2, to: 3, initial: [1] });
    integrateStiff({ derivative, from: 3, to: 2, initial: [1] });
    expect(Math.min(...seen)).toBeGreaterThanOrEqual(2);
    expect(Math.max(...seen)).toBeLessThanOrEqual(3);
  });

  it('takes time derivatives within a span that is short beside the time itself', () => {
    const seen: number[] = [];
    const [from, to] = [2, 2 + 1e-7];
    const result = integrateStiff({
      derivative: (t, y, dydt) => {
        seen.push(t);
        dydt[0] = 1e8 * Math.sin(1e8 * (t - from)) - 1e3 * y[0]!;
      },
      from,
      to,
      initial: [0],
    });
    expect(result.status).toBe('finished');
    expect(result.y[0]).toBeCloseTo(1 - Math.cos(10), 3);
    expect(Math.min(...seen)).toBeGreaterThanOrEqual(from);
    expect(Math.max(...seen)).toBeLessThanOrEqual(to);
  });

  it('keeps a state that cannot be positive in its domain when it takes differences', () => {
    // With u = -y, u' = √u, so √u = √u0 + t / 2. The absolute tolerance is larger than the state.
    const derivative: Derivative = (_t, y, dydt) => {
      dydt[0] = -Math.sqrt(-y[0]!);
    };
    const result = integrateStiff({ derivative, from: 0, to: 2, initial: [-1e-11] }, tight);
    expect(result.status).toBe('finished');
    expect(result.y[0]).toBeCloseTo(-((Math.sqrt(1e-11) + 1) ** 2), 4);
  });

  it('rarely has to take back a step, even where the solution jumps', () => {
    const vanDerPol: Derivative = (_t, y, dydt) => {
      dydt[0] = y[1]!;
      dydt[1] = ((1 - y[0]! ** 2) * y[1]! - y[0]!) * 1e6;
    };
    const problem = { derivative: vanDerPol, from: 0, to: 2, initial: [2, 0], autonomous: true };
    const { statistics } = integrateStiff(problem, { relativeTolerance: 1e-4, absoluteTolerance: 1e-4 });
    expect(statistics.rejectedSteps).toBeLessThan(0.1 * statistics.acceptedSteps);
  });

  it('refuses options without meaning', () => {
    const problem = { derivative: towardsCosine(-1), from: 0, to: 1, initial: [1] };
    expect(() => integrateStiff({ ...problem, initial: [] })).toThrow(NumericsError);
    expect(() => integrateStiff({ ...problem, mass: [1, 1] })).toThrow(expect.objectContaining({ code: 'unequal_lengths' }));
    expect(() => integrateStiff({ ...problem, structure: { lowerBandwidth: -1, upperBandwidth: 0 } })).toThrow(NumericsError);
    expect(() =>
      integrateStiff({ ...problem, initial: [1, 2, 3], structure: 'tridiagonal', jacobian: (_t, _y, j) => j.set(0, 2, 1) }),
    ).toThrow(NumericsError);
  });
});
