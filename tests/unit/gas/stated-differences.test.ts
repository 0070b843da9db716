import {
  diluteAirConductivity,
  diluteAirViscosity,
  dryAir,
  exhaustComposition,
  exhaustConductivity,
  exhaustViscosity,
  molarMassOfDryAir,
  molarMassOfMixture,
  specificHeatCapacityOfMixture,
  sutherlandViscosity,
  waterPerDryAirOfHumidity,
} from '@wallflow/exhaust';
import { describe, expect, it } from 'vitest';
import { dynamicViscosityCalculation } from '../../../packages/exhaust/src/gas/dynamic-viscosity/definition.js';
import { exhaustHeatCapacityCalculation } from '../../../packages/exhaust/src/gas/heat-capacity/definition.js';
import { thermalConductivityCalculation } from '../../../packages/exhaust/src/gas/thermal-conductivity/definition.js';
import { exhaustViscosityCalculation } from '../../../packages/exhaust/src/gas/viscosity-of-mixture/definition.js';

const temperatures = [300, 600, 1000];
const exhaust = exhaustComposition({
  lambda: 2,
  fuel: { hydrogenToCarbon: 1.8, oxygenToCarbon: 0 },
  waterPerDryAir: waterPerDryAirOfHumidity(0.01071),
});

function limit(calculation: { spec: { limits: readonly { code: string; text: string }[] } }, code: string): string {
  return calculation.spec.limits.find((text) => text.code === code)?.text ?? '';
}

/** Percentages that a text states, in its order. */
function percentages(text: string): number[] {
  return [...text.matchAll(/([\d.]+) %/g)].map((match) => Number(match[1]));
}

it('diesel exhaust weighs as much as dry air within 0.4 %, and about 1 % less in air of 20 g/kg', () => {
  for (const lambda of [1.05, 1.5, 2, 3, 6, 20]) {
    const ratio = (humidity: number) => {
      const fuel = { hydrogenToCarbon: 1.8, oxygenToCarbon: 0 };
      return (
        molarMassOfMixture(exhaustComposition({ lambda, fuel, waterPerDryAir: waterPerDryAirOfHumidity(humidity) })) / molarMassOfDryAir
      );
    };
    expect(Math.abs(ratio(0) - 1)).toBeLessThan(0.004);
    expect(1 - ratio(0.02)).toBeGreaterThan(0.007);
    expect(1 - ratio(0.02)).toBeLessThan(0.012);
  }
});

describe('differences between models that the definitions state', () => {
  it('air: Sutherland against the dilute-gas correlation', () => {
    const computed = temperatures.map((at) => Number((100 * (1 - sutherlandViscosity(at) / diluteAirViscosity(at))).toFixed(1)));
    expect(percentages(limit(dynamicViscosityCalculation, 'model_difference'))).toEqual(computed);
  });

  it('exhaust: Sutherland against the dilute-gas correlations', () => {
    const computed = temperatures.map((at) =>
      Number((100 * (1 - exhaustViscosity(exhaust, at, 'sutherland') / exhaustViscosity(exhaust, at, 'dilute-gas'))).toFixed(1)),
    );
    expect(percentages(limit(exhaustViscosityCalculation, 'model_difference'))).toEqual(computed);
  });

  it('heat capacity at 600 K: exhaust against dry air', () => {
    const computed = [6, 1].map((lambda) => {
      const gas = exhaustComposition({ lambda, fuel: { hydrogenToCarbon: 1.86, oxygenToCarbon: 0 }, waterPerDryAir: 0 });
      return Number((100 * (specificHeatCapacityOfMixture(gas, 600) / specificHeatCapacityOfMixture(dryAir, 600) - 1)).toFixed(1));
    });
    expect(percentages(limit(exhaustHeatCapacityCalculation, 'not_air'))).toEqual(computed);
  });

  it('conductivity: exhaust against dilute air', () => {
    const computed = temperatures.map((at) => Math.round(100 * Math.abs(exhaustConductivity(exhaust, at) / diluteAirConductivity(at) - 1)));
    const result = thermalConductivityCalculation.run({ gasTemperature: '600 K' });
    if (!result.ok) throw new Error('refused');
    const stated = result.assumptions.find((assumption) => assumption.path?.[0] === 'model')?.text ?? '';
    expect(percentages(stated)).toEqual(computed);
  });
});
