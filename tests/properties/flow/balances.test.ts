import {
  airPerCarbon,
  carbonBalance,
  carbonBalanceMolarFlow,
  carbonMassFraction,
  dryBasis,
  exhaustComposition,
  exhaustMolesPerFuelMass,
} from '@wallflow/exhaust';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';

const between = (min: number, max: number) => fc.double({ min, max, noNaN: true, noDefaultInfinity: true });
const lean = fc.record({
  lambda: between(1.01, 20),
  fuel: fc.record({ hydrogenToCarbon: between(1, 3), oxygenToCarbon: between(0, 0.5) }),
  waterPerDryAir: between(0, 0.1),
});
const close = (a: number, b: number, relative: number) =>
  expect(Math.abs(a - b)).toBeLessThanOrEqual(relative * Math.max(Math.abs(a), Math.abs(b)));

describe('carbon balance', () => {
  const readings = { carbonMonoxide: 0, hydrocarbons: 0, intakeCarbonDioxide: 0.000375 };

  it('gives back the flow, the air and the water of the exhaust that it reads, wet or dry', () => {
    fc.assert(
      fc.property(lean, between(1e-5, 1), (input, fuelMassFlow) => {
        const wet = exhaustComposition(input);
        const truth = fuelMassFlow * exhaustMolesPerFuelMass(input);
        for (const basis of ['wet', 'dry'] as const) {
          const carbonDioxide = basis === 'wet' ? wet.carbonDioxide : dryBasis(wet).carbonDioxide;
          const balance = carbonBalance({ ...readings, ...input, basis, carbonDioxide });
          close(balance.waterPerDryExhaust, wet.water / (1 - wet.water), 1e-9);
          close(balance.airPerDryExhaust / balance.carbonPerDryExhaust, airPerCarbon(input), 1e-9);
          close(carbonBalanceMolarFlow(fuelMassFlow, balance, carbonMassFraction(input.fuel)), truth, 1e-9);
        }
      }),
    );
  });

  it('counts carbon alike whether it is read as dioxide, monoxide or hydrocarbon', () => {
    fc.assert(
      fc.property(lean, between(0.01, 0.12), between(0, 0.02), (input, carbonDioxide, moved) => {
        const whole = carbonBalance({ ...readings, ...input, basis: 'dry', carbonDioxide });
        const split = carbonBalance({
          ...readings,
          ...input,
          basis: 'dry',
          carbonDioxide: carbonDioxide - moved / 2,
          carbonMonoxide: moved / 4,
          hydrocarbons: moved / 4,
        });
        close(whole.carbonPerDryExhaust, split.carbonPerDryExhaust, 1e-12);
      }),
    );
  });

  it('a higher reading means less exhaust for the same fuel', () => {
    fc.assert(
      fc.property(lean, between(0.01, 0.12), between(1.001, 1.2), (input, carbonDioxide, factor) => {
        const flow = (reading: number) =>
          carbonBalanceMolarFlow(1, carbonBalance({ ...readings, ...input, basis: 'dry', carbonDioxide: reading }));
        expect(flow(carbonDioxide * factor)).toBeLessThan(flow(carbonDioxide));
      }),
    );
  });
});
