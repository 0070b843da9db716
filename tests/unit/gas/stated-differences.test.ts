import {
  diluteAirConductivity,
  diluteAirViscosity,
  exhaustComposition,
  exhaustConductivity,
  exhaustViscosity,
  sutherlandViscosity,
  waterPerDryAirOfHumidity,
} from '@wallflow/exhaust';
import { describe, expect, it } from 'vitest';
import { dynamicViscosityCalculation } from '../../../packages/exhaust/src/gas/dynamic-viscosity/definition.js';
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

  it('conductivity: exhaust against dilute air', () => {
    const computed = temperatures.map((at) => Math.round(100 * Math.abs(exhaustConductivity(exhaust, at) / diluteAirConductivity(at) - 1)));
    const result = thermalConductivityCalculation.run({ temperature: '600 K', lambda: '2' });
    if (!result.ok) throw new Error('refused');
    const stated = result.assumptions.find((assumption) => assumption.path?.[0] === 'model')?.text ?? '';
    expect(percentages(stated)).toEqual(computed);
  });
});
