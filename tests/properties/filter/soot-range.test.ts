import { channelProfile, filterChannels, loadChannels, sootMassForDrop, sutherlandViscosity } from '@wallflow/exhaust';
import { registry } from '@wallflow/exhaust/calculations';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';

const options = { numRuns: 200, seed: 20_240_229 };
const number = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const log = (min: number, max: number) => number(Math.log(min), Math.log(max)).map(Math.exp);

const filter = { cellDensity: '200 cpsi', wallThickness: '12 mil', filterDiameter: '144 mm', filterLength: '152 mm' };
const si = (value: number, unit: string) => ({ value, unit });

interface Result {
  readonly verdict: string;
  readonly sootMass: number;
  readonly leastSootMass: number;
  readonly mostSootMass: number;
  readonly codes: readonly string[];
}

function sootOf(input: object): Result | undefined {
  const result = registry.get('soot-mass-from-pressure-drop')!.run({ ...filter, ...input });
  if (!result.ok) return undefined;
  return { ...(result.outputs as unknown as Result), codes: result.warnings.map((warning) => warning.code) };
}

const anyReading = fc.record({ drop: log(100, 40_000), flow: log(0.01, 0.15), celsius: number(100, 500) });
const inputOf = ({ drop, flow, celsius }: { drop: number; flow: number; celsius: number }) => ({
  pressureDrop: si(drop, 'Pa'),
  exhaustVolumeFlow: si(flow, 'm3/s'),
  gasTemperature: `${celsius} °C`,
});

describe('range of the soot mass', () => {
  it.each(['closed-form', 'compressible', 'deep-bed'])('%s: holds the guess, and never calls a filter free of soot', (model) => {
    fc.assert(
      fc.property(anyReading, (reading) => {
        const found = sootOf({ ...inputOf(reading), model });
        if (found === undefined) return;
        expect(found.leastSootMass).toBeLessThanOrEqual(found.sootMass);
        expect(found.mostSootMass).toBeGreaterThanOrEqual(found.sootMass);
        if (found.leastSootMass === 0) {
          expect(found.verdict).toBe('within-clean');
          expect(found.codes).toContain('within_clean');
          expect(found.mostSootMass).toBeGreaterThan(0);
        }
      }),
      options,
    );
  });

  it('gets wider with a drop that may be further off, and keeps the error of the model when everything is given', () => {
    fc.assert(
      fc.property(anyReading, number(0, 2000), number(1.01, 3), (reading, off, factor) => {
        const some = sootOf({ ...inputOf(reading), dropUncertainty: si(off, 'Pa') });
        const more = sootOf({ ...inputOf(reading), dropUncertainty: si(off * factor, 'Pa') });
        if (some !== undefined && more !== undefined) {
          expect(more.leastSootMass).toBeLessThanOrEqual(some.leastSootMass * (1 + 1e-6));
          expect(more.mostSootMass).toBeGreaterThanOrEqual(some.mostSootMass * (1 - 1e-6));
        }
        const given = { wallPermeability: '3e-13 m2', sootPermeability: '2.4e-14 m2', sootPackingDensity: '95 kg/m3' };
        const exact = sootOf({ ...inputOf(reading), ...given });
        if (exact === undefined) return;
        // Soot in the wall and the measured curves' distance from the form: no knowledge of the material takes them away.
        if (exact.sootMass > 0) {
          expect(exact.leastSootMass).toBeLessThan(exact.sootMass);
          expect(exact.mostSootMass).toBeGreaterThan(exact.sootMass);
        }
        if (some !== undefined && off === 0) expect(exact.mostSootMass).toBeLessThanOrEqual(some.mostSootMass);
      }),
      options,
    );
  });
});

describe('inverse of the model with inertia', () => {
  const channels = filterChannels({
    cellDensity: 310_000,
    wallThickness: 0.3048e-3,
    frontalArea: 0.016286,
    filterLength: 0.152,
    plugLength: 0,
    layout: 'alternate',
    inletWidthRatio: 1,
  })!;
  const material = {
    wallPermeability: 3e-13,
    sootPermeability: 2.4e-14,
    ashPermeability: 7.4e-14,
    forchheimerCoefficient: 0,
    entranceExitCoefficient: 0.628,
  };
  const load = { ashMass: 0, ashPlugShare: 0, sootPackingDensity: 95, ashPackingDensity: 400 };

  /** Drop with a soot mass in grams; undefined where the model has no result. */
  const dropOf = (volumeFlow: number, grams: number) => {
    const loaded = loadChannels(channels, { ...load, sootMass: grams / 1000 });
    const profile = loaded && channelProfile(loaded, { volumeFlow, viscosity: sutherlandViscosity(523.15), density: 0.675 }, material, 2);
    return profile?.status === 'converged' ? profile.channelDrop + profile.contractionDrop + profile.expansionDrop : undefined;
  };

  it('gives one mass that no other mass shares, or none, at flows far beyond any engine', () => {
    let accepted = 0;
    fc.assert(
      fc.property(log(0.01, 2.7), number(0, 75), (volumeFlow, grams) => {
        const measured = dropOf(volumeFlow, grams);
        if (measured === undefined || measured > 100_000) return;
        const found = sootOf({
          ...{ pressureDrop: si(measured, 'Pa'), exhaustVolumeFlow: si(volumeFlow, 'm3/s'), gasTemperature: '250 °C' },
          ...{ model: 'one-dimensional', gasDensity: '0.675 kg/m3' },
          ...{ wallPermeability: '3e-13 m2', sootPermeability: '2.4e-14 m2', sootPackingDensity: '95 kg/m3' },
        });
        if (found === undefined) return;
        accepted += 1;
        let roots = 0;
        let below = true;
        for (let g = 0; g <= 76; g += 0.5) {
          const drop = dropOf(volumeFlow, g);
          if (drop === undefined) break;
          if (below !== drop < measured) roots += 1;
          below = drop < measured;
        }
        expect([volumeFlow, grams, roots]).toEqual([volumeFlow, grams, Math.min(roots, 1)]);
      }),
      { ...options, numRuns: 80 },
    );
    expect(accepted).toBeGreaterThan(30);
  });

  it('does not choose among several masses', () => {
    // Falls from 3 to 1, then rises without bound towards a full channel of 10.
    const dropWithMinimum = (mass: number) => 1 + 2 * (1 - mass) ** 2 + mass / (10 - mass);
    expect(sootMassForDrop(1.5, dropWithMinimum, 10).status).toBe('several');
    expect(sootMassForDrop(20, dropWithMinimum, 10).status).toBe('found');
    const rising = (mass: number) => 1 + mass / (10 - mass);
    expect(sootMassForDrop(2, rising, 10)).toMatchObject({ status: 'found', sootMass: expect.closeTo(5, 6) });
    expect(sootMassForDrop(0.5, rising, 10).status).toBe('below_clean');
  });
});
