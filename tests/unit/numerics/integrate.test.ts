import { type Derivative, integrate, NumericsError } from '@wallflow/numerics';
import { describe, expect, it } from 'vitest';
import { expectAllClose } from './expect-close.js';

const decay: Derivative = (_t, y, dydt) => {
  dydt[0] = -y[0]!;
};
const oscillator: Derivative = (_t, y, dydt) => {
  dydt[0] = y[1]!;
  dydt[1] = -y[0]!;
};
const tight = { relativeTolerance: 1e-10, absoluteTolerance: 1e-12 };

describe('integrate', () => {
  it('follows exponential decay', () => {
    const result = integrate({ derivative: decay, from: 0, to: 3, initial: [2] }, tight);
    expect(result.status).toBe('finished');
    expect(result.t).toBe(3);
    expect(result.y[0]).toBeCloseTo(2 * Math.exp(-3), 9);
  });

  it('integrates a polynomial of fourth degree exactly', () => {
    const quartic: Derivative = (t, _y, dydt) => {
      dydt[0] = 5 * t ** 4 - 3 * t ** 2 + 1;
    };
    const result = integrate({ derivative: quartic, from: -1, to: 2, initial: [0] }, { maxStep: 1 });
    expect(result.y[0]).toBeCloseTo(33 - 9 + 3, 12);
  });

  it('gives the solution between the steps', () => {
    const result = integrate({ derivative: oscillator, from: 0, to: 10, initial: [0, 1] }, tight);
    const out = new Float64Array(2);
    for (let t = 0; t <= 10; t += 0.037) {
      expect(result.at(t, out)).toBe(out);
      expect(Math.abs(out[0]! - Math.sin(t))).toBeLessThan(1e-8);
      expect(Math.abs(out[1]! - Math.cos(t))).toBeLessThan(1e-8);
    }
    expectAllClose(result.at(10), result.y, 1e-14);
    expect(result.times[0]).toBe(0);
    expect(result.times.at(-1)).toBe(10);
    expect(result.times).toHaveLength(result.statistics.acceptedSteps + 1);
  });

  it('runs backwards', () => {
    const result = integrate({ derivative: decay, from: 3, to: 0, initial: [2 * Math.exp(-3)] }, tight);
    expect(result.y[0]).toBeCloseTo(2, 8);
    expect(result.at(1)[0]).toBeCloseTo(2 * Math.exp(-1), 8);
  });

  it('does nothing over no time', () => {
    const result = integrate({ derivative: decay, from: 1, to: 1, initial: [2] });
    expect(result).toMatchObject({ status: 'finished', t: 1 });
    expect(result.at(1)[0]).toBe(2);
  });

  it('refuses times outside of the solution', () => {
    const result = integrate({ derivative: decay, from: 0, to: 1, initial: [1] });
    for (const t of [-0.1, 1.1, Number.NaN]) {
      expect(() => result.at(t)).toThrow(expect.objectContaining({ code: 'outside_solution' }));
    }
  });

  describe('stop function', () => {
    const stopWhen = (_t: number, y: Float64Array) => y[0]!;

    it.each([
      ['any', Math.PI / 2],
      ['falling', Math.PI / 2],
      ['rising', 1.5 * Math.PI],
    ] as const)('ends at a crossing in direction %s', (stopDirection, expected) => {
      const problem = { derivative: oscillator, from: 0, to: 10, initial: [1, 0] };
      const result = integrate(problem, { ...tight, stopWhen, stopDirection });
      expect(result.status).toBe('stopped_by_event');
      expect(result.t).toBeCloseTo(expected, 8);
      expect(Math.abs(result.y[0]!)).toBeLessThan(1e-12);
      expectAllClose(result.at(result.t), result.y, 1e-14);
      expect(result.times.at(-1)).toBe(result.t);
      expect(() => result.at(result.t + 1e-9)).toThrow(NumericsError);
    });

    it('works backwards and without dense output', () => {
      const problem = { derivative: oscillator, from: 0, to: -10, initial: [1, 0] };
      const result = integrate(problem, { ...tight, stopWhen, dense: false });
      expect(result.status).toBe('stopped_by_event');
      expect(result.t).toBeCloseTo(-Math.PI / 2, 8);
    });

    it('does not stop at a zero that it starts from', () => {
      const problem = { derivative: oscillator, from: 0, to: 10, initial: [0, 1] };
      expect(integrate(problem, { ...tight, stopWhen }).t).toBeCloseTo(Math.PI, 8);
    });

    it('sees a zero that falls on the end of a step', () => {
      const options = { initialStep: 0.25, maxStep: 0.25, stopWhen: (t: number) => t - 0.5 };
      const derivative: Derivative = (_t, _y, dydt) => {
        dydt[0] = 1;
      };
      const result = integrate({ derivative, from: 0, to: 2, initial: [1] }, options);
      expect(Array.from(result.times)).toEqual([0, 0.25, 0.5]);
      expect(result).toMatchObject({ status: 'stopped_by_event', t: 0.5 });
    });

    it('finishes when the function never crosses', () => {
      const result = integrate({ derivative: decay, from: 0, to: 1, initial: [1] }, { stopWhen });
      expect(result.status).toBe('finished');
    });

    it.each([0, 0.5])('says when the function is not finite from t = %s on', (since) => {
      const result = integrate({ derivative: decay, from: 0, to: 1, initial: [1] }, { stopWhen: (t) => (t >= since ? Number.NaN : 1) });
      expect(result.status).toBe('not_finite');
    });
  });

  describe('ways to end early', () => {
    it('step too small at a singularity', () => {
      // y' = y², y(0) = 1 is 1 / (1 - t): infinite at 1.
      const blowUp: Derivative = (_t, y, dydt) => {
        dydt[0] = y[0]! ** 2;
      };
      const result = integrate({ derivative: blowUp, from: 0, to: 2, initial: [1] });
      expect(['step_too_small', 'not_finite']).toContain(result.status);
      expect(result.t).toBeCloseTo(1, 5);
      expect(Number.isFinite(result.y[0])).toBe(true);
    });

    it('not finite where the derivative leaves its domain', () => {
      const root: Derivative = (t, _y, dydt) => {
        dydt[0] = Math.sqrt(1 - t);
      };
      const result = integrate({ derivative: root, from: 0, to: 2, initial: [0] });
      expect(result.status).toBe('not_finite');
      expect(result.t).toBeLessThanOrEqual(1);
      expect(result.t).toBeGreaterThan(0.99);
      expect(result.y[0]).toBeCloseTo(2 / 3, 3);
    });

    it.each([
      ['state', { derivative: decay, from: 0, to: 1, initial: [Number.NaN] }],
      ['end', { derivative: decay, from: 0, to: Infinity, initial: [1] }],
      ['slope', { derivative: decay, from: 0, to: 1, initial: [1, 2] }],
    ])('not finite %s at the start', (what, problem) => {
      const derivative: Derivative = what === 'slope' ? (_t, _y, d) => d.fill(Number.NaN) : problem.derivative;
      const result = integrate({ ...problem, derivative });
      expect(result.status).toBe('not_finite');
      expect(result.statistics.acceptedSteps).toBe(0);
    });

    it('max steps on a stiff problem', () => {
      const stiff: Derivative = (t, y, dydt) => {
        dydt[0] = -1e6 * (y[0]! - Math.cos(t));
      };
      const result = integrate({ derivative: stiff, from: 0, to: 10, initial: [1] }, { maxSteps: 500 });
      expect(result.status).toBe('max_steps');
      expect(result.statistics.acceptedSteps + result.statistics.rejectedSteps).toBe(500);
      expectAllClose(result.at(result.t), result.y, 1e-14);
    });
  });

  it('holds the longest step', () => {
    const result = integrate({ derivative: decay, from: 0, to: 1, initial: [1] }, { maxStep: 0.01 });
    for (let i = 1; i < result.times.length; i += 1) {
      expect(result.times[i]! - result.times[i - 1]!).toBeLessThanOrEqual(0.01 * (1 + 1e-12));
    }
  });

  it('takes the same steps for one system and for ten copies of it', () => {
    const copies = (count: number) =>
      integrate(
        {
          derivative: (_t, y, dydt) => {
            for (let i = 0; i < y.length; i += 2) {
              dydt[i] = y[i + 1]!;
              dydt[i + 1] = -Math.sin(y[i]!);
            }
          },
          from: 0,
          to: 10,
          initial: Array.from({ length: 2 * count }, (_, i) => (i % 2 === 0 ? 2 : 0)),
        },
        tight,
      );
    expectAllClose(copies(10).times, copies(1).times, 1e-6);
  });

  it('feels its way to the end of a domain: no longer step right after one that was taken back', () => {
    const derivative: Derivative = (t, _y, dydt) => {
      dydt[0] = t > 1 ? Number.NaN : 1;
    };
    const { status, t, statistics } = integrate({ derivative, from: 0, to: 2, initial: [1] }, { initialStep: 0.3 });
    expect(status).toBe('not_finite');
    expect(t).toBeCloseTo(1, 12);
    // As many attempts fail as succeed; with longer steps in between it would be two for one.
    expect(statistics.rejectedSteps).toBeLessThan(1.5 * statistics.acceptedSteps);
  });

  it('takes a last step that would leave next to nothing in one with the rest', () => {
    const still: Derivative = (_t, _y, dydt) => {
      dydt[0] = 0;
    };
    const result = integrate({ derivative: still, from: 0, to: 1, initial: [1] }, { initialStep: 0.995 });
    expect(result.statistics.acceptedSteps).toBe(1);
  });

  it('never evaluates beyond the end', () => {
    const seen: number[] = [];
    integrate({
      derivative: (t, _y, dydt) => {
        seen.push(t);
        dydt[0] = 1e-9;
      },
      from: 0,
      to: 1e-8,
      initial: [1],
    });
    expect(Math.max(...seen)).toBeLessThanOrEqual(1e-8);
  });

  it('takes a tolerance for each state', () => {
    const fast: Derivative = (t, _y, dydt) => {
      dydt[0] = 1000 * Math.cos(1000 * t);
      dydt[1] = 1;
    };
    const problem = { derivative: fast, from: 0, to: 1, initial: [0, 0] };
    const strict = integrate(problem, { absoluteTolerance: [1e-8, 1e-8] });
    const lax = integrate(problem, { absoluteTolerance: [1e6, 1e-8] });
    expect(lax.statistics.acceptedSteps).toBeLessThan(strict.statistics.acceptedSteps / 10);
  });

  it('refuses options without meaning', () => {
    const problem = { derivative: decay, from: 0, to: 1, initial: [1] };
    expect(() => integrate({ ...problem, initial: [] })).toThrow(NumericsError);
    expect(() => integrate(problem, { relativeTolerance: 0, absoluteTolerance: 0 })).toThrow(NumericsError);
    expect(() => integrate(problem, { relativeTolerance: -1 })).toThrow(NumericsError);
    expect(() => integrate(problem, { absoluteTolerance: -1 })).toThrow(NumericsError);
    expect(() => integrate(problem, { absoluteTolerance: [1, 1] })).toThrow(expect.objectContaining({ code: 'unequal_lengths' }));
    expect(() => integrate(problem, { maxStep: 0 })).toThrow(NumericsError);
    expect(() => integrate(problem, { initialStep: -1 })).toThrow(NumericsError);
    expect(() => integrate(problem, { maxSteps: -1 })).toThrow(NumericsError);
    expect(() => integrate(problem, { dense: false }).at(0.5)).toThrow(NumericsError);
  });
});
