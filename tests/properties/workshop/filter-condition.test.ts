import { calculations } from '@wallflow/workshop';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';

const calculation = calculations.find((candidate) => candidate.id === 'filter-condition');
const number = (min: number, max: number) => fc.double({ min, max, noNaN: true, noDefaultInfinity: true });

interface Point {
  readonly flow: number;
  readonly celsius: number;
  readonly mbar: number;
}

function condition(
  points: readonly Point[],
  change: Record<string, unknown> = {},
): { verdict: string; growthShape: string; warnings: readonly string[] } {
  const readings = points.map(({ flow, celsius, mbar }, index) => ({
    state: `reading ${index + 1}`,
    pressureDrop: { value: mbar, unit: 'mbar' },
    exhaustVolumeFlow: { value: flow, unit: 'm3/h' },
    gasTemperature: { value: celsius, unit: 'degC' },
  }));
  const result = calculation?.run({ ...calculation.example, readings, ...change });
  if (!result?.ok) throw new Error('refused as input');
  const { verdict, growthShape } = result.outputs as { verdict: string; growthShape: string };
  return { verdict, growthShape, warnings: result.warnings.map((warning) => warning.code) };
}

// Sutherland's formula for air, 40 CFR 1065.640 Table 4.
const viscosity = (celsius: number) => (1.716e-5 * ((celsius + 273.15) / 273) ** 1.5 * (273 + 111)) / (celsius + 273.15 + 111);

describe('condition of a filter', () => {
  const state = fc.record({ flow: number(20, 900), celsius: number(80, 500) });

  it('finds no contradiction in the readings of any one filter, with an inertial part and slip in its soot, at any flow', () => {
    fc.assert(
      fc.property(
        fc.array(state, { minLength: 2, maxLength: 5 }),
        number(0.001, 0.3),
        number(0, 2e-4),
        number(0, 1),
        (states, darcy, inertia, slipping) => {
          const points = states.map(({ flow, celsius }) => {
            const kelvin = celsius + 273.15;
            // In free molecular flow the resistance goes with one over the mean free path, which goes with μ√T.
            const slip = 1 - slipping + (slipping * viscosity(80) * Math.sqrt(353.15)) / (viscosity(celsius) * Math.sqrt(kelvin));
            const viscous = darcy * slip * (viscosity(celsius) / viscosity(80)) * flow;
            return { flow, celsius, mbar: viscous + inertia * (353.15 / kelvin) * flow ** 2 };
          });
          fc.pre(points.every((point) => point.mbar < 1400));
          expect(condition(points).verdict).not.toBe('contradiction');
        },
      ),
      { numRuns: 200 },
    );
  });

  it('takes a drop with viscosity times flow for no pipe, and one with density times flow squared for no filter', () => {
    const pair = fc.record({
      flow: number(40, 200),
      faster: number(2, 6),
      cold: number(80, 250),
      hotter: number(0, 200),
      mbar: number(15, 60),
    });
    fc.assert(
      fc.property(pair, ({ flow, faster, cold, hotter, mbar }) => {
        const hot = cold + hotter;
        const ends = (high: number): Point[] => [
          { flow, celsius: cold, mbar },
          { flow: flow * faster, celsius: hot, mbar: high },
        ];
        const zero = { zeroReading: '0 mbar' };
        const filter = mbar * faster * (viscosity(hot) / viscosity(cold));
        expect(['filter-like', 'unknown']).toContain(condition(ends(filter), zero).growthShape);
        const pipe = (mbar * faster ** 2 * (cold + 273.15)) / (hot + 273.15);
        fc.pre(pipe < 1400);
        expect(['filter-like', 'impossible']).not.toContain(condition(ends(pipe), zero).growthShape);
      }),
    );
  });

  it('gives no verdict on two readings of which the faster is lower, beyond their errors, in gas of one temperature', () => {
    fc.assert(
      fc.property(number(20, 400), number(1, 3), number(20, 600), number(0, 0.5), (flow, faster, mbar, share) => {
        // 2 mbar and 5 % each, doubled: half the drop at no less flow is beyond them from 20 mbar on.
        const points = [
          { flow, celsius: 200, mbar },
          { flow: flow * faster, celsius: 200, mbar: mbar * share },
        ];
        expect(condition(points).verdict).toBe('contradiction');
        expect(condition([...points].reverse()).verdict).toBe('contradiction');
      }),
    );
  });

  it('judges nothing with a zero beyond five times the accepted one, and says when the zero was not read', () => {
    fc.assert(
      fc.property(number(-200, 300), number(100, 600), number(10.01, 900), fc.constantFrom(-1, 1), (mbar, flow, zero, sign) => {
        const points = [{ flow, celsius: 220, mbar }];
        const far = condition(points, { zeroReading: { value: sign * zero, unit: 'mbar' } });
        expect(far.verdict).toBe('zero-fault');
        const blind = condition(points, { zeroReading: undefined });
        expect(blind.warnings).toContain('zero_not_read');
      }),
    );
  });

  it('passes no filter at a flow at which the clean one is lost in the error of the zero', () => {
    fc.assert(
      fc.property(number(5, 60), number(-10, 1000), (flow, mbar) => {
        expect(['unclear', 'blocked', 'reversed']).toContain(condition([{ flow, celsius: 130, mbar }]).verdict);
      }),
    );
  });
});
