import { registry } from '@wallflow/exhaust/calculations';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';

const options = { numRuns: 150, seed: 20_240_229 };
const number = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const log = (min: number, max: number) => number(Math.log(min), Math.log(max)).map(Math.exp);

const filter = { cellDensity: '200 cpsi', wallThickness: '12 mil', filterDiameter: '144 mm', filterLength: '152 mm' };

function run(id: string, input: object): Readonly<Record<string, number>> | undefined {
  const result = registry.get(id)!.run(input);
  return result.ok ? ({ ...result.intermediates, ...result.outputs } as unknown as Record<string, number>) : undefined;
}

const si = (value: number, unit: string) => ({ value, unit });

describe('a mass flow through the chain of volume flow and pressure drop', () => {
  const anyState = fc.record({
    massFlow: log(20 / 3600, 250 / 3600),
    celsius: number(100, 500),
    grams: number(0, 55),
    ambient: number(70_000, 105_000),
  });

  it('gives the same drop whichever of the three volume flows is taken on', () => {
    let tried = 0;
    fc.assert(
      fc.property(anyState, ({ massFlow, celsius, grams, ambient }) => {
        const state = { ...filter, gasTemperature: `${celsius} °C`, gasPressure: si(ambient, 'Pa'), sootMass: `${grams} g` };
        // What a mass flow does, from the flow behind the filter, where only the ambient pressure counts.
        const chain = { exhaustMassFlow: si(massFlow, 'kg/s'), gasTemperature: `${celsius} °C`, ambientPressure: si(ambient, 'Pa') };
        const behind = run('exhaust-volume-flow', chain)!.exhaustVolumeFlow!;
        const drop = run('compressible-pressure-drop', { ...state, exhaustVolumeFlow: si(behind, 'm3/s'), flowPressure: 'behind' });
        if (drop === undefined) return;
        const measured = drop.pressureDrop!;
        const flows = run('exhaust-volume-flow', { ...chain, backPressure: si(measured, 'Pa'), pressureDrop: si(measured, 'Pa') });
        if (flows === undefined) return;
        tried += 1;
        expect(flows.outletVolumeFlow! / behind).toBeCloseTo(1, 9);
        for (const [flowPressure, flow] of [
          ['before', flows.exhaustVolumeFlow!],
          ['middle', flows.middleVolumeFlow!],
        ] as const) {
          const again = run('compressible-pressure-drop', { ...state, exhaustVolumeFlow: si(flow, 'm3/s'), flowPressure });
          expect(again!.pressureDrop! / measured).toBeCloseTo(1, 8);
        }
        // The form for one density takes the flow in the middle, and is only off by the density of its inertial parts.
        const plain = run('loaded-pressure-drop', { ...state, exhaustVolumeFlow: si(flows.middleVolumeFlow!, 'm3/s') });
        if (plain === undefined) return;
        const soot = (flowPressure: string, flow: number) =>
          run('soot-mass-from-pressure-drop', {
            ...filter,
            ...{ gasTemperature: `${celsius} °C`, gasPressure: si(ambient, 'Pa'), pressureDrop: si(measured, 'Pa') },
            ...{ wallPermeability: '3e-13 m2', sootPermeability: '2.4e-14 m2', sootPackingDensity: '95 kg/m3' },
            ...{ exhaustVolumeFlow: si(flow, 'm3/s'), flowPressure, model: 'compressible' },
          })?.sootMass;
        const masses = [soot('before', flows.exhaustVolumeFlow!), soot('middle', flows.middleVolumeFlow!), soot('behind', behind)];
        for (const mass of masses) if (mass !== undefined) expect(Math.abs(mass * 1000 - grams)).toBeLessThan(1e-4 * grams + 1e-4);
        expect(masses.filter((mass) => mass === undefined).length).toBe(masses[0] === undefined && grams < 1e-6 ? 3 : 0);
        const inertial = plain.contractionDrop! + plain.expansionDrop! + plain.forchheimerDrop!;
        const expected = measured - (inertial * measured) / (2 * ambient);
        expect(plain.pressureDrop! / expected).toBeCloseTo(1, 8);
      }),
      options,
    );
    expect(tried).toBeGreaterThan(options.numRuns / 2);
  });
});
