import {
  diluteViscosities,
  dryBasis,
  exhaustComposition,
  exhaustSpecies,
  exhaustViscosity,
  lambdaFromCarbonDioxide,
  lambdaFromOxygen,
  molarHeatCapacityOfMixture,
  molarMassOfDryAir,
  molarMassOfMixture,
  perExhaustSpecies,
  sensibleEnthalpyOfMixture,
  stoichiometricAirFuelRatio,
  wilkeViscosity,
} from '@wallflow/exhaust';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';

const between = (min: number, max: number) => fc.double({ min, max, noNaN: true, noDefaultInfinity: true });
const fuel = fc.record({ hydrogenToCarbon: between(1, 3), oxygenToCarbon: between(0, 0.5) });
const lean = fc.record({ lambda: between(1.001, 30), fuel, waterPerDryAir: between(0, 0.1) });
const close = (a: number, b: number, relative: number) =>
  expect(Math.abs(a - b)).toBeLessThanOrEqual(relative * Math.max(Math.abs(a), Math.abs(b)));

describe('composition of exhaust', () => {
  it('sums to one, and no share is negative', () => {
    fc.assert(
      fc.property(lean, (input) => {
        const wet = exhaustComposition(input);
        close(
          exhaustSpecies.reduce((sum, species) => sum + wet[species], 0),
          1,
          1e-12,
        );
        for (const species of exhaustSpecies) expect(wet[species]).toBeGreaterThanOrEqual(0);
      }),
    );
  });

  it('gives back its lambda from oxygen and from carbon dioxide, wet and dry', () => {
    fc.assert(
      fc.property(lean, ({ lambda, ...rest }) => {
        const wet = exhaustComposition({ lambda, ...rest });
        const dry = dryBasis(wet);
        close(lambdaFromOxygen({ ...rest, moleFraction: wet.oxygen, basis: 'wet' }), lambda, 1e-9);
        close(lambdaFromOxygen({ ...rest, moleFraction: dry.oxygen, basis: 'dry' }), lambda, 1e-9);
        close(lambdaFromCarbonDioxide({ ...rest, moleFraction: wet.carbonDioxide, basis: 'wet' }), lambda, 1e-9);
        close(lambdaFromCarbonDioxide({ ...rest, moleFraction: dry.carbonDioxide, basis: 'dry' }), lambda, 1e-9);
      }),
    );
  });

  it('leaner exhaust has more oxygen, and less carbon dioxide and water', () => {
    fc.assert(
      fc.property(lean, between(1.01, 2), (input, factor) => {
        const dryIntake = { ...input, waterPerDryAir: 0 };
        const first = exhaustComposition(dryIntake);
        const leaner = exhaustComposition({ ...dryIntake, lambda: input.lambda * factor });
        expect(leaner.oxygen).toBeGreaterThan(first.oxygen);
        expect(leaner.carbonDioxide).toBeLessThan(first.carbonDioxide);
        expect(leaner.water).toBeLessThan(first.water);
      }),
    );
  });

  it('weighs as much as the air and fuel that went in', () => {
    fc.assert(
      fc.property(lean, ({ lambda, fuel: formula }) => {
        const input = { lambda, fuel: formula, waterPerDryAir: 0 };
        const wet = exhaustComposition(input);
        // Carbon of the fuel per mole of exhaust, from which the mass of fuel and air follows.
        const nitrogenPerAir = 0.78084;
        const airMoles = wet.nitrogen / nitrogenPerAir;
        const airMass = airMoles * molarMassOfDryAir;
        const fuelMass = airMass / (lambda * stoichiometricAirFuelRatio(formula));
        close(molarMassOfMixture(wet), airMass + fuelMass, 1e-6);
      }),
    );
  });
});

describe('properties of mixtures', () => {
  it('the viscosity of a single gas mixed with itself is its own', () => {
    const viscosities = diluteViscosities(600);
    for (const species of exhaustSpecies) {
      const pure = perExhaustSpecies((other) => (other === species ? 1 : 0));
      close(wilkeViscosity(pure, viscosities), viscosities[species], 1e-12);
    }
  });

  it('hotter gas is more viscous and holds more heat', () => {
    fc.assert(
      fc.property(lean, between(260, 1400), between(1.001, 1.05), (input, temperature, factor) => {
        const gas = exhaustComposition(input);
        const hotter = temperature * factor;
        for (const model of ['sutherland', 'dilute-gas'] as const) {
          expect(exhaustViscosity(gas, hotter, model)).toBeGreaterThan(exhaustViscosity(gas, temperature, model));
        }
        expect(sensibleEnthalpyOfMixture(gas, hotter)).toBeGreaterThan(sensibleEnthalpyOfMixture(gas, temperature));
      }),
    );
  });

  it('the slope of the enthalpy is the heat capacity', () => {
    fc.assert(
      fc.property(lean, between(260, 1600), (input, temperature) => {
        fc.pre(Math.abs(temperature - 1000) > 2);
        const gas = exhaustComposition(input);
        const slope = (sensibleEnthalpyOfMixture(gas, temperature + 1) - sensibleEnthalpyOfMixture(gas, temperature - 1)) / 2;
        close(slope, molarHeatCapacityOfMixture(gas, temperature), 1e-5);
      }),
    );
  });
});
