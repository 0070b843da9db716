import { diluteAirConductivity, diluteCarbonDioxideConductivity, diluteConductivity, diluteWaterConductivity } from '@wallflow/exhaust';
import { describe, expect, it } from 'vitest';

const milli = 1e3;

describe('thermal conductivity of dilute gases against published check points', () => {
  // Lemmon and Jacobsen, Int. J. Thermophysics 25 (2004), Table V, zero density, mW/(m·K).
  it.each([
    ['nitrogen', 100, 9.27749],
    ['nitrogen', 300, 25.9361],
    ['oxygen', 100, 8.94334],
    ['oxygen', 300, 26.4403],
    ['argon', 100, 6.36587],
    ['argon', 300, 17.8042],
  ] as const)('%s at %s K', (gas, temperature, published) => {
    expect(Math.abs((diluteConductivity(temperature, gas) * milli) / published - 1)).toBeLessThan(5e-6);
  });

  it.each([
    [100, 9.35902],
    [300, 26.3529],
  ])('air at %s K', (temperature, published) => {
    expect(Math.abs((diluteAirConductivity(temperature) * milli) / published - 1)).toBeLessThan(5e-6);
  });

  // IAPWS R15-11, Table 4, zero density, mW/(m·K).
  it.each([
    [298.15, 18.4341883],
    [873.15, 79.1034659],
  ])('water vapour at %s K', (temperature, published) => {
    expect(Math.abs((diluteWaterConductivity(temperature) * milli) / published - 1)).toBeLessThan(1e-8);
  });

  // Scalabrin and others, J. Phys. Chem. Ref. Data 35 (2006), 225 K at 0.236 kg/m³: a later correlation than the one used here.
  it('carbon dioxide at 225 K is within 1.5 % of a later correlation', () => {
    expect(Math.abs((diluteCarbonDioxideConductivity(225) * milli) / 11.037 - 1)).toBeLessThan(0.015);
  });
});
