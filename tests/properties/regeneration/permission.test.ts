import { registry } from '@wallflow/exhaust/calculations';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';

const calculation = registry.get('regeneration-permission');
const { measuredSootLoad, measuredSootLoadUncertainty, ...good } = (calculation?.example ?? {}) as Record<string, unknown>;
const asked = Object.keys(good).filter((key) => !['substrate', 'sootLoadUncertainty'].includes(key));

function verdict(input: Record<string, unknown>): string {
  const result = calculation?.run(input);
  if (!result?.ok) throw new Error('refused as input');
  return (result.outputs as { verdict: string }).verdict;
}

/** For each question an answer that must refuse. */
const bad: Record<string, unknown> = {
  sootLoad: '12 g/L',
  failedAttempts: 2,
  faultCodes: true,
  pressureSensorZero: '-8 mbar',
  temperatureSensorSpread: '16 K',
  catalystWarms: false,
  coolantTemperature: '40 °C',
  oilTemperature: '130 °C',
  oilLevel: 'above-maximum',
  oilSmellsOfFuel: true,
  fuelLevel: '10 %',
  batteryAtRest: '11.9 V',
  batteryRunning: '12.8 V',
  batterySupport: false,
  leaks: true,
  wetFilter: true,
  freshAdditive: true,
  place: 'indoors-not-extracted',
  rainOnHotParts: true,
  clearance: '0.5 m',
  hardGround: false,
  undertrayClean: false,
  attended: false,
  extinguisher: false,
  stopReachable: false,
  parked: false,
  wheelsChocked: false,
  powerTakeOff: true,
};

const some = fc.subarray(asked);
const one = fc.constantFrom(...asked);

describe('permission for a forced regeneration', () => {
  it('permits the example, and knows a refusing answer to every question', () => {
    expect(verdict(good)).toBe('permitted');
    expect(Object.keys(bad).sort()).toEqual([...asked].sort());
  });

  it('never permits while anything is unknown', () => {
    fc.assert(
      fc.property(fc.subarray(asked, { minLength: 1 }), (left) => {
        const input = Object.fromEntries(Object.entries(good).filter(([key]) => !left.includes(key)));
        expect(verdict(input)).not.toBe('permitted');
      }),
      { numRuns: 60 },
    );
  });

  it('refuses by one bad answer, whatever else is unknown', () => {
    fc.assert(
      fc.property(one, some, (key, left) => {
        const known = Object.entries(good).filter(([other]) => other === key || !left.includes(other));
        expect(verdict({ ...Object.fromEntries(known), [key]: bad[key] })).toBe('refused');
      }),
      { numRuns: 120 },
    );
  });

  it('gives as next step the action of a condition that does not pass, and one for each of them', () => {
    fc.assert(
      fc.property(some, fc.subarray(asked), (wrong, left) => {
        const input = { ...good, ...Object.fromEntries(wrong.map((key) => [key, bad[key]])) };
        for (const key of left) delete input[key as keyof typeof input];
        const result = calculation?.run(input);
        if (!result?.ok) throw new Error('refused as input');
        const { next, conditions } = result.outputs as { next: string; conditions: { result: string; action?: string }[] };
        for (const row of conditions) expect(row.action === undefined).toBe(row.result === 'pass');
        const open = conditions.filter((row) => row.result !== 'pass').map((row) => row.action);
        if (open.length > 0) expect(open).toContain(next);
      }),
      { numRuns: 60 },
    );
  });

  it('names every condition that refuses and every one that is not known, and no other', () => {
    fc.assert(
      fc.property(some, fc.subarray(asked), (wrong, left) => {
        const input = { ...good, ...Object.fromEntries(wrong.map((key) => [key, bad[key]])) };
        for (const key of left) delete input[key as keyof typeof input];
        const result = calculation?.run(input);
        if (!result?.ok) throw new Error('refused as input');
        const { refusedBy, notKnown, conditions } = result.outputs as {
          refusedBy?: string;
          notKnown?: string;
          conditions: { condition: string; result: string; limit: string }[];
        };
        const named = { refuse: refusedBy ?? '', unknown: notKnown ?? '', pass: '' } as Record<string, string>;
        for (const { condition, result: answer, limit } of conditions) {
          for (const [kind, text] of Object.entries(named))
            expect(text.includes(`${condition}: `)).toBe(kind === answer && kind !== 'pass');
          if (answer !== 'pass') expect(named[answer]).toContain(limit);
        }
      }),
      { numRuns: 60 },
    );
  });

  it('is never more lenient with more soot above the least load, with less certainty, or with the material unknown', () => {
    const rank = { permitted: 0, unknown: 1, refused: 2 } as Record<string, number>;
    const load = fc.double({ min: 2.4, max: 14, noNaN: true });
    const more = fc.double({ min: 0, max: 5, noNaN: true });
    fc.assert(
      fc.property(load, more, more, (grams, extra, doubt) => {
        const at = (g: number, u: number, substrate: string) =>
          rank[verdict({ ...good, substrate, sootLoad: { value: g, unit: 'g/L' }, sootLoadUncertainty: { value: u, unit: 'g/L' } })] ?? 9;
        const here = at(grams, doubt, 'silicon-carbide');
        expect(at(grams + extra, doubt, 'silicon-carbide')).toBeGreaterThanOrEqual(here);
        expect(at(grams, doubt + extra, 'silicon-carbide')).toBeGreaterThanOrEqual(here);
        expect(at(grams, doubt, 'unknown')).toBeGreaterThanOrEqual(here);
        expect(at(grams, doubt, 'unknown')).toBe(at(grams, doubt, 'cordierite'));
      }),
      { numRuns: 60 },
    );
  });

  it('is never more lenient for a second soot load, whatever it is, nor for a larger one', () => {
    const rank = { permitted: 0, unknown: 1, refused: 2 } as Record<string, number>;
    const grams = fc.double({ min: 2.4, max: 8, noNaN: true });
    const load = (value: number) => ({ value, unit: 'g/L' });
    fc.assert(
      fc.property(grams, grams, fc.double({ min: 0, max: 4, noNaN: true }), (typed, measured, doubt) => {
        const base = { ...good, substrate: 'silicon-carbide', sootLoad: load(typed) };
        const withBoth = (value: number) =>
          rank[verdict({ ...base, measuredSootLoad: load(value), measuredSootLoadUncertainty: load(doubt) })] ?? 9;
        expect(withBoth(measured)).toBeGreaterThanOrEqual(rank[verdict(base)] ?? 9);
        // Above what both uncertainties leave, more of the second load can only refuse.
        if (measured > typed) expect(withBoth(measured + 2)).toBeGreaterThanOrEqual(withBoth(measured));
      }),
      { numRuns: 60 },
    );
  });

  it('permits its example, in which both soot loads are known', () => {
    expect(verdict({ ...good, measuredSootLoad, measuredSootLoadUncertainty })).toBe('permitted');
  });
});
